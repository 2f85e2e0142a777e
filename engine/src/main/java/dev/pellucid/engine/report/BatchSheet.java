package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Caution;
import dev.pellucid.engine.plan.MassBalance;
import dev.pellucid.engine.plan.Packing;
import dev.pellucid.engine.plan.Provenance;
import dev.pellucid.engine.plan.Storing;
import dev.pellucid.engine.plan.Task;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Signatures;
import dev.pellucid.engine.report.Block.Stamp;
import dev.pellucid.engine.report.Block.Ticks;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * The words of a batch sheet in the order of the work: head, before the start, grind, weigh, then
 * every task; mass balance and release; a second page for the laboratory. Prices stay out.
 */
final class BatchSheet {
  private final BatchPlan plan;
  private final List<Block> blocks = new ArrayList<>();
  private int part;

  private BatchSheet(BatchPlan plan) {
    this.plan = plan;
  }

  static List<Block> of(BatchPlan plan) {
    BatchSheet sheet = new BatchSheet(plan);
    sheet.head();
    sheet.beforeTheStart();
    sheet.work();
    sheet.massBalance();
    sheet.release();
    sheet.laboratory();
    return sheet.blocks;
  }

  private void head() {
    blocks.add(new Title(plan.code(), plan.title()));
    if (plan.draft()) {
      blocks.add(new Stamp("DRAFT, NOT TO BE MADE", plan.draftBecause()));
    }
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Made by", plan.house()));
    if (!plan.fish().isEmpty()) {
      facts.add(new Fact("For", String.join(", ", plan.fish())));
    }
    facts.add(new Fact("Batch", batch()));
    facts.add(new Fact("Recipe version", version(plan.provenance())));
    facts.add(new Fact("Printed for the day", plan.provenance().day().toString()));
    facts.add(new Fact("Batch number", ""));
    facts.add(new Fact("Made on", ""));
    facts.add(new Fact("Load", "____ of ____"));
    blocks.add(new Facts(facts));
  }

  private String batch() {
    String size =
        kg(plan.balance().weighed()) + " weighed, " + kg(plan.balance().bagged()) + " in the bags";
    return plan.sizeTold() ? size : size + " (the recipe names no size: reckoned for 100 kg)";
  }

  private static String version(Provenance from) {
    String commit = from.commit().isEmpty() ? "no commit" : "commit " + from.commit();
    return commit + (from.clean() ? "" : ", with changes that are not committed");
  }

  private void beforeTheStart() {
    heading("Before the start");
    blocks.add(
        new Facts(
            List.of(
                new Fact("Feed made before this one", ""),
                new Fact("Flushed with, and kept as", ""),
                new Fact("Scales checked, by", ""),
                new Fact("Magnet clean, by", ""))));
    if (!plan.inspection().isEmpty()) {
      blocks.add(new Ticks(plan.inspection()));
    }
  }

  private void work() {
    boolean weighed = false;
    for (Task task : plan.tasks()) {
      if (!weighed && task.step() != Step.GRIND) {
        weigh();
        weighed = true;
      }
      task(task);
    }
    if (!weighed) {
      weigh();
    }
  }

  private void weigh() {
    heading("Weigh the mix");
    warnings(plan.mixCautions());
    if (!plan.dryLines().isEmpty()) {
      blocks.add(SheetTables.weighing("Dry lines", plan.dryLines()));
    }
    if (!plan.microLines().isEmpty()) {
      blocks.add(new Words("Weighed apart on the small scale, in grams. Two people sign."));
      blocks.add(SheetTables.micro("Small lines", plan.microLines()));
      blocks.add(new Signatures(List.of("Small lines weighed by", "Small lines checked by")));
    }
    if (!plan.liquidLines().isEmpty()) {
      blocks.add(new Words("Liquids go in last, slowly, with the mixer turning."));
      blocks.add(SheetTables.weighing("Liquid lines", plan.liquidLines()));
    }
    if (plan.hasOverage()) {
      blocks.add(new Words(SheetTables.OVERAGE));
    }
  }

  private void task(Task task) {
    heading(TaskWords.title(task.step()));
    warnings(task.cautions());
    List<Fact> facts = new ArrayList<>();
    for (Task.Asked asked : task.asked()) {
      String accept = asked.accept().isEmpty() ? "" : ", accept " + asked.accept();
      facts.add(new Fact(TaskWords.capital(asked.what()), asked.target() + accept));
    }
    facts.addAll(TaskWords.facts(task));
    if (task.step() == Step.PACK) {
      plan.packing().ifPresent(packing -> facts.addAll(packing(packing)));
    }
    if (task.step() == Step.STORE) {
      plan.storing().ifPresent(storing -> facts.add(useBy(storing)));
    }
    if (!facts.isEmpty()) {
      blocks.add(new Facts(facts));
    }
    task.drying().ifPresent(drying -> blocks.addAll(SheetTables.drying(drying)));
    if (task.step() == Step.COAT && !plan.coatLines().isEmpty()) {
      coat();
    }
  }

  private void coat() {
    blocks.add(new Facts(List.of(new Fact("Kernel weighed, kg", ""))));
    blocks.add(
        new Words("Weigh the kernel first: per kg of kernel holds when it is not as expected."));
    blocks.add(SheetTables.coat(plan.coatLines()));
  }

  private List<Fact> packing(Packing packing) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("To pack", kg(plan.balance().bagged())));
    String rest =
        packing.hasRemainder() ? " and one of " + kg(packing.remainder()) : ", nothing left over";
    facts.add(
        new Fact("Bags", packing.full() + " of " + Figures.plain(packing.bag(), Unit.KG) + rest));
    facts.add(new Fact("Bags counted", ""));
    facts.add(new Fact("Sample kept, number", ""));
    return facts;
  }

  private static Fact useBy(Storing storing) {
    return new Fact(
        "Use by",
        storing.useBy()
            + " when packed on the day of this sheet; else "
            + storing.days()
            + " days after packing");
  }

  private void massBalance() {
    heading("Mass balance");
    MassBalance balance = plan.balance();
    blocks.add(SheetTables.massBalance(balance));
    blocks.add(
        new Words(
            "Yield expected: "
                + Figures.fixed(Unit.PERCENT.fromBase(balance.yielded()), 1)
                + " % of what is weighed reaches the bags. Write down why when it does not."));
  }

  private void release() {
    heading("Release");
    blocks.add(new Signatures(List.of("Made by, date", "Released by, date")));
  }

  private void laboratory() {
    blocks.add(new Heading("For the laboratory: " + plan.code() + "  " + plan.title(), true));
    if (plan.draft()) {
      blocks.add(new Stamp("DRAFT, NOT TO BE MADE", plan.draftBecause()));
    }
    blocks.add(
        new Facts(
            List.of(
                new Fact("Batch number", ""),
                new Fact("Sample taken by, date", ""),
                new Fact(
                    "Moisture expected",
                    Figures.fixed(Unit.PERCENT.fromBase(plan.moisture()), 1) + " %"))));
    if (!plan.expected().isEmpty()) {
      blocks.add(SheetTables.expected(plan.expected()));
    }
    blocks.add(new Words(SheetTables.EXPECTED));
    blocks.add(
        new Warnings(
            List.of(
                "Medicated feed needs a veterinarian's prescription and is not made from this"
                    + " sheet.",
                "Limits are only as good as the folder that holds them. Local law, a veterinarian"
                    + " and a licensed nutritionist decide.")));
  }

  private void heading(String words) {
    part++;
    blocks.add(new Heading(part + ". " + words, false));
  }

  private void warnings(List<Caution> cautions) {
    if (!cautions.isEmpty()) {
      blocks.add(new Warnings(cautions.stream().map(BatchSheet::sentence).toList()));
    }
  }

  private static String sentence(Caution caution) {
    return caution.about().isEmpty()
        ? caution.sentence()
        : caution.about() + ": " + caution.sentence();
  }

  private static String kg(double kg) {
    return SheetTables.kg(kg) + " kg";
  }
}
