package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.Analyses;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Waived;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Look;
import dev.pellucid.engine.report.Block.Stamp;
import dev.pellucid.engine.report.Block.Together;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.List;

/** What the laboratory gets: what an analysis should find, against what is asked. */
final class LaboratorySheet {
  private static final String EXPECTED =
      "Expected is on target and fresh. Judged is where the limit bites: for a minimum at the end"
          + " of the shelf life, wet, handling overage lost; for a maximum fresh, dry, all overage"
          + " present. Both are of what is weighed for this batch. \"≥\" stands where some ingredient"
          + " does not give its content, or gives it as below a figure: there may be more; \"≤\" where"
          + " there may be less, \"~\" for both.";
  private static final String FIRST =
      "Analyse these of each batch: the usual ones, then what stands nearest to a limit.";
  private static final String MORE = "Analyse these only when you are asked to.";
  private static final String RECKONED = "Computed only, no analysis of the feed finds them: ";
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
                new Fact("From bags, number", ""))));
    if (plan.expected().isEmpty()) {
      String moisture = Figures.fixed(Unit.PERCENT.fromBase(plan.moisture()), 1) + " %";
      blocks.add(new Facts(List.of(new Fact("Moisture expected", moisture))));
    }
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
    Analyses analyses = Analyses.of(plan.expected());
    if (!analyses.first().isEmpty()) {
      blocks.add(
          new Together(
              Look.KEPT,
              List.of(new Words(FIRST), SheetTables.expected("Analyse", analyses.first()))));
    }
    if (!analyses.more().isEmpty()) {
      blocks.add(new Words(MORE));
      blocks.add(SheetTables.expected("Analysis", analyses.more()));
    }
    if (!analyses.reckoned().isEmpty()) {
      List<String> told = analyses.reckoned().stream().map(SheetTables::reckoned).toList();
      blocks.add(new Words(RECKONED + String.join("; ", told) + "."));
    }
    if (!plan.expected().isEmpty()) {
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
