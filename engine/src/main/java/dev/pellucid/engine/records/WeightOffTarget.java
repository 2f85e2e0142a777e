package dev.pellucid.engine.records;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.BatchRecord.Release;
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
import java.util.regex.Pattern;

/**
 * What was weighed is further from what was asked than practice allows, or than one division of the
 * scale that carries it where that is more. Water is held to the bound of the large scale.
 */
final class WeightOffTarget implements RecordRule {
  static final Code CODE = new Code("weight-off-target");
  private static final double GROSS = 1.34;

  /** As near a scale is read to what it is to show; no source. */
  private static final double SHOWN = 0.02;

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
        Entry first = used.get(0).entry();
        List<String> names = List.of(ask.material().name(), first.line());
        hold(batch, names, first.weight(), kg, ask.kg(), ask.micro())
            .map(finding -> diluted(ask, kg, finding))
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
      hold(batch, List.of("water"), place, kg, asked, false).ifPresent(out);
    }
  }

  private static double waterAsked(ComputedFeed feed, MadeBatch batch) {
    return feed.balances().expected().waterAdded() * batch.order().kg() / 100;
  }

  /**
   * @param names of what was weighed, the one by which it is told first
   */
  private static Optional<Finding> hold(
      MadeBatch batch, List<String> names, Span place, double kg, double asked, boolean micro) {
    BoundOf which = micro ? BoundOf.WEIGHING_MICRO : BoundOf.WEIGHING_MACRO;
    Optional<PracticeBound> bound = batch.tables().practice().bound(which);
    if (bound.isEmpty()) {
      return Optional.empty();
    }
    double allowed = Math.max(bound.get().high() * asked, division(batch, asked));
    if (Math.abs(kg - asked) <= allowed + Closeness.to(asked)) {
      return Optional.empty();
    }
    String what = names.get(0);
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
    Optional<Double> meant =
        isGross(kg, asked) ? TenTimes.moved(kg, asked / GROSS, asked * GROSS) : Optional.empty();
    String slip = "if it is a writing mistake, fix the record";
    Optional<Finding> told =
        meant.isEmpty() ? toldAndReleased(batch, names, finding) : Optional.empty();
    return told.isPresent()
        ? told
        : Optional.of(
            changed(
                batch,
                finding
                    .helping(
                        meant.isPresent()
                            ? slip + ": " + Meant.question(Figures.plain(meant.get(), Unit.KG))
                            : slip)
                    .helping(
                        "if it was weighed so, write it under deviations with the name "
                            + what
                            + ", and have the batch released or rejected")));
  }

  /** A record that does not say what it was made from is held against the recipe of today. */
  private static Finding changed(MadeBatch batch, Finding finding) {
    return batch.record().madeFrom().isPresent() ? finding : finding.helping(CHANGED);
  }

  /** What went otherwise by name, in a batch that somebody released, needs no further look. */
  private static Optional<Finding> toldAndReleased(
      MadeBatch batch, List<String> names, Finding finding) {
    boolean named =
        batch.record().deviations().stream()
            .anyMatch(words -> names.stream().anyMatch(name -> hasWord(words, name)));
    return releasedBy(batch.record())
        .filter(by -> named)
        .map(
            by ->
                Finding.note(finding.code(), finding.span(), finding.headline())
                    .labelled(finding.label())
                    .noting("told under deviations, and released by " + by));
  }

  /** Who released it, whatever was decided later for another reason. */
  private static Optional<String> releasedBy(BatchRecord record) {
    Optional<String> first =
        record.release().filter(it -> it.decision() == Decision.RELEASED).map(Release::by);
    return first
        .or(
            () ->
                record.since().decisions().stream()
                    .filter(it -> it.decision() == Decision.RELEASED)
                    .map(it -> it.signed().by())
                    .findFirst())
        .filter(by -> !by.isEmpty());
  }

  /** Whether a name stands by itself: {@code fish-meal} is not told by {@code fish-meal-65}. */
  private static boolean hasWord(String words, String name) {
    String edge = "[\\p{L}\\p{N}-]";
    return Pattern.compile(
            "(?<!" + edge + ")" + Pattern.quote(name) + "(?!" + edge + ")",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
        .matcher(words)
        .find();
  }

  /** Whoever copies the sheet writes what the scale showed of the dilution. */
  private static Finding diluted(TargetWeight ask, double kg, Finding finding) {
    return ask.dilution()
        .filter(it -> isNear(kg, it.each()) || isNear(kg, it.all()))
        .map(
            it ->
                finding.helping(
                    "that is the weight of the dilution: write "
                        + Figures.plain(Unit.G.fromBase(ask.kg()))
                        + " g"))
        .orElse(finding);
  }

  private static boolean isNear(double kg, double shown) {
    return Math.abs(kg - shown) <= shown * SHOWN;
  }

  private static double division(MadeBatch batch, double kg) {
    return batch.order().plant().map(Plant::scales).orElse(List.of()).stream()
        .filter(scale -> kg <= scale.most())
        .min(Comparator.comparingDouble(Scale::division))
        .map(Scale::division)
        .orElse(0.0);
  }
}
