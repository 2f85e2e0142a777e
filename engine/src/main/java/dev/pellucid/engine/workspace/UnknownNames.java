package dev.pellucid.engine.workspace;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.Plural;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A name that nothing has, and that many lines use: the line that would give it was lost or
 * changed. That is one slip, and it is told once, at the first of those lines, with how many more
 * there are.
 */
final class UnknownNames {
  /** Codes of names that a file of data, a premix or a profile would give. */
  private static final Set<String> NAMES =
      Set.of(
          "unknown-ingredient",
          "unknown-nutrient",
          "unknown-plant",
          "unknown-profile",
          "unknown-source",
          "unknown-species",
          "data-unknown-group",
          "data-unknown-ingredient",
          "data-unknown-lot",
          "data-unknown-nutrient",
          "data-unknown-source",
          "data-unknown-species",
          "data-unknown-stability");

  /** How many lines may use it and are still told one by one. */
  private static final int FEW = 2;

  /** So many of the other lines are named. */
  private static final int PLACES = 3;

  private UnknownNames() {}

  /** The same findings with those of one unknown name as one. */
  static List<Finding> fold(Shared shared, List<Finding> findings) {
    Map<String, List<Finding>> named = new HashMap<>();
    for (Finding finding : findings) {
      if (isUnknown(finding)) {
        named.computeIfAbsent(finding.span().text(), none -> new ArrayList<>()).add(finding);
      }
    }
    if (named.isEmpty()) {
      return findings;
    }
    List<Finding> told = new ArrayList<>();
    Map<String, Span> misspelt = Misspelt.of(named.keySet(), shared);
    for (Finding finding : findings) {
      String name = finding.span().text();
      List<Finding> alike = isUnknown(finding) ? named.getOrDefault(name, List.of()) : List.of();
      Span declared = alike.isEmpty() ? null : misspelt.get(name);
      if (declared != null) {
        if (finding.equals(first(alike))) {
          told.add(declaredOtherwise(finding, alike.size(), declared));
        }
      } else if (alike.size() <= FEW) {
        told.add(finding);
      } else if (finding.equals(first(alike))) {
        told.add(together(finding, alike));
      }
    }
    return told;
  }

  private static Finding first(List<Finding> alike) {
    return alike.stream().min(FixOrder.ORDER).orElseThrow();
  }

  private static Finding declaredOtherwise(Finding first, int lines, Span declared) {
    String name = first.span().text();
    return Finding.error(
            first.code(),
            declared,
            declared.text()
                + " is used nowhere, and "
                + name
                + ", which "
                + Plural.of(lines, "line uses", "lines use")
                + ", is not declared")
        .seeing("used", first.span())
        .helping("write " + name + " here")
        .fixing(declared, name);
  }

  private static Finding together(Finding first, List<Finding> alike) {
    Finding all =
        first.noting(
            Plural.of(alike.size() - 1, "more line")
                + " of this folder use it: the line that gave it this name was lost or changed");
    int told = 0;
    for (Finding other : alike.stream().sorted(FixOrder.ORDER).toList()) {
      if (!other.equals(first) && told++ < PLACES) {
        all = all.seeing("used", other.span());
      }
    }
    return all;
  }

  private static boolean isUnknown(Finding finding) {
    return NAMES.contains(finding.code().text());
  }
}
