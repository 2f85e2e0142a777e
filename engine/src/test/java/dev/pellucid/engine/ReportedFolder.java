package dev.pellucid.engine;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A small folder with something of everything that a report tells. */
public final class ReportedFolder {
  private static final Path REPORTED = Path.of("src", "test", "resources", "reported");

  private ReportedFolder() {}

  /** With a recipe in UTF-16, which no text file of ours can be. */
  public static void copyTo(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(REPORTED)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = folder.resolve(REPORTED.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
    Files.write(
        folder.resolve("F-1.recipe"),
        "recipe F-1\n\nmix\n  maize  100 %\n".getBytes(StandardCharsets.UTF_16));
  }
}
