package dev.pellucid.engine.records;

import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/** What to do on the floor, in place of what a recipe would be told. */
final class Advice {
  private static final String OTHERWISE = "or change ";

  private Advice() {}

  /** The same finding, its first help replaced; that bounds may be changed stays said. */
  static Finding in(Finding found, String advice) {
    List<String> helps = new ArrayList<>(List.of(advice));
    for (String help : found.helps()) {
      int at = help.indexOf(OTHERWISE);
      if (at >= 0) {
        helps.add(help.substring(at));
      }
    }
    return new Finding(
        found.code(),
        found.severity(),
        found.headline(),
        found.span(),
        found.label(),
        found.related(),
        found.notes(),
        helps,
        found.edits(),
        found.about());
  }
}
