package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.SharedRules;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A content that is over what its kind of material may hold is mostly unusual too, and one figure
 * is told once: as what is over a maximum, with what is usual beside it.
 */
final class OverIsUnusual {
  private static final String UNUSUAL = "data-unusual";

  private OverIsUnusual() {}

  /** The same findings, each figure told once. */
  static List<Finding> once(List<Finding> all) {
    List<Finding> once = new ArrayList<>(all);
    for (Finding over : all) {
      if (SharedRules.isOverMaximum(over)) {
        for (Finding other : all) {
          if (other.code().text().equals(UNUSUAL) && other.span().equals(over.span())) {
            once.remove(other);
            once.set(once.indexOf(over), with(over, other));
          }
        }
      }
    }
    return once;
  }

  private static Finding with(Finding over, Finding unusual) {
    String headline = unusual.headline();
    int comma = headline.indexOf(", ");
    Finding told = over.noting(comma < 0 ? headline : headline.substring(comma + 2));
    return unusual.helps().size() > 1 ? told.helping(unusual.helps().get(0)) : told;
  }
}
