package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.Settings;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Choices;
import dev.pellucid.text.NearNames;
import java.util.List;

/** Feeds of which the settings say how much is made, and that the folder does not have. */
final class MadePerMonth {
  static final Code CODE = new Code("made-of-unknown");

  private MadePerMonth() {}

  static void look(Shared shared, List<Finding> findings) {
    for (Settings.Made one : shared.tables().settings().made()) {
      if (shared.trees().path(one.code()).isEmpty()) {
        findings.add(unknown(shared, one));
      }
    }
  }

  private static Finding unknown(Shared shared, Settings.Made one) {
    Finding finding =
        Finding.warning(
            CODE, one.place(), one.code() + " is made every month, and no recipe has that code");
    List<String> near = NearNames.of(one.code(), shared.trees().recipes());
    return near.isEmpty()
        ? finding.helping("write the code of a recipe, or leave the entry out")
        : finding.helping("it may be " + Choices.of(near) + "; else leave the entry out");
  }
}
