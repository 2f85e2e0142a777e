package dev.pellucid.engine.outcome;

import java.util.Set;

/** Names of cases, each unlike all others beside it. */
final class CaseNames {
  private CaseNames() {}

  /** A name that stands already gets a number. */
  static String unlike(Set<String> names, String name) {
    String unlike = name;
    for (int number = 2; !names.add(unlike); number++) {
      unlike = name + " " + number;
    }
    return unlike;
  }
}
