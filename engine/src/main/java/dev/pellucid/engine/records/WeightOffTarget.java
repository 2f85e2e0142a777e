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
import dev.pellucid.text.Meant;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What was weighed is further from what was asked than practice allows, or than one division of the
 * scale that carries it where that is more. Water is held to the bound of the large scale.
 */
final class WeightOffTarget implements RecordRule {
  static final Code CODE = new Code("weight-off-target");
  private static final double GROSS = 1.34;

  private static final String CHANGED =
      "if the recipe was changed since, write made-from from the foot of the sheet: then it is held"
          + " against the recipe of that day";

  @Override
  public Code code() {
    return CODE;
  }

  /** Whether it is off by more than a third, so that much else follows from it. */
  static boolean isGross(double kg, double asked) {
    return kg > asked * GROSS || kg < asked / GROSS;
  }

  /** Where weights stand that are off by so much. */
  static List<Span> gross(MadeBatch batch) {
    List<Span> places = new ArrayList<>();
    if (!batch.record().isMade() || BatchSizeOff.factor(batch).isPresent()) {
      return places;
    }
    for (TargetWeight ask : batch.order().asks()) {
      double kg = 0;
      Span place = null;
      for (Used one : batch.used()) {
        if (one.ask().index() == ask.index()) {
          kg += one.kg();
          place = place == null ? one.entry().weight() : place;
        }
      }
      if (place != null && kg > 0 && isGross(kg, ask.kg())) {
        places.add(place);
      }
    }
    Optional<ComputedFeed> feed = batch.order().feed();
    if (feed.isPresent() && batch.record().water().isPresent()) {
      double asked = waterAsked(feed.get(), batch);
      if (isGross(batch.record().water().get().thing(), asked)) {
        places.add(batch.record().water().get().place());
      }
    }
    return places;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    if (BatchSizeOff.factor(batch).isPresent()) {
      return;
    }
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
      double asked = waterAsked(feed.get(), batch);
      double kg = batch.record().water().get().thing();
      Span place = batch.record().water().get().place();
      hold(batch, "water", place, kg, asked, false).ifPresent(out);
    }
  }

  private static double waterAsked(ComputedFeed feed, MadeBatch batch) {
    return feed.balances().expected().waterAdded() * batch.order().kg() / 100;
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
    Finding finding =
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
            .seeing("source of the bound", bound.get().source().declared());
    Optional<Double> meant = TenTimes.moved(kg, asked / GROSS, asked * GROSS);
    String slip = "if it is a writing mistake, fix the record";
    Finding helped =
        finding
            .helping(
                meant.isPresent() && isGross(kg, asked)
                    ? slip + ": " + Meant.question(Figures.plain(meant.get(), Unit.KG))
                    : slip)
            .helping("if it was weighed so, write it under deviations and have it decided");
    return Optional.of(batch.record().madeFrom().isPresent() ? helped : helped.helping(CHANGED));
  }

  private static double division(MadeBatch batch, double kg) {
    return batch.order().plant().map(Plant::scales).orElse(List.of()).stream()
        .filter(scale -> kg <= scale.most())
        .min(Comparator.comparingDouble(Scale::division))
        .map(Scale::division)
        .orElse(0.0);
  }
}
