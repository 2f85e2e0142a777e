package dev.pellucid.maven;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What is wished of a goal, by the name of its parameter; what is not given is left out. */
final class Wished {
  private final Map<String, String> words = new TreeMap<>();

  Wished with(String name, @Nullable String word) {
    if (word != null) {
      words.put(name, word);
    }
    return this;
  }

  Map<String, String> words() {
    return words;
  }
}
