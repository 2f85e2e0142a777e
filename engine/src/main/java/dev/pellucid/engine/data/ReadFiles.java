package dev.pellucid.engine.data;

import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What was read of each file of one kind, by the path of the file.
 *
 * @param byPath each with the nodes that it was read of
 */
record ReadFiles<T>(SortedMap<String, Of<T>> byPath) {
  ReadFiles {
    byPath = Collections.unmodifiableSortedMap(byPath);
  }

  /** One file and what was read of it. */
  record Of<T>(DataFile file, Read<T> read) {}

  static <T> ReadFiles<T> none() {
    return new ReadFiles<>(new TreeMap<>());
  }

  /** Reads those whose nodes are new; the others keep what was read of them. */
  @SuppressWarnings("ReferenceEquality")
  ReadFiles<T> next(List<DataFile> files, Function<DataFile, Read<T>> reader) {
    TreeMap<String, Of<T>> next = new TreeMap<>();
    for (DataFile file : files) {
      Of<T> earlier = byPath.get(file.relative());
      boolean same = earlier != null && earlier.file() == file;
      next.put(file.relative(), same ? earlier : new Of<>(file, reader.apply(file)));
    }
    return new ReadFiles<>(next);
  }

  /**
   * Reads all of them, since something that they name has changed. What comes out equal to what was
   * there stays the same object.
   */
  @SuppressWarnings("ReferenceEquality")
  ReadFiles<T> anew(List<DataFile> files, Function<DataFile, Read<T>> reader) {
    TreeMap<String, Of<T>> next = new TreeMap<>();
    for (DataFile file : files) {
      Of<T> earlier = byPath.get(file.relative());
      Read<T> read = reader.apply(file);
      boolean same = earlier != null && earlier.file() == file && earlier.read().equals(read);
      next.put(file.relative(), same ? earlier : new Of<>(file, read));
    }
    return new ReadFiles<>(next);
  }

  /** Every file with what was read of it, in the order of their paths. */
  Collection<Of<T>> all() {
    return byPath.values();
  }

  /** What was read of each, in the order of their paths. */
  List<T> things() {
    List<T> things = new ArrayList<>();
    for (Of<T> of : all()) {
      things.add(of.read().thing());
    }
    return things;
  }

  /** What was wrong with each, in the order of their paths. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Of<T> of : all()) {
      findings.addAll(of.read().findings());
    }
    return findings;
  }

  /** Whether the texts of all of them could be made into nodes. */
  boolean couldBeRead() {
    for (Of<T> of : all()) {
      if (!of.file().read().whole()) {
        return false;
      }
    }
    return true;
  }

  /** Whether all that is written in them is in the things. */
  boolean areWhole() {
    for (Of<T> of : all()) {
      if (!of.read().whole()) {
        return false;
      }
    }
    return true;
  }
}
