package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.YamlRead;
import dev.pellucid.engine.yaml.YamlReader;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.Optional;

/**
 * One data file, its text already made into nodes.
 *
 * @param relative its path below the folder
 * @param closed whether its text could not be had
 * @param read what the text says
 */
record DataFile(String relative, SourceFile source, boolean closed, YamlRead read) {

  static DataFile of(String relative, SourceFile source) {
    return new DataFile(relative, source, false, YamlReader.read(source));
  }

  /** One whose text could not be had. */
  static DataFile closed(String relative, SourceFile named) {
    return new DataFile(relative, named, true, YamlRead.closed());
  }

  /** The name of the file without its ending: {@code maize}. */
  String stem() {
    return source.stem();
  }

  /** The place of the file as a whole: its first line. */
  Span place() {
    int end = source.line(1).stripTrailing().length();
    return source.span(0, Math.min(end, source.text().length()));
  }

  /** The keys of a file that may not be there. */
  static Optional<Fields> fields(Optional<DataFile> file, Keys keys, Remarks remarks) {
    return file.isPresent() ? file.get().fields(keys, remarks) : Optional.empty();
  }

  /** Its keys; empty where it says nothing, which is a finding, or could not be read. */
  Optional<Fields> fields(Keys keys, Remarks remarks) {
    if (read.root().isEmpty()) {
      if (read.whole()) {
        remarks.add(KeyFindings.emptyFile(source, keys));
      }
      return Optional.empty();
    }
    return Fields.of(read.root().get(), keys, place(), remarks);
  }

  /** Whether its name can be the name of a thing; a finding where not. */
  boolean isNamed(String what, Remarks remarks) {
    boolean named = Vocabulary.isName(stem());
    if (!named) {
      remarks.add(KeyFindings.name(source.beginning(), stem(), what));
    }
    return named;
  }

  /** What a thing read of this file is, with what was said of it. */
  <T> Read<T> read(T thing, Remarks remarks) {
    return new Read<>(thing, remarks.findings(), read.whole() && remarks.isSound());
  }
}
