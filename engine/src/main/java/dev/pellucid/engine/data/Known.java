package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * Names of one kind that a folder declares, and the question whether a word is one of them.
 *
 * <p>Where a file that declares such names could not be read, no word is called unknown: the
 * finding about that file says it once.
 *
 * @param what such a name is, with its article: "a source"
 * @param where the file or folder that declares them
 * @param whole whether all of their files could be read
 */
record Known(Code code, String what, String where, Set<String> names, boolean whole) {
  Known {
    names = Set.copyOf(names);
  }

  boolean has(String name) {
    return names.contains(name);
  }

  /** Whether a word is one of the names; an unknown one is a finding. */
  boolean check(Scalar word, Remarks remarks) {
    return check(word, List.of(), remarks);
  }

  /** The same beside keys that would be right in this place too, which the remedy tells. */
  boolean check(Scalar word, Keys alsoHere, Remarks remarks) {
    return has(word.text()) || check(word, alsoHere.words(), remarks);
  }

  /** Whether another of this kind declares the same names. */
  boolean isLike(Known other) {
    return whole == other.whole && names.equals(other.names);
  }

  /**
   * @param alsoHere other words that would be right in this place, for the remedy
   */
  boolean check(Scalar word, Collection<String> alsoHere, Remarks remarks) {
    if (names.contains(word.text())) {
      return true;
    }
    if (whole) {
      List<String> candidates = new ArrayList<>(names);
      candidates.addAll(alsoHere);
      candidates.sort(null);
      remarks.add(ReferenceFindings.unknown(code, word, what, where, candidates));
    }
    return false;
  }
}
