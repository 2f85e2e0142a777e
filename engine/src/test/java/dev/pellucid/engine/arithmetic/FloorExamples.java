package dev.pellucid.engine.arithmetic;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Packing;
import dev.pellucid.engine.plan.Provenance;
import dev.pellucid.engine.plan.TrayChart;
import dev.pellucid.engine.weighing.Dilution;
import dev.pellucid.engine.weighing.InDryer;
import dev.pellucid.engine.weighing.Loads;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.engine.weighing.WeighingPlanner;
import dev.pellucid.engine.weighing.Weight;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A batch on the scales, in the mixer and in the dryer. */
final class FloorExamples {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String SCALES =
      """
      name: Shed
      air-temperature: 25 °C
      shrink: 0 %
      scales:
        - {name: Gram scale, most: 2 kg, division: 0.1 g, least: 5 g}
        - {name: Bench scale, most: 15 kg, division: 5 g, least: 100 g}
        - {name: Platform scale, most: 100 kg, division: 50 g, least: 2 kg}
      """;

  private FloorExamples() {}

  static Map<String, Worked> all() {
    return Map.of(
        "tray", Worked.of(FloorExamples::tray, FloorExamples::trayOf),
        "scale", Worked.of(FloorExamples::scale, FloorExamples::scaleOf),
        "dilution", Worked.of(FloorExamples::dilution, FloorExamples::dilutionOf),
        "loads", Worked.of(FloorExamples::loads, FloorExamples::loadsOf),
        "bags", Worked.of(FloorExamples::bags, FloorExamples::bagsOf),
        "trays", Worked.of(FloorExamples::trays, FloorExamples::traysOf),
        "drying-time", Worked.of(FloorExamples::hours, FloorExamples::hoursOf));
  }

  private static Map<String, Double> tray(Given g) {
    double dry = g.of("loaded") * (1 - g.of("moisture as loaded"));
    return Map.of("tray when dry enough", dry / (1 - g.of("moisture to reach")));
  }

  private static Map<String, Double> trayOf(Given g) {
    return Map.of(
        "tray when dry enough",
        TrayChart.weight(g.of("loaded"), g.of("moisture as loaded"), g.of("moisture to reach")));
  }

  private static Map<String, Double> scale(Given g) {
    double asked = g.of("share") * g.of("batch");
    double off = g.of("may be off") * asked;
    double division = g.of("division of the scale");
    if (division > off / 2) {
      throw new AssertionError("another scale");
    }
    double digit = Math.pow(10, Math.ceil(Math.log10(off / 10) - 1e-9));
    boolean even = Math.abs(digit / division - Math.rint(digit / division)) < 1e-9;
    double step = digit > division && even ? digit : division;
    return Map.of(
        "asked for",
        asked,
        "last digit that counts",
        step,
        "weighed",
        Math.rint(asked / step) * step,
        "may be off by",
        Math.floor(off / step + 1e-9) * step);
  }

  private static Map<String, Double> scaleOf(Given g) {
    String plant = SCALES.replace("division: 5 g", "division: " + g.text("division of the scale"));
    Cooked pantry = new Cooked().with("plant/shed.yaml", plant);
    pantry.with(
        "practice/bounds.yaml",
        "weighing-macro: {to: " + g.text("may be off") + ", source: workshop}\n");
    ComputedFeed feed =
        pantry.feed("mix\n  maize " + g.text("share") + "\n  wheat-middlings rest\n");
    var planner =
        WeighingPlanner.of(feed.recipe().plant().orElseThrow(), pantry.tables().practice())
            .orElseThrow();
    var line = planner.plan(feed, g.of("batch")).orElseThrow().mix().get(0);
    Weight weight = line.placing().placed().orElseThrow();
    double step =
        planner.reweighed(feed, g.of("batch")).orElseThrow().step(line.line(), 100 * g.of("share"));
    return Map.of(
        "asked for", line.target(),
        "last digit that counts", step * g.of("batch") / 100,
        "weighed", weight.total(),
        "may be off by", weight.tolerance());
  }

  private static Map<String, Double> dilution(Given g) {
    double need = g.of("needed in the load");
    double least = g.of("least on the scale");
    double parts = need * 2 >= least ? 2 : need * 4 >= least ? 4 : need * 5 >= least ? 5 : 10;
    double strong = Math.max(need, least);
    return Map.of(
        "becomes so many parts",
        parts,
        "weighed of it",
        strong,
        "carrier to it",
        strong * (parts - 1),
        "of the blend into the load",
        need * parts);
  }

  private static Map<String, Double> dilutionOf(Given g) {
    double kg = 20;
    String plant = SCALES.replace("least: 5 g}", "least: " + g.text("least on the scale") + "}");
    Cooked pantry = new Cooked().with("plant/shed.yaml", plant);
    double percent = g.of("needed in the load") / kg * 100;
    ComputedFeed feed =
        pantry.feed(
            String.format(
                java.util.Locale.ROOT, "mix\n  sodium-selenite %.6f %%\n  maize rest\n", percent));
    Dilution dilution =
        plan(pantry, feed, kg).mix().stream()
            .flatMap(line -> line.dilution().stream())
            .findFirst()
            .orElseThrow();
    Dilution.Step step = dilution.steps().get(0);
    return Map.of(
        "becomes so many parts", step.makes() / step.strong().total(),
        "weighed of it", step.strong().total(),
        "carrier to it", step.carrier().total(),
        "of the blend into the load", dilution.take().total());
  }

  private static WeighingPlan plan(Cooked pantry, ComputedFeed feed, double kg) {
    return WeighingPlanner.plan(feed, kg, pantry.tables()).orElseThrow();
  }

  private static Map<String, Double> loads(Given g) {
    double dry = g.of("batch") / g.of("weight of a litre of the mix");
    double wet =
        g.of("batch") * (1 + g.of("water on the mix")) / g.of("weight of a litre of wet mash");
    double loads = Math.ceil(Math.max(dry, wet) / (g.of("mixer") * g.of("filled at most")) - 1e-9);
    return Map.of(
        "loads", loads,
        "filled when dry", dry / loads / g.of("mixer"),
        "filled when wet", wet / loads / g.of("mixer"));
  }

  private static Map<String, Double> loadsOf(Given g) {
    Cooked pantry =
        new Cooked()
            .with(
                "plant/shed.yaml",
                SCALES
                    + "mixers:\n  - {name: Mixer, volume: "
                    + g.text("mixer")
                    + ", fill: 30 to "
                    + g.text("filled at most")
                    + "}\n")
            .with(
                "practice/densities.yaml",
                "source: workshop\nmeal: "
                    + g.text("weight of a litre of the mix")
                    + "\nwet-mash: "
                    + g.text("weight of a litre of wet mash")
                    + "\n")
            .ingredient("meal", "moisture: 11 %");
    ComputedFeed feed =
        pantry.feed(
            "mix\n  meal 100 %\nprocess\n  add-water on-mix "
                + g.text("water on the mix")
                + "\n  dry moisture 9 %\n");
    Loads loads = plan(pantry, feed, g.of("batch")).loads().orElseThrow();
    return Map.of(
        "loads", (double) loads.count(),
        "filled when dry", loads.dryFill(),
        "filled when wet", loads.wetFill());
  }

  private static Map<String, Double> bags(Given g) {
    double full = Math.floor(g.of("in the bags") / g.of("a bag") + 1e-9);
    return Map.of("full bags", full, "left over", g.of("in the bags") - full * g.of("a bag"));
  }

  private static Map<String, Double> bagsOf(Given g) {
    Cooked pantry =
        new Cooked().with("plant/shed.yaml", SCALES).ingredient("meal", "moisture: 11 %");
    ComputedFeed feed =
        pantry.feed(
            "  batch "
                + g.text("in the bags")
                + " weighed\nmix\n  meal 100 %\nprocess\n  pack bag "
                + g.text("a bag")
                + "\n");
    Packing packing =
        BatchPlan.of(feed, List.of(), pantry.tables(), new Provenance("1a2b3c4", true, DAY))
            .packing()
            .orElseThrow();
    return Map.of(
        "full bags", (double) packing.full(), "left over", packing.remainder().asDouble());
  }

  private static Map<String, Double> trays(Given g) {
    double wet = g.of("batch") * (1 + g.of("water on the mix"));
    double trays = Math.ceil(wet / g.of("on a tray") - 1e-9);
    return Map.of(
        "wet feed", wet, "trays", trays, "rounds", Math.ceil(trays / g.of("trays of the oven")));
  }

  private static Map<String, Double> traysOf(Given g) {
    InDryer dryer =
        inDryer(
            g,
            "kind: trays, tray-load: "
                + g.text("on a tray")
                + ", trays: "
                + g.text("trays of the oven"),
            "dry moisture 9 %");
    return Map.of(
        "wet feed", dryer.kgOfRound() * dryer.rounds(),
        "trays", (double) dryer.trays().orElseThrow().count(),
        "rounds", (double) dryer.rounds());
  }

  private static Map<String, Double> hours(Given g) {
    double batch = g.of("batch");
    double wet = batch * (1 + g.of("water on the mix"));
    double dried = batch * (1 - 0.11) / (1 - g.of("dried to"));
    return Map.of(
        "water to take off",
        wet - dried,
        "hours at the least",
        (wet - dried) / g.of("water in an hour"));
  }

  private static Map<String, Double> hoursOf(Given g) {
    InDryer dryer =
        inDryer(
            g,
            "kind: bed, water-per-hour: " + g.text("water in an hour"),
            "dry moisture " + g.text("dried to"));
    return Map.of(
        "water to take off", dryer.water(),
        "hours at the least", dryer.hoursByWater().orElseThrow());
  }

  private static InDryer inDryer(Given g, String dryer, String dry) {
    Cooked pantry =
        new Cooked()
            .with("plant/shed.yaml", SCALES + "dryers:\n  - {name: Dryer, " + dryer + "}\n")
            .ingredient("meal", "moisture: 11 %");
    ComputedFeed feed =
        pantry.feed(
            "mix\n  meal 100 %\nprocess\n  add-water on-mix "
                + g.text("water on the mix")
                + "\n  "
                + dry
                + "\n");
    return plan(pantry, feed, g.of("batch")).dryer().orElseThrow();
  }
}
