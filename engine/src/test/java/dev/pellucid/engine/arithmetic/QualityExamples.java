package dev.pellucid.engine.arithmetic;

import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.Tolerance;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.quality.Durability;
import dev.pellucid.engine.quality.MixerTest;
import dev.pellucid.engine.quality.Particles;
import dev.pellucid.engine.quality.SieveAnalysis;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** How even, how fine, how hard, and how near to its label. */
final class QualityExamples {
  private QualityExamples() {}

  static Map<String, Worked> all() {
    return Map.of(
        "evenness", Worked.of(QualityExamples::evenness, QualityExamples::evennessOf),
        "grains", Worked.of(QualityExamples::grains, QualityExamples::grainsOf),
        "fineness", Worked.of(QualityExamples::fineness, QualityExamples::finenessOf),
        "durability", Worked.of(QualityExamples::durability, QualityExamples::durabilityOf),
        "tolerance", Worked.of(QualityExamples::tolerance, QualityExamples::toleranceOf));
  }

  private static Map<String, Double> evenness(Given g) {
    List<Double> readings = g.all("readings");
    double mean = readings.stream().mapToDouble(it -> it).average().orElseThrow();
    double squares = readings.stream().mapToDouble(it -> Math.pow(it - mean, 2)).sum();
    double deviation = Math.sqrt(squares / (readings.size() - 1));
    return Map.of(
        "mean", mean,
        "standard deviation", deviation,
        "coefficient of variation", deviation / mean);
  }

  private static Map<String, Double> evennessOf(Given g) {
    MixerTest test = new MixerTest(g.all("readings"));
    return Map.of(
        "mean", test.mean(),
        "standard deviation", test.deviation(),
        "coefficient of variation", test.variation());
  }

  private static Map<String, Double> grains(Given g) {
    double cubed = Math.pow(g.of("diameter of a grain"), 3);
    double grain = Math.PI / 6 * cubed * g.of("weight of a litre of the stuff itself") * 1e-6;
    double meal = g.of("fish") * g.of("eaten in a day");
    double grains = meal * g.of("dose") / grain;
    return Map.of(
        "one grain", grain,
        "one meal", meal,
        "grains in a meal", grains,
        "least coefficient of variation", 1 / Math.sqrt(grains));
  }

  private static Map<String, Double> grainsOf(Given g) {
    double grain =
        Particles.massOfBall(
            g.of("diameter of a grain"), g.of("weight of a litre of the stuff itself"));
    double meal = g.of("fish") * g.of("eaten in a day");
    Particles grains = Particles.in(meal, g.of("dose"), grain);
    return Map.of(
        "one grain",
        grain,
        "one meal",
        meal,
        "grains in a meal",
        grains.number(),
        "least coefficient of variation",
        grains.leastVariation());
  }

  private static Map<String, Double> fineness(Given g) {
    List<Double> openings = g.all("openings of the sieves");
    List<Double> masses = new ArrayList<>(g.all("left on them"));
    masses.add(g.of("in the pan"));
    double[] logs = new double[masses.size()];
    double coarser = openings.get(0) * Math.sqrt(2);
    for (int i = 0; i < logs.length; i++) {
      double opening = i < openings.size() ? openings.get(i) : g.of("opening below (fixed)");
      logs[i] = Math.log10(Math.sqrt(opening * coarser));
      coarser = opening;
    }
    double whole = masses.stream().mapToDouble(it -> it).sum();
    double mean = 0;
    for (int i = 0; i < logs.length; i++) {
      mean += masses.get(i) * logs[i] / whole;
    }
    double squares = 0;
    for (int i = 0; i < logs.length; i++) {
      squares += masses.get(i) * Math.pow(logs[i] - mean, 2) / whole;
    }
    return Map.of(
        "geometric mean diameter", Math.pow(10, mean),
        "geometric standard deviation", Math.pow(10, Math.sqrt(squares)));
  }

  private static Map<String, Double> finenessOf(Given g) {
    List<SieveAnalysis.Fraction> fractions = new ArrayList<>();
    for (int i = 0; i < g.all("openings of the sieves").size(); i++) {
      fractions.add(
          new SieveAnalysis.Fraction(
              g.all("openings of the sieves").get(i), g.all("left on them").get(i)));
    }
    SieveAnalysis analysis = new SieveAnalysis(fractions, g.of("in the pan"));
    return Map.of(
        "geometric mean diameter", analysis.meanDiameter(),
        "geometric standard deviation", analysis.spread());
  }

  private static Map<String, Double> durability(Given g) {
    return Map.of("durability", g.of("still pellets") / g.of("into the box"));
  }

  private static Map<String, Double> durabilityOf(Given g) {
    return Map.of(
        "durability", new Durability(g.of("into the box"), g.of("still pellets")).share());
  }

  private static Map<String, Double> tolerance(Given g) {
    double free = g.of("part of the declared");
    return Map.of(
        "taken either way", free * g.of("declared"),
        "least that may be found", g.of("declared") * (1 - free),
        "without a word", free * g.of("declared") * g.of("part for rounding"));
  }

  private static Map<String, Double> toleranceOf(Given g) {
    LabelRules rules =
        new Cooked()
            .with(
                "label/shop.yaml",
                "name: Shop\nsource: workshop\nrounding: "
                    + g.text("part for rounding")
                    + "\ntolerances:\n  - constituents: [crude-protein]\n    below: [{relative: "
                    + g.text("part of the declared")
                    + "}]\n    above-times: 1\n")
            .tables()
            .label()
            .orElseThrow();
    Tolerance of = rules.tolerances().get("crude-protein");
    double declared = g.of("declared");
    double below = of.allowed(Tolerance.Side.BELOW, declared, Unit.PERCENT).orElseThrow();
    double above = of.allowed(Tolerance.Side.ABOVE, declared, Unit.PERCENT).orElseThrow();
    return Map.of(
        "taken either way",
        (below + above) / 2,
        "least that may be found",
        declared - below,
        "without a word",
        rules.rounding() * below);
  }
}
