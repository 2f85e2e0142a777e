package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Retention;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleSupplier;

/**
 * What each stability class keeps on its way: the product over the steps, and over storage {@code
 * keep^(days / 30.4375)}. A gap in the data keeps nothing at the poorest end and all at the
 * richest, unless one asks what would be if it kept all.
 */
final class RetentionPath {
  private static final double HOURS_A_MONTH = Unit.MONTH.toBase(1);

  private final Retentions retentions;
  private final Passes passes;
  private final Span declared;
  private final List<Heating> heatings;
  private final double storageTemperatureUntold;
  private final double leftInGap;
  private final Set<RetentionGap> gaps = new LinkedHashSet<>();

  /** A pass that heats the mix, and how hot, in °C, where it says so. */
  private record Heating(Pass pass, Optional<Setting> temperature) {}

  /**
   * @param declared the name of the recipe, where nothing of its process is told
   * @param leftInGap the part that counts as left where nothing is told
   */
  RetentionPath(
      Retentions retentions,
      Passes passes,
      Span declared,
      double airTemperature,
      double leftInGap) {
    this.retentions = retentions;
    this.passes = passes;
    this.declared = declared;
    this.storageTemperatureUntold = airTemperature;
    this.leftInGap = leftInGap;
    this.heatings = new ArrayList<>();
    for (Pass pass : passes.inOrder()) {
      if (pass.step().destroys()) {
        heatings.add(new Heating(pass, pass.setting(Property.TEMPERATURE)));
      }
    }
  }

  /** The same if every step of which nothing is told kept all. */
  RetentionPath asIfGapsKeptAll() {
    return new RetentionPath(retentions, passes, declared, storageTemperatureUntold, 1);
  }

  Set<RetentionGap> gaps() {
    return gaps;
  }

  /** How many stability classes there are, stable included. */
  int classes() {
    return retentions.count();
  }

  /**
   * The part kept through the process. Where a temperature is a band, what is expected is read at
   * its aim, the poorest at the end that destroys most, the richest at the end that keeps most.
   *
   * @param heated false for what is coated on
   */
  double throughProcess(int stability, boolean heated, Scenario end) {
    Optional<Retention> row = retentions.at(stability);
    if (row.isEmpty() || !heated) {
      return 1;
    }
    if (!passes.isTold()) {
      gaps.add(RetentionGap.ofProcess(row.get().stability(), declared));
      return end == Scenario.POOREST ? leftInGap : 1;
    }
    double kept = 1;
    for (Heating heating : heatings) {
      kept *= through(row.get(), heating, end);
    }
    return kept;
  }

  /** The part kept until the end of shelf life. */
  double throughStorage(int stability) {
    Optional<Retention> row = retentions.at(stability);
    Optional<Pass> store = passes.first(Step.STORE);
    Optional<Setting> life = passes.setting(Step.STORE, Property.SHELF_LIFE);
    if (row.isEmpty()) {
      return 1;
    }
    if (life.isEmpty() || store.isEmpty()) {
      return keptForUnknown(row.get(), passes);
    }
    Optional<Setting> told = passes.setting(Step.STORE, Property.TEMPERATURE);
    double temperature = told.isPresent() ? told.get().most() : storageTemperatureUntold;
    return stored(row.get(), temperature, life.get().most(), store.get());
  }

  /** What is packed or stored waits, and nothing says how long; what is neither is fed at once. */
  private double keptForUnknown(Retention row, Passes way) {
    Optional<Pass> store = way.first(Step.STORE);
    Optional<Pass> packed = store.isPresent() ? store : way.first(Step.PACK);
    if (packed.isEmpty()) {
      return 1;
    }
    gaps.add(new RetentionGap(row.stability(), "store", Optional.empty(), packed.get().span()));
    return leftInGap;
  }

  /** The part kept in a premix until it is used. */
  double inPremix(int stability, ResolvedPremix premix) {
    Optional<Retention> row = retentions.at(stability);
    if (row.isEmpty()) {
      return 1;
    }
    if (premix.keeping().isEmpty()) {
      return keptForUnknown(row.get(), premix.process());
    }
    ResolvedPremix.Keeping keeping = premix.keeping().get();
    OptionalDouble month = row.get().perMonth(keeping.temperature());
    if (month.isEmpty()) {
      gaps.add(
          new RetentionGap(
              row.get().stability(),
              "store",
              Optional.of(keeping.temperature()),
              keeping.warmth()));
      return leftInGap;
    }
    return Math.pow(month.getAsDouble(), keeping.hours() / HOURS_A_MONTH);
  }

  /** Place by place what {@link #inPremix}, {@link #throughProcess} and the store keep. */
  List<Losses.Loss> losses(int stability, boolean heated, List<ResolvedPremix> through) {
    List<Losses.Loss> losses = new ArrayList<>();
    Optional<Retention> row = retentions.at(stability);
    if (row.isEmpty()) {
      return losses;
    }
    for (ResolvedPremix premix : through) {
      Optional<ResolvedPremix.Keeping> lies = premix.keeping();
      if (lies.isPresent() || waits(premix.process())) {
        losses.add(
            new Losses.Loss(
                Step.STORE,
                Optional.of(premix.code()),
                lies.map(one -> Losses.Warmth.of(one.temperature())),
                lies.map(one -> Losses.Time.of(one.hours())).orElse(Losses.Time.NONE),
                kept(1, 1, () -> inPremix(stability, premix))));
      }
    }
    if (heated) {
      for (Heating heating : heatings) {
        losses.add(
            new Losses.Loss(
                heating.pass().step(),
                Optional.empty(),
                heating
                    .temperature()
                    .map(told -> new Losses.Warmth(told.least(), told.aim(), told.most())),
                Losses.Time.NONE,
                kept(
                    through(row.get(), heating, Scenario.EXPECTED),
                    through(row.get(), heating, Scenario.RICHEST),
                    () -> through(row.get(), heating, Scenario.POOREST))));
      }
    }
    Optional<Setting> life = passes.setting(Step.STORE, Property.SHELF_LIFE);
    if (waits(passes)) {
      Optional<Setting> told = passes.setting(Step.STORE, Property.TEMPERATURE);
      double warmth = told.isPresent() ? told.get().most() : storageTemperatureUntold;
      losses.add(
          new Losses.Loss(
              Step.STORE,
              Optional.empty(),
              Optional.of(Losses.Warmth.of(warmth)),
              life.map(one -> Losses.Time.of(one.most())).orElse(Losses.Time.NONE),
              kept(1, 1, () -> throughStorage(stability))));
    }
    return losses;
  }

  private static boolean waits(Passes way) {
    return way.has(Step.STORE) || way.has(Step.PACK);
  }

  /** A gap that is noted on the way to the poorest is one of this place. */
  private Losses.Parts kept(double expected, double richest, DoubleSupplier poorest) {
    gaps.clear();
    double least = poorest.getAsDouble();
    return new Losses.Parts(expected, least, richest, gaps.isEmpty());
  }

  private double stored(Retention row, double temperature, double hours, Pass store) {
    OptionalDouble month = row.perMonth(temperature);
    if (month.isEmpty()) {
      gaps.add(RetentionGap.of(row.stability(), store, Optional.of(temperature)));
      return leftInGap;
    }
    return Math.pow(month.getAsDouble(), hours / HOURS_A_MONTH);
  }

  /**
   * Nothing is known above the hottest row that is told: a band that reaches beyond it is a gap,
   * told once, whichever end is asked for.
   */
  private double through(Retention row, Heating heating, Scenario end) {
    Step step = heating.pass().step();
    Optional<Setting> told = heating.temperature();
    Optional<Retention.Range> kept =
        told.isEmpty()
            ? Optional.empty()
            : row.through(step, told.get().least(), told.get().most());
    if (kept.isEmpty()) {
      gaps.add(RetentionGap.of(row.stability(), heating.pass(), told.map(Setting::most)));
      return end == Scenario.POOREST ? leftInGap : asFarAsTold(row, step, told, end);
    }
    return switch (end) {
      case EXPECTED -> row.through(step, told.orElseThrow().aim()).orElseThrow();
      case POOREST -> kept.get().least();
      case RICHEST -> kept.get().most();
    };
  }

  /**
   * Of a band that reaches beyond what is told, the part that is told; all is kept where none is.
   */
  private static double asFarAsTold(
      Retention row, Step step, Optional<Setting> told, Scenario end) {
    if (told.isEmpty()) {
      return 1;
    }
    if (end == Scenario.EXPECTED) {
      return row.through(step, told.get().aim()).orElse(1);
    }
    double hottest = row.hottest(step).orElse(told.get().least());
    return row.through(step, told.get().least(), hottest).map(Retention.Range::most).orElse(1.0);
  }
}
