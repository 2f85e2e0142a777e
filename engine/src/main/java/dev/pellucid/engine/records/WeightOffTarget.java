package dev.pellucid.engine.records;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.data.Scale;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What was weighed is further from what was asked than practice allows, or than one division of the
 * scale that carries it where that is more. Water is held to the bound of the large scale.
 */
final class WeightOffTarget implements RecordRule {
  private static final Code CODE = new Code("weight-off-target");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    for (TargetWeight ask : batch.order().asks()) {
      List<Used> used =
          batch.used().stream().filter(one -> one.ask().index() == ask.index()).toList();
      double kg = used.stream().mapToDouble(Used::kg).sum();
      if (batch.record().isMade() && kg > 0) {
        hold(batch, ask.material().name(), used.get(0).entry().weight(), kg, ask.kg(), ask.micro())
            .ifPresent(out);
      }
    }
    water(batch, out);
  }

  private static void water(MadeBatch batch, Consumer<Finding> out) {
    Optional<ComputedFeed> feed = batch.order().feed();
    if (feed.isPresent() && batch.record().water().isPresent()) {
      double asked = feed.get().balances().expected().waterAdded() * batch.order().kg() / 100;
      double kg = batch.record().water().get().thing();
      Span place = batch.record().water().get().place();
      hold(batch, "water", place, kg, asked, false).ifPresent(out);
    }
  }

  private static Optional<Finding> hold(
      MadeBatch batch, String what, Span place, double kg, double asked, boolean micro) {
    BoundOf which = micro ? BoundOf.WEIGHING_MICRO : BoundOf.WEIGHING_MACRO;
    Optional<PracticeBound> bound = batch.tables().practice().bound(which);
    if (bound.isEmpty()) {
      return Optional.empty();
    }
    double allowed = Math.max(bound.get().high() * asked, division(batch, asked));
    if (Math.abs(kg - asked) <= allowed + Closeness.to(asked)) {
      return Optional.empty();
    }
    Figures.Pair figures = Figures.apart(kg, asked, 3);
    return Optional.of(
        Finding.warning(
                CODE,
                place,
                what
                    + " was weighed as "
                    + figures.value()
                    + " kg, "
                    + figures.other()
                    + " kg were asked for")
            .labelled(
                "off by "
                    + Figures.plain(Math.abs(kg - asked), Unit.KG)
                    + ", allowed are "
                    + Figures.plain(allowed, Unit.KG))
            .seeing("source of the bound", bound.get().source().declared())
            .helping("if it is a slip of the pen, mend the record")
            .helping("if it was weighed so, write it under deviations and have it decided"));
  }

  private static double division(MadeBatch batch, double kg) {
    return batch.tables().plant().map(Plant::scales).orElse(List.of()).stream()
        .filter(scale -> kg <= scale.most())
        .min(Comparator.comparingDouble(Scale::division))
        .map(Scale::division)
        .orElse(0.0);
  }
}
