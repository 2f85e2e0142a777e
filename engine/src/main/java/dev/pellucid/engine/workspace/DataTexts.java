package dev.pellucid.engine.workspace;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The texts of the data files of a folder, by their paths below it.
 *
 * @param read those that could be read
 * @param closed those that could not, with their names alone
 */
record DataTexts(SortedMap<String, SourceFile> read, SortedMap<String, SourceFile> closed) {

  /** Reads them; what cannot be read is a finding. */
  static DataTexts of(Texts texts, List<Finding> findings) {
    SortedMap<String, SourceFile> read = new TreeMap<>();
    SortedMap<String, SourceFile> closed = new TreeMap<>();
    for (String path : texts.data()) {
      Optional<SourceFile> text = texts.read(path, findings);
      if (text.isPresent()) {
        read.put(path, text.get());
      } else {
        closed.put(path, new SourceFile(path, ""));
      }
    }
    return new DataTexts(read, closed);
  }
}
