package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.weighing.Loads;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;

/**
 * Premixes that the plant cannot mix evenly or weigh, in the batches that their sheets are made
 * for. How much that is follows from the approved recipes, so it is looked at once for the folder.
 */
public final class PremixOnScales {
  private PremixOnScales() {}

  /** A premix in a batch as the plant weighs it. */
  public record Batch(ResolvedPremix premix, WeighingPlan plan) {
    boolean isTooLittle() {
      return plan.loads().isPresent() && !plan.loads().get().fills();
    }
  }

  /**
   * What the sheets would have to send a hand to ask about.
   *
   * @param told what is known already; where recipes lack a smaller mixer too, premixes add nothing
   */
  public static List<Finding> findings(List<Batch> batches, Plant plant, List<Finding> told) {
    List<Finding> findings = new ArrayList<>();
    List<Batch> little = new ArrayList<>();
    List<Finding> unweighed = new ArrayList<>();
    for (Batch batch : batches) {
      if (batch.isTooLittle()) {
        little.add(batch);
      }
      CannotBeWeighed.look(batch.plan(), plant, unweighed::add);
    }
    if (!little.isEmpty() && !isTold(told)) {
      findings.add(tooEmpty(little, plant));
    }
    if (!unweighed.isEmpty()) {
      int more = unweighed.size() - 1;
      Finding first = unweighed.get(0);
      findings.add(
          more == 0
              ? first
              : first.noting(
                  "the same holds for " + Plural.of(more, "more line") + " of premixes"));
    }
    return findings;
  }

  private static boolean isTold(List<Finding> told) {
    for (Finding finding : told) {
      if (finding.code().equals(MixerTooEmpty.CODE)) {
        return true;
      }
    }
    return false;
  }

  /** All of them lack the same smaller mixer, so it is told once. */
  private static Finding tooEmpty(List<Batch> little, Plant plant) {
    Batch first = little.get(0);
    Loads loads = first.plan().loads().orElseThrow();
    Figures.Pair fill = Figures.apart(loads.dryFill() * 100, loads.mixer().fillLow() * 100, 0);
    double enough = first.plan().kg() * loads.mixer().fillLow() / loads.dryFill();
    Finding finding =
        Finding.warning(
            MixerTooEmpty.CODE,
            first.premix().declared(),
            Figures.plain(first.plan().kg())
                + " kg of "
                + first.premix().code()
                + ", as much as the approved recipes ask for, fill the "
                + loads.mixer().title()
                + " to "
                + fill.value()
                + " %, it mixes evenly from "
                + fill.other()
                + " %");
    List<String> others = new ArrayList<>();
    for (Batch batch : little.subList(1, little.size())) {
      others.add(batch.premix().code());
    }
    return (others.isEmpty() ? finding : finding.noting("the same holds for " + named(others)))
        .helping(
            "tell plant/"
                + plant.name()
                + ".yaml a smaller mixer, or make "
                + Figures.plain(enough)
                + " kg or more of "
                + first.premix().code()
                + " at once, by larger batches of feed");
  }

  private static String named(List<String> codes) {
    int last = codes.size() - 1;
    return last == 0
        ? codes.get(0)
        : String.join(", ", codes.subList(0, last)) + " and " + codes.get(last);
  }
}
