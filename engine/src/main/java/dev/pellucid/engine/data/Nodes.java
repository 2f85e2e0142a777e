package dev.pellucid.engine.data;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The data files of a folder by their paths, each text made into nodes. The nodes of a file follow
 * from its text alone, so a text that is the same object keeps the nodes that it had.
 */
final class Nodes {
  static final Nodes NONE = new Nodes(new TreeMap<>());

  private final SortedMap<String, DataFile> files;

  private Nodes(SortedMap<String, DataFile> files) {
    this.files = Collections.unmodifiableSortedMap(files);
  }

  /**
   * @param texts every YAML file under its path below the folder
   * @param closed those that have no text that can be had, with their names alone
   */
  Nodes next(SortedMap<String, SourceFile> texts, SortedMap<String, SourceFile> closed) {
    TreeMap<String, DataFile> next = new TreeMap<>();
    texts.forEach(
        (path, text) ->
            next.put(path, kept(path, text, false).orElseGet(() -> DataFile.of(path, text))));
    closed.forEach(
        (path, named) ->
            next.put(path, kept(path, named, true).orElseGet(() -> DataFile.closed(path, named))));
    return new Nodes(next);
  }

  @SuppressWarnings("ReferenceEquality")
  private Optional<DataFile> kept(String path, SourceFile source, boolean closed) {
    return file(path).filter(file -> file.source() == source && file.closed() == closed);
  }

  /** Whether two lists hold the same files, each with the same nodes. */
  @SuppressWarnings("ReferenceEquality")
  static boolean areSame(List<DataFile> some, List<DataFile> others) {
    return some.size() == others.size()
        && IntStream.range(0, some.size()).allMatch(i -> some.get(i) == others.get(i));
  }

  /** All of them, in the order of their paths. */
  Collection<DataFile> files() {
    return files.values();
  }

  /** The file of a single place. */
  Optional<DataFile> file(String relative) {
    return Optional.ofNullable(files.get(relative));
  }

  /** The files of a folder, in the order of their paths. */
  List<DataFile> in(String folder) {
    return files.tailMap(folder + "/").values().stream()
        .takeWhile(file -> file.relative().startsWith(folder + "/"))
        .filter(file -> Places.isYaml(file.relative()))
        .toList();
  }

  /** A warning for each file that is in no place where it would be read. */
  List<Finding> misplaced() {
    return files.values().stream()
        .filter(file -> DataFileKind.of(file.relative()).isEmpty())
        .map(Places::misplaced)
        .toList();
  }
}
