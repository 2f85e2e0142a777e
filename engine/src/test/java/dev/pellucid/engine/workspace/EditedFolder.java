package dev.pellucid.engine.workspace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A small folder with something of every kind: rework, a premix in a premix, a former name,
 * waivers, lots, records of batches that follow each other, and records of figures.
 */
final class EditedFolder {
  private static final Path RESOURCES = Path.of("src", "test", "resources");

  private EditedFolder() {}

  static SortedMap<String, String> texts() throws IOException {
    SortedMap<String, String> texts = new TreeMap<>();
    for (String part : List.of("pantry", "mill", "mill-records", "mill-figures", "edited")) {
      Path from = RESOURCES.resolve(part);
      try (Stream<Path> all = Files.walk(from)) {
        for (Path file : all.filter(Files::isRegularFile).toList()) {
          String path = from.relativize(file).toString().replace('\\', '/');
          texts.put(path, Files.readString(file));
        }
      }
    }
    return texts;
  }
}
