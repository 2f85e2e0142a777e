package dev.pellucid.engine.larder;

import dev.pellucid.engine.yaml.YamlRead;
import dev.pellucid.engine.yaml.YamlReader;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * One data file, its text already made into nodes.
 *
 * @param relative its path below the folder
 * @param read what the text says
 */
record DataFile(String relative, SourceFile source, YamlRead read) {

  static DataFile of(String relative, SourceFile source) {
    return new DataFile(relative, source, YamlReader.read(source));
  }

  /** One whose text could not be had. */
  static DataFile closed(String relative, SourceFile named) {
    return new DataFile(relative, named, YamlRead.closed());
  }

  /** The name of the file without its ending: {@code maize}. */
  String stem() {
    return source.stem();
  }

  boolean isIn(String folder) {
    return relative.startsWith(folder + "/");
  }

  /** The place of the file as a whole: its first line. */
  Span place() {
    int end = source.line(1).stripTrailing().length();
    return source.span(0, Math.min(end, source.text().length()));
  }

  /** Its keys; empty where it says nothing, which is a finding, or could not be read. */
  Optional<Fields> fields(Keys keys, List<Finding> findings) {
    if (read.root().isEmpty()) {
      if (read.whole()) {
        findings.add(KeyFindings.emptyFile(source, keys));
      }
      return Optional.empty();
    }
    return Fields.of(read.root().get(), keys, place(), findings);
  }

  /** Whether its name can be the name of a thing; a finding where not. */
  boolean isNamed(String what, List<Finding> findings) {
    boolean named = stem().matches(Vocabulary.NAME);
    if (!named) {
      findings.add(KeyFindings.name(source.beginning(), stem(), what));
    }
    return named;
  }
}
