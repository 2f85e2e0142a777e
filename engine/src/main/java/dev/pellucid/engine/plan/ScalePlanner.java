package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.plan.OnScales.DryerFilled;
import dev.pellucid.engine.plan.OnScales.Filled;
import dev.pellucid.engine.plan.OnScales.Hours;
import dev.pellucid.engine.plan.OnScales.LoadLine;
import dev.pellucid.engine.plan.OnScales.Shown;
import dev.pellucid.engine.plan.OnScales.ThinStep;
import dev.pellucid.engine.plan.OnScales.Thinned;
import dev.pellucid.engine.plan.OnScales.TraysFilled;
import dev.pellucid.engine.plan.OnScales.Turn;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.weighing.Dilution;
import dev.pellucid.engine.weighing.InDryer;
import dev.pellucid.engine.weighing.Loads;
import dev.pellucid.engine.weighing.SmallLines;
import dev.pellucid.engine.weighing.WeighingLine;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.engine.weighing.Weight;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The plan of a batch on a plant as a sheet shows it: each weight with the digits of its scale. */
final class ScalePlanner {
  private static final int WANTED_DECIMALS = 6;

  /** What goes through a dryer is weighed on no scale. */
  private static final int DRYER_DECIMALS = 0;

  private final ComputedFeed feed;
  private final String plant;
  private final WeighingPlan floor;

  private ScalePlanner(ComputedFeed feed, String plant, WeighingPlan floor) {
    this.feed = feed;
    this.plant = plant;
    this.floor = floor;
  }

  static OnScales plan(ComputedFeed feed, WeighingPlan floor) {
    return new ScalePlanner(feed, feed.recipe().plant().map(Plant::title).orElse(""), floor)
        .onScales();
  }

  private OnScales onScales() {
    return new OnScales(
        plant,
        floor.loads().map(loads -> filled(loads)),
        floor.loadCount(),
        floor.mix().stream().map(line -> line(line, floor.loadCount())).toList(),
        floor.coat().stream().map(line -> line(line, floor.coatRounds())).toList(),
        floor.coatRounds(),
        floor.water().stream().map(placing -> placing.placed().map(ScalePlanner::shown)).toList(),
        floor.dryer().map(ScalePlanner::filled));
  }

  private static DryerFilled filled(InDryer dryer) {
    return new DryerFilled(
        dryer.dryer().title(),
        dryer.trays().map(trays -> new TraysFilled(trays.load(), trays.count())),
        Mass.of(dryer.water(), DRYER_DECIMALS),
        dryer
            .dryer()
            .way()
            .byKind(
                trays -> OptionalDouble.empty(),
                bed -> OptionalDouble.of(bed.waterPerHour()),
                belt -> OptionalDouble.of(belt.waterPerHour())),
        dryer.rounds(),
        Mass.of(dryer.kgOfRound(), DRYER_DECIMALS),
        dryer.each().map(ScalePlanner::hours),
        dryer.all().map(ScalePlanner::hours));
  }

  private static Hours hours(InDryer.Hours hours) {
    return new Hours(hours.low(), hours.high());
  }

  private LoadLine line(WeighingLine line, int portions) {
    Optional<Shown> shown = line.placing().placed().map(ScalePlanner::shown);
    return new LoadLine(
        line.line().material().name(),
        WeighList.title(line.line().material()),
        WeighList.lot(line.line().material()),
        SmallLines.has(feed, line.line()),
        turn(line.line()),
        Mass.of(line.target() - line.taken(), WANTED_DECIMALS),
        shown,
        line.target() == 0 ? 0 : line.actual() / line.target() - 1,
        line.dilution().map(dilution -> thinned(line, dilution, portions)));
  }

  private Turn turn(Line line) {
    if (line.material().isLiquid()) {
      return Turn.LIQUID;
    }
    if (!SmallLines.has(feed, line)) {
      return Turn.LARGE;
    }
    boolean apart =
        line.material()
            .single()
            .filter(single -> single.ingredient().traits().contains(Trait.CHOLINE))
            .isPresent();
    return apart ? Turn.APART_FROM_VITAMINS : Turn.SMALL;
  }

  private static Filled filled(Loads loads) {
    double least = loads.fills() ? 0 : loads.mixer().fillLow();
    return new Filled(loads.mixer().title(), loads.dryFill(), loads.wetFill(), least);
  }

  private static Thinned thinned(WeighingLine line, Dilution dilution, int portions) {
    Shown take = shown(dilution.take());
    Mass taken = new Mass(all(take).kg().multiply(BigDecimal.valueOf(portions)));
    List<ThinStep> steps = new ArrayList<>();
    for (int i = 0; i < dilution.steps().size(); i++) {
      Shown strong = shown(dilution.steps().get(i).strong());
      Shown carrier = shown(dilution.steps().get(i).carrier());
      boolean last = i + 1 == dilution.steps().size();
      Mass makes = all(strong).plus(all(carrier));
      Mass used = last ? taken : all(shown(dilution.steps().get(i + 1).strong()));
      steps.add(new ThinStep(strong, carrier, makes, makes.minus(used)));
    }
    double least =
        line.placing()
            .byKind(placed -> line.target(), little -> little.least(), much -> line.target());
    return new Thinned(dilution.carrier().material().title(), least / line.target(), steps, take);
  }

  private static Mass all(Shown shown) {
    return new Mass(shown.each().kg().multiply(BigDecimal.valueOf(shown.weighings())));
  }

  /** With the digits that the weight and what it may be off need, and none more. */
  private static Shown shown(Weight weight) {
    int finest = decimals(BigDecimal.valueOf(weight.scale().division()));
    BigDecimal each = Mass.of(weight.each(), finest).kg();
    BigDecimal tolerance = Mass.of(weight.tolerance(), finest).kg();
    int decimals = Math.max(decimals(each), decimals(tolerance));
    return new Shown(
        weight.scale().title(),
        weight.weighings(),
        new Mass(each).at(decimals),
        new Mass(tolerance).at(decimals));
  }

  private static int decimals(BigDecimal kg) {
    return Math.max(0, kg.stripTrailingZeros().scale());
  }
}
