package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.Settings;
import dev.pellucid.engine.data.Settings.Made;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A feed of which many times more batches are made in a month than of any other at its plant, or
 * many times fewer: most often a slipped point, or kg for t. It is a note, for nothing is broken.
 *
 * <p>Three times: common practice, no source.
 */
final class MadeFarOff {
  static final Code CODE = new Code("made-far-off");

  private static final double FAR = 3;
  private static final int ENOUGH = 3;

  private MadeFarOff() {}

  /** Batches in a month of a feed. */
  private record Run(Made made, Asked.Batch batch) {
    double batches() {
      return made.kg() / batch.kg();
    }
  }

  static void look(Settings settings, List<Summary> recipes, List<Finding> findings) {
    Map<String, Asked.Batch> batches = new HashMap<>();
    for (Summary one : recipes) {
      if (one.asked().isEmpty()) {
        // The one that would bear it out may be the one that could not be read.
        return;
      }
      one.asked().get().batch().ifPresent(batch -> batches.put(one.code(), batch));
    }
    List<Run> runs = new ArrayList<>();
    for (Made one : settings.made()) {
      Asked.Batch batch = batches.get(one.code());
      if (batch != null) {
        runs.add(new Run(one, batch));
      }
    }
    // A batch unlike all others was slipped itself, and is told where it stands.
    List<Run> sound = runs.stream().filter(run -> isLikeOthers(run, runs)).toList();
    for (Run run : sound) {
      look(run, sound, findings);
    }
  }

  private static boolean isLikeOthers(Run run, List<Run> runs) {
    double smallest = Double.POSITIVE_INFINITY;
    double largest = 0;
    for (Run other : runs) {
      if (!other.equals(run) && other.batch().plant().equals(run.batch().plant())) {
        smallest = Math.min(smallest, other.batch().kg());
        largest = Math.max(largest, other.batch().kg());
      }
    }
    double kg = run.batch().kg();
    return kg < FAR * largest && kg * FAR > smallest;
  }

  private static void look(Run run, List<Run> runs, List<Finding> findings) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    int others = 0;
    for (Run other : runs) {
      if (!other.equals(run) && other.batch().plant().equals(run.batch().plant())) {
        others++;
        least = Math.min(least, other.batches());
        most = Math.max(most, other.batches());
      }
    }
    if (others >= ENOUGH && (run.batches() > FAR * most || run.batches() * FAR < least)) {
      findings.add(finding(run, least, most, others));
    }
  }

  private static Finding finding(Run run, double least, double most, int others) {
    return Finding.note(
            CODE,
            run.made().place(),
            run.made().asWritten()
                + " of "
                + run.made().code()
                + " a month are "
                + words(run.batches())
                + " batches, the "
                + others
                + " other feeds of "
                + run.batch().plant()
                + " are made in "
                + words(least)
                + " to "
                + words(most))
        .helping("look for a slipped decimal point, or for kg in place of t; else leave it");
  }

  private static String words(double batches) {
    BigDecimal shown = new BigDecimal(Figures.visible(batches, 1));
    return shown.stripTrailingZeros().toPlainString();
  }
}
