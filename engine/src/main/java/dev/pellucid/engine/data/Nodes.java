package dev.pellucid.engine.data;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

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
    for (Map.Entry<String, SourceFile> text : texts.entrySet()) {
      String place = place(text.getKey(), texts, closed);
      DataFile kept = kept(place, text.getValue(), false);
      next.put(place, kept == null ? DataFile.of(place, text.getValue()) : kept);
    }
    for (Map.Entry<String, SourceFile> named : closed.entrySet()) {
      DataFile kept = kept(named.getKey(), named.getValue(), true);
      next.put(
          named.getKey(), kept == null ? DataFile.closed(named.getKey(), named.getValue()) : kept);
    }
    return new Nodes(next);
  }

  /**
   * Where a file counts as lying: one that comes along lies where it would lie in the folder, so
   * that the order of files is one, and keeps its mark where the folder has such a file too.
   */
  private static String place(
      String path, SortedMap<String, SourceFile> texts, SortedMap<String, SourceFile> closed) {
    String below = BundledPath.below(path);
    return texts.containsKey(below) || closed.containsKey(below) ? path : below;
  }

  @SuppressWarnings("ReferenceEquality")
  private @Nullable DataFile kept(String path, SourceFile source, boolean closed) {
    DataFile file = files.get(path);
    return file != null && file.source() == source && file.closed() == closed ? file : null;
  }

  /** Whether two lists hold the same files, each with the same nodes. */
  @SuppressWarnings("ReferenceEquality")
  static boolean areSame(List<DataFile> some, List<DataFile> others) {
    if (some.size() != others.size()) {
      return false;
    }
    for (int i = 0; i < some.size(); i++) {
      if (some.get(i) != others.get(i)) {
        return false;
      }
    }
    return true;
  }

  /** All of them, in the order of their paths. */
  Collection<DataFile> files() {
    return files.values();
  }

  /** Of what its text itself breaks; nothing where the file is one of another program. */
  static List<Finding> slips(DataFile file) {
    boolean foreign =
        !file.read().findings().isEmpty()
            && DataFileKind.of(file.relative()).isEmpty()
            && OtherPrograms.own(file);
    return foreign ? List.of() : file.read().findings();
  }

  /** The file of a single place. */
  Optional<DataFile> file(String relative) {
    return Optional.ofNullable(files.get(relative));
  }

  /** The file that comes along for a single place, and that of the folder, which counts more. */
  List<DataFile> under(String relative) {
    return files(BundledPath.of(relative), relative);
  }

  /** The files of some single places, those that are there. */
  List<DataFile> files(String... relatives) {
    List<DataFile> there = new ArrayList<>();
    for (String relative : relatives) {
      DataFile file = files.get(relative);
      if (file != null) {
        there.add(file);
      }
    }
    return there;
  }

  /** The files of a folder, in the order of their paths. */
  List<DataFile> in(String folder) {
    List<DataFile> in = new ArrayList<>();
    // The sign behind the slash ends the folder in the order of paths.
    for (DataFile file : files.subMap(folder + "/", folder + "0").values()) {
      if (Places.isYaml(file.relative()) && Astray.belongs(file).isEmpty()) {
        in.add(file);
      }
    }
    return in;
  }

  /**
   * A warning for each file that is in no place where it would be read, those of other programs
   * left out.
   */
  List<Finding> misplaced() {
    List<Finding> misplaced = new ArrayList<>();
    for (DataFile file : files.values()) {
      boolean placed = DataFileKind.of(file.relative()).isPresent();
      if (Astray.belongs(file).isPresent() || (!placed && !OtherPrograms.own(file))) {
        misplaced.add(Places.misplaced(file));
      }
    }
    return misplaced;
  }
}
