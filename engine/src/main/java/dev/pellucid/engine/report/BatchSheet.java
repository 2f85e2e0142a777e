package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Caution;
import dev.pellucid.engine.plan.Mass;
import dev.pellucid.engine.plan.OnScales;
import dev.pellucid.engine.plan.Premixing;
import dev.pellucid.engine.plan.Provenance;
import dev.pellucid.engine.plan.Task;
import dev.pellucid.engine.plan.Totals;
import dev.pellucid.engine.plan.Warned;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Look;
import dev.pellucid.engine.report.Block.Running;
import dev.pellucid.engine.report.Block.Signatures;
import dev.pellucid.engine.report.Block.Stamp;
import dev.pellucid.engine.report.Block.Ticks;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Together;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The words of a batch sheet in the order of the work: head, before the start, grind, weigh, then
 * every task; mass balance and release; what the whole batch takes of the store; then what the
 * laboratory gets. Prices stay out.
 */
final class BatchSheet {
  static final String DRAFT = "DRAFT, NOT TO BE MADE";
  static final String NO_LAW = "No law was judged, for the folder names no jurisdiction";
  private static final String WEIGHING = "Weigh the mix";
  private final BatchPlan plan;
  private final List<Block> blocks = new ArrayList<>();
  private int part;
  private int watered;

  private BatchSheet(BatchPlan plan) {
    this.plan = plan;
  }

  static List<Block> of(BatchPlan plan) {
    BatchSheet sheet = new BatchSheet(plan);
    sheet.head();
    sheet.rebalanced();
    sheet.beforeTheStart();
    sheet.work();
    sheet.massBalance();
    sheet.release();
    sheet.totals();
    sheet.blocks.addAll(LaboratorySheet.of(plan));
    return sheet.blocks;
  }

  private void head() {
    String running =
        plan.number().orElse(plan.code())
            + RebalancedBlocks.running(plan)
            + ", "
            + version(plan.provenance());
    blocks.add(new Running(plan.draft() ? DRAFT : "", running));
    blocks.add(new Title(plan.code(), plan.title() + RebalancedBlocks.title(plan)));
    if (plan.draft()) {
      blocks.add(new Stamp(DRAFT, plan.draftBecause()));
    }
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Size", batch()));
    facts.add(new Fact("Batch number", number(plan)));
    plan.premixing().ifPresent(premixing -> facts.addAll(premix(premixing)));
    if (!plan.fish().isEmpty()) {
      facts.add(new Fact("For", String.join(", ", plan.fish())));
    }
    plan.reviewed().ifPresent(words -> facts.add(new Fact("Reviewed by", words)));
    facts.add(new Fact("Made on", ""));
    facts.add(new Fact("Recipe version", version(plan.provenance())));
    if (!plan.provenance().fingerprint().isEmpty()) {
      facts.add(new Fact("Fingerprint", MadeFromLine.grouped(plan.provenance().fingerprint())));
    }
    if (plan.scales().isEmpty()) {
      facts.add(new Fact("Load", "____ of ____"));
    }
    facts.add(new Fact("Mill or farm", plan.house()));
    if (plan.jurisdiction().isEmpty()) {
      facts.add(new Fact("Law", NO_LAW));
    }
    plan.scales().ifPresent(scales -> facts.add(new Fact("Plant", scales.plant())));
    facts.add(new Fact("Sheet of the day", plan.provenance().day().toString()));
    plan.makeBy()
        .ifPresent(day -> facts.add(new Fact("Not to be made after", day + ", see limits")));
    blocks.add(new Facts(facts));
  }

  /** Code, day and room for the serial of the day. */
  static String number(BatchPlan plan) {
    return plan.number().orElse(plan.code() + "-" + plan.provenance().day() + "-____");
  }

  private String batch() {
    String size =
        Figures.plain(plan.balance().weighed().asDouble(), Unit.KG)
            + "; "
            + kg(plan.balance().bagged().stripped())
            + " in the bags";
    return plan.sizeTold() ? size : size + " (no size is given; the program chose it)";
  }

  private List<Fact> premix(Premixing premixing) {
    List<Fact> facts = new ArrayList<>();
    if (!premixing.dose().isEmpty()) {
      facts.add(new Fact("Dose", premixing.dose() + " of weighed feed"));
    }
    if (!premixing.needs().isEmpty()) {
      boolean planned = plan.number().isPresent();
      String needs =
          premixing.needs().stream()
              .map(need -> need.code() + " " + Figures.plain(need.kg().asDouble()) + " kg")
              .collect(Collectors.joining(", "));
      String bags = ", rounded up to whole bags of " + premixing.bag().inKg() + " kg";
      String more = premixing.forTheMixer() ? " and to what the mixer mixes evenly" : "";
      facts.add(
          new Fact(
              planned ? "One batch each takes" : "For one batch each of",
              planned ? needs : needs + bags + more));
    }
    return facts;
  }

  static String version(Provenance from) {
    if (from.commit().isEmpty()) {
      return "no commit";
    }
    return "commit " + from.commit() + (from.clean() ? ", clean" : ", with changes not committed");
  }

  private void rebalanced() {
    if (plan.rebalanced().isPresent()) {
      heading("Shares of this batch");
      blocks.addAll(RebalancedBlocks.of(plan.rebalanced().get()));
    }
  }

  private void beforeTheStart() {
    heading("Before the start");
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Made before this one", plan.line().after()));
    facts.add(new Fact("Scales checked, by", ""));
    facts.add(new Fact("Flushed with, kept as", SequenceBlocks.flushed(plan.line())));
    facts.add(new Fact("Magnet clean, by", ""));
    if (!plan.line().cleaned().isEmpty()) {
      facts.add(new Fact("Line cleaned", plan.line().cleaned()));
    }
    if (!plan.line().toClean().isEmpty()) {
      facts.add(new Fact("Line cleaned by, when", ""));
      facts.add(new Fact("Line cleaned, how", ""));
      facts.add(new Fact("Flush kept apart, where", ""));
    }
    blocks.add(new Facts(facts));
    blocks.addAll(SequenceBlocks.of(plan.line()));
    if (!plan.inspection().isEmpty()) {
      blocks.add(new Ticks(plan.inspection()));
    }
  }

  private void work() {
    boolean weighed = false;
    for (Task task : plan.tasks()) {
      if (!weighed && !task.step().comesBeforeWeighing()) {
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
    heading(WEIGHING);
    warnings(new Warned(plan.mixCautions(), List.of()));
    if (plan.hasOverage()) {
      blocks.add(
          new Words(
              plan.scales().isPresent()
                  ? WeighTables.INCLUDED
                  : WeighTables.overage(plan.weighing())));
    }
    blocks.addAll(StoreBlocks.of(plan));
    if (plan.scales().isPresent()) {
      blocks.addAll(LoadTables.mix(plan, plan.scales().get()));
      return;
    }
    if (!plan.dryLines().isEmpty()) {
      blocks.add(WeighTables.large(plan, "Large scale", plan.dryLines()));
    }
    if (!plan.microLines().isEmpty()) {
      blocks.add(WeighTables.small(plan, "Small scale", plan.microLines()));
      blocks.add(twoSign());
    }
    if (!plan.liquidLines().isEmpty()) {
      blocks.add(new Words("Liquids go in last, slowly, with the mixer turning."));
      blocks.add(WeighTables.large(plan, "Liquids", plan.liquidLines()));
    }
  }

  private static Signatures twoSign() {
    return new Signatures(List.of("Small scale: weighed by", "Small scale: checked by"));
  }

  private void task(Task task) {
    heading(TaskWords.title(task.step()));
    warnings(task.warned());
    List<Fact> facts = new ArrayList<>();
    List<Task.Asked> told = task.milled().isEmpty() ? task.asked() : List.of();
    for (Task.Asked asked : told) {
      String accept = asked.accept().isEmpty() ? "" : ", accept " + asked.accept();
      facts.add(new Fact(TaskWords.capital(asked.what()), asked.target() + accept));
    }
    facts.addAll(TaskWords.facts(task, plan));
    if (!facts.isEmpty()) {
      blocks.add(new Facts(facts));
    }
    blocks.addAll(StepTables.mill(task, plan));
    plan.scales().ifPresent(scales -> eachLoad(task, scales));
    TaskWords.remark(task).ifPresent(words -> blocks.add(new Words(words)));
    if (task.step() == Step.DRY) {
      plan.scales()
          .flatMap(OnScales::dryer)
          .ifPresent(dryer -> blocks.add(new Words(DryerWords.ofSheet(dryer))));
    }
    task.drying().ifPresent(drying -> blocks.addAll(SheetTables.drying(drying)));
    if (task.step() == Step.COAT) {
      coat();
    }
  }

  private void eachLoad(Task task, OnScales scales) {
    switch (task.step()) {
      case BLEND, ADD_LIQUID -> blocks.add(StepTables.times(scales));
      case ADD_WATER -> {
        blocks.add(StepTables.water(task, watered, plan, scales));
        watered++;
      }
      case GRIND, CONDITION, PELLET, EXTRUDE, DRY, COOL, COAT, SIEVE, PACK, STORE -> {}
    }
  }

  private void coat() {
    if (plan.scales().isPresent()) {
      blocks.addAll(LoadTables.coat(plan, plan.scales().get()));
      return;
    }
    if (!plan.coatLines().isEmpty()) {
      blocks.add(WeighTables.coat(plan, "Coat", plan.coatLines()));
    }
    if (!plan.smallCoatLines().isEmpty()) {
      blocks.add(WeighTables.smallCoat(plan, "Coat, small scale", plan.smallCoatLines()));
      blocks.add(twoSign());
    }
  }

  private void massBalance() {
    heading("Mass balance");
    blocks.add(SheetTables.massBalance(plan.balance()));
    blocks.add(
        new Words(
            "Yield expected: "
                + Figures.fixed(Unit.PERCENT.fromBase(plan.balance().yielded()), 1)
                + " % of what the recipe weighs reaches the bags."));
  }

  private void release() {
    heading("Release");
    if (plan.storing().isEmpty()) {
      blocks.add(new Words("No shelf life is given: ask before a use-by day goes on the bags."));
    }
    List<Fact> told = new ArrayList<>();
    told.add(new Fact("What went otherwise", ""));
    told.add(new Fact("Why", ""));
    MadeFromLine.of(plan.provenance()).ifPresent(line -> told.add(new Fact("Record", line)));
    blocks.add(new Facts(told));
    blocks.add(new Signatures(List.of("Made by, date", "Released by, date")));
  }

  /** At the back, away from the work and small, so that nobody weighs them. */
  private void totals() {
    List<Totals.Total> totals = Totals.of(plan);
    if (!totals.isEmpty()) {
      heading("From the store for the whole batch");
      blocks.add(
          new Together(
              Look.ASIDE, List.of(new Words(StepTables.TOTALS), StepTables.totals(totals))));
    }
  }

  private void heading(String words) {
    part++;
    blocks.add(new Heading(part + ". " + words, false));
  }

  private void warnings(Warned warned) {
    List<String> sentences = new ArrayList<>();
    warned.first().forEach(caution -> sentences.add(sentence(caution)));
    if (!warned.again().isEmpty()) {
      String places = warned.again().stream().map(this::place).collect(Collectors.joining(", "));
      sentences.add("As above at: " + places + ".");
    }
    if (!sentences.isEmpty()) {
      blocks.add(new Warnings(sentences));
    }
  }

  private String place(Optional<Step> step) {
    return step.map(TaskWords::title).orElse(WEIGHING);
  }

  private static String sentence(Caution caution) {
    return caution.about().isEmpty() ? caution.words() : caution.about() + ": " + caution.words();
  }

  private static String kg(Mass weight) {
    return weight.inKg() + " kg";
  }
}
