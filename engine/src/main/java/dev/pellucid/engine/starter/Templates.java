package dev.pellucid.engine.starter;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The texts that a folder of feeds begins with, by their paths: those of {@code common/} for every
 * folder, and those of one folder for each species. A part of a path that begins with {@code dot-}
 * stands for one with a leading dot, which tools that pack a jar like to leave out.
 */
public final class Templates {
  private static final String COMMON = "common";
  private static final String DOT = "dot-";

  private final SortedMap<String, String> texts;

  public Templates(SortedMap<String, String> texts) {
    this.texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
  }

  /** Every species that there are feeds of, in order. */
  public List<String> species() {
    return texts.keySet().stream()
        .map(path -> path.substring(0, path.indexOf('/')))
        .filter(folder -> !folder.equals(COMMON))
        .distinct()
        .toList();
  }

  /** What every folder gets, by its path in the folder that begins. */
  SortedMap<String, String> common() {
    return in(COMMON);
  }

  /** What a folder gets for a species, by its path in the folder that begins. */
  SortedMap<String, String> of(String species) {
    return in(species);
  }

  private SortedMap<String, String> in(String folder) {
    String before = folder + "/";
    SortedMap<String, String> found = new TreeMap<>();
    texts.forEach(
        (path, text) -> {
          if (path.startsWith(before)) {
            found.put(dotted(path.substring(before.length())), text);
          }
        });
    return found;
  }

  private static String dotted(String path) {
    return ("/" + path).replace("/" + DOT, "/.").substring(1);
  }
}
