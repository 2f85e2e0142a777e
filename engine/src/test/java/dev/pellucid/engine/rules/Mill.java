package dev.pellucid.engine.rules;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.figures.FiguresFindings;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.rules.RecipePage.Block;
import dev.pellucid.engine.trace.FollowedTwice;
import dev.pellucid.engine.trace.LineToClean;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A small complete folder on disk, without a finding: the data, profiles and law of the pantry, and
 * over them the recipe and the premix of {@code src/test/resources/mill}. Pages lay their files
 * over it, and it is checked by the whole route.
 */
final class Mill {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path RESOURCES = Path.of("src", "test", "resources");

  private final Path root;

  Mill(Path root) throws IOException {
    this.root = root;
    copy(RESOURCES.resolve("pantry"), "recipes");
    copy(RESOURCES.resolve("mill"), "");
  }

  /**
   * For the page of a code; with lots in its store and the record of a batch for one of such, with
   * the record of its figures for one of those.
   */
  static Mill of(Path root, String code) throws IOException {
    Mill mill = new Mill(root);
    Code asked = new Code(code);
    boolean ofTrace = List.of(LineToClean.CODE, FollowedTwice.CODE).contains(asked);
    if (ofTrace || BatchRecordCheck.codes().contains(asked)) {
      mill.copy(RESOURCES.resolve("mill-records"), "");
    }
    if (FiguresFindings.codes().contains(new Code(code))) {
      mill.copy(RESOURCES.resolve("mill-figures"), "");
    }
    return mill;
  }

  /** Everything but one folder. */
  private void copy(Path from, String except) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        Path relative = from.relativize(file);
        if (!relative.startsWith(except) || except.isEmpty()) {
          Path to = root.resolve(relative.toString());
          Files.createDirectories(to.getParent());
          Files.copy(file, to);
        }
      }
    }
  }

  Mill with(List<Block> blocks) throws IOException {
    for (Block block : blocks) {
      if (block.manner() == RecipePage.Manner.GONE) {
        Files.delete(root.resolve(block.path()));
      } else {
        write(block.path(), bytes(block));
      }
    }
    return this;
  }

  /** Puts a file in the folder, in place of the one there. */
  Mill write(String path, byte[] bytes) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.getParent());
    Files.write(file, bytes);
    return this;
  }

  List<Finding> findings() throws IOException {
    return OwnFolder.check(root, DAY).findings();
  }

  private byte[] bytes(Block block) throws IOException {
    return switch (block.manner()) {
      case WHOLE, GONE -> block.text().getBytes(StandardCharsets.UTF_8);
      case PART -> withPart(block).getBytes(StandardCharsets.UTF_8);
      case UTF_16 -> block.text().getBytes(StandardCharsets.UTF_16);
      case LATIN_1 -> block.text().getBytes(StandardCharsets.ISO_8859_1);
    };
  }

  private String withPart(Block block) throws IOException {
    String whole = Files.readString(root.resolve(block.path()));
    List<String> parts = new ArrayList<>(List.of(whole.split("(?m)^(?=[a-z])")));
    parts.removeIf(String::isEmpty);
    String word = word(block.text());
    for (int i = 0; i < parts.size(); i++) {
      if (word(parts.get(i)).equals(word)) {
        parts.set(i, block.text() + (i + 1 < parts.size() ? "\n" : ""));
        return String.join("", parts);
      }
    }
    return whole + "\n" + block.text();
  }

  private static String word(String part) {
    return part.split("\\s", 2)[0];
  }
}
