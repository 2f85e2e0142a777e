package dev.pellucid.engine.larder;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Names of one kind that a folder declares, and the question whether a word is one of them.
 *
 * <p>Where a file that declares such names could not be read, no word is called unknown: the
 * finding about that file says it once.
 */
final class Known {
  private final Code code;
  private final String what;
  private final String where;
  private final Set<String> names;
  private final boolean whole;

  /**
   * @param what such a name is, with its article: "a source"
   * @param where the file or folder that declares them
   * @param whole whether all of their files could be read
   */
  Known(Code code, String what, String where, Collection<String> names, boolean whole) {
    this.code = code;
    this.what = what;
    this.where = where;
    this.names = new HashSet<>(names);
    this.whole = whole;
  }

  boolean has(String name) {
    return names.contains(name);
  }

  /** Whether a word is one of the names; an unknown one is a finding. */
  boolean check(Scalar word, List<Finding> findings) {
    return check(word, List.of(), findings);
  }

  /**
   * @param alsoHere other words that would be right in this place, for the remedy
   */
  boolean check(Scalar word, Collection<String> alsoHere, List<Finding> findings) {
    if (names.contains(word.text())) {
      return true;
    }
    if (whole) {
      List<String> candidates = new ArrayList<>(names);
      candidates.addAll(alsoHere);
      candidates.sort(null);
      findings.add(ReferenceFindings.unknown(code, word, what, where, candidates));
    }
    return false;
  }
}
