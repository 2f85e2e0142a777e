package dev.pellucid.parse;

import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Files without a finding that hold every section, phrase and unit of the language. */
final class GoodFiles {
  private static final Path FOLDER = Path.of("src/test/resources/good");

  private GoodFiles() {}

  static List<SourceFile> all() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().map(GoodFiles::read).toList();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static SourceFile read(Path file) {
    try {
      return new SourceFile(file.getFileName().toString(), Files.readString(file));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
