package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.Settings;
import dev.pellucid.engine.data.Settings.Made;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Choices;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much the settings say is made of each feed: of one that the folder does not have, not of one
 * where they say it of nearly all, or many times what is made of the others.
 */
final class MadePerMonth {
  static final Code CODE = new Code("made-of-unknown");
  static final Code LEFT_OUT = new Code("made-not-told");

  /** Where more are left out, it is told on purpose of some feeds only. */
  private static final double MOST_LEFT_OUT = 0.1;

  private static final int ENOUGH = 2;

  private MadePerMonth() {}

  static void look(Shared shared, List<Summary> recipes, List<Finding> findings) {
    Settings settings = shared.tables().settings();
    boolean known = true;
    for (Made one : settings.made()) {
      if (shared.trees().path(one.code()).isEmpty()) {
        findings.add(unknown(shared, one));
        known = false;
      }
    }
    if (known) {
      // Else the one that is left out is most likely the one whose code is not known.
      leftOut(settings, recipes, findings);
    }
    MadeFarOff.look(settings, recipes, findings);
  }

  private static Finding unknown(Shared shared, Made one) {
    Finding finding =
        Finding.warning(
            CODE, one.place(), one.code() + " is made every month, and no recipe has that code");
    List<String> near = NearNames.of(one.code(), shared.trees().recipes());
    return near.isEmpty()
        ? finding.helping("write the code of a recipe, or leave the entry out")
        : finding.helping("it may be " + Choices.of(near) + "; else leave the entry out");
  }

  /** Told at the entry of the recipe before it, where a line was most likely lost. */
  private static void leftOut(Settings settings, List<Summary> recipes, List<Finding> findings) {
    Map<String, Span> told = new HashMap<>();
    settings.made().forEach(one -> told.put(one.code(), one.place()));
    List<Finding> lost = new ArrayList<>();
    int others = 0;
    Span before = told.isEmpty() ? settings.place() : settings.made().get(0).place();
    for (Summary recipe : recipes) {
      Span entry = told.get(recipe.code());
      if (entry != null) {
        before = entry;
        others++;
      } else if (recipe.asked().isPresent() && recipe.asked().get().approved()) {
        lost.add(notTold(recipe.code(), before));
      }
    }
    if (others >= ENOUGH && lost.size() <= Math.max(1, MOST_LEFT_OUT * others)) {
      findings.addAll(lost);
    }
  }

  private static Finding notTold(String code, Span place) {
    return Finding.note(
            LEFT_OUT,
            place,
            "made-per-month does not say how much is made of "
                + code
                + ", and says it of the others")
        .helping("add it, so that what a change of it saves is told per month");
  }
}
