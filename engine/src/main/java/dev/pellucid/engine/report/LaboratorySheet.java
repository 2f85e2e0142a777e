package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Waived;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Stamp;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.List;

/** The page for the laboratory: what an analysis should find, against what is asked. */
final class LaboratorySheet {
  private static final String EXPECTED =
      "Expected is on target and fresh. Judged is where the limit bites: for a minimum at the end"
          + " of the shelf life, wet, handling overage lost; for a maximum fresh, dry, all overage"
          + " present. Both are of what is weighed for this batch. \"≥\" stands where some ingredient"
          + " does not give its content, or gives it as below a figure: there may be more; \"≤\" where"
          + " there may be less, \"~\" for both.";
  private static final String SUPPLIED =
      "Designed is asked over dose. Fresh is with overage for stability and with what the other"
          + " parts bring; stored is what is left of that at the end of the shelf life.";

  private LaboratorySheet() {}

  static List<Block> of(BatchPlan plan) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("For the laboratory: " + plan.code() + "  " + plan.title(), true));
    if (plan.draft()) {
      blocks.add(new Stamp(BatchSheet.DRAFT, plan.draftBecause()));
    }
    blocks.add(
        new Facts(
            List.of(
                new Fact("Batch number", BatchSheet.number(plan)),
                new Fact("Recipe version", BatchSheet.version(plan.provenance())),
                new Fact("Sampled by, date", ""),
                new Fact("From bags, number", ""),
                new Fact(
                    "Moisture expected",
                    Figures.fixed(Unit.PERCENT.fromBase(plan.moisture()), 1) + " %"))));
    figures(plan, blocks);
    plan.waived().forEach(waived -> blocks.add(new Words(words(waived))));
    blocks.add(
        new Warnings(
            List.of(
                "Medicated feed needs a veterinarian's prescription and is not made from this"
                    + " sheet.",
                "Limits are only as good as the folder that holds them. Local law, a veterinarian"
                    + " and a licensed nutritionist decide.")));
    return blocks;
  }

  private static void figures(BatchPlan plan, List<Block> blocks) {
    plan.premixing()
        .filter(premixing -> !premixing.supplied().isEmpty())
        .ifPresent(
            premixing -> {
              blocks.add(SheetTables.supplied(premixing.supplied()));
              blocks.add(new Words(SUPPLIED));
            });
    if (!plan.expected().isEmpty()) {
      blocks.add(SheetTables.expected(plan.expected()));
      blocks.add(new Words(EXPECTED));
    }
  }

  private static String words(Waived waived) {
    return "Waived until "
        + waived.until()
        + ": "
        + waived.what()
        + " "
        + waived.inForce()
        + " in place of "
        + waived.otherwise()
        + ", by "
        + waived.by()
        + ", because: "
        + waived.because()
        + ".";
  }
}
