package dev.pellucid.engine.arithmetic;

import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.quality.LabSpread;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.trend.BatchYield;
import dev.pellucid.engine.trend.Measured;
import dev.pellucid.engine.trend.MeasuredBatch;
import dev.pellucid.engine.trend.OwnSpread;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.measure.Kind;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Batches over time. */
final class TrendExamples {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private TrendExamples() {}

  static Map<String, Worked> all() {
    return Map.of(
        "lab-spread",
        Worked.of(TrendExamples::lab, TrendExamples::labOf),
        "off-in-spreads",
        new Worked(TrendExamples::off, TrendExamples::offOf),
        "own-spread",
        Worked.of(TrendExamples::own, TrendExamples::ownOf),
        "shrink-beyond",
        new Worked(TrendExamples::shrink, TrendExamples::shrinkOf));
  }

  private static Map<String, Double> lab(Given g) {
    return Map.of(
        "spread of the protein", 0.01 * Math.pow(g.of("crude protein"), 0.5),
        "spread of the moisture", 0.02 * Math.exp(0.8495 * Math.log(g.of("moisture"))));
  }

  private static Map<String, Double> labOf(Given g) {
    return Map.of(
        "spread of the protein", LabSpread.of(g.of("crude protein"), Kind.SHARE),
        "spread of the moisture", LabSpread.of(g.of("moisture"), Kind.SHARE));
  }

  private static Map<String, Double> off(Given g) {
    double times = (1 - g.of("dried to")) / (1 - g.of("moisture of the meal"));
    double expected = g.of("protein of the meal") * times;
    double lots = g.spread("protein of the meal") * times;
    double laboratory = 0.01 * Math.sqrt(expected);
    double water = expected / (1 - g.of("dried to")) * g.of("spread of the meter (fixed)");
    double spread = Math.sqrt(lots * lots + laboratory * laboratory + water * water);
    return Map.of(
        "expected",
        expected,
        "spread of the laboratory",
        laboratory,
        "spread",
        spread,
        "off in spreads",
        (g.of("found") - expected) / spread);
  }

  private static Map<String, Double> offOf(Given g, Path empty) throws IOException {
    MeasuredBatch batch =
        batch(
            new SmallFolder(empty)
                .ingredient(
                    "pea-meal",
                    "moisture: "
                        + g.text("moisture of the meal")
                        + ", crude-protein: "
                        + g.text("protein of the meal")),
            "100 kg",
            g.text("dried to"),
            "results:\n  - {day: 2026-11-22, by: laboratory, crude-protein: "
                + g.text("found")
                + "}\n");
    Measured protein = batch.figure("crude-protein").orElseThrow();
    double expected = protein.expected().orElseThrow();
    return Map.of(
        "expected",
        expected,
        "spread of the laboratory",
        LabSpread.of(expected, Kind.SHARE),
        "spread",
        protein.spread().orElseThrow(),
        "off in spreads",
        (protein.found() - expected) / protein.spread().orElseThrow());
  }

  private static Map<String, Double> own(Given g) {
    List<Double> found = g.all("found in a row");
    double sum = found.get(0);
    double ranges = 0;
    for (int i = 1; i < found.size(); i++) {
      sum += found.get(i);
      ranges += Math.abs(found.get(i) - found.get(i - 1));
    }
    double mean = sum / found.size();
    double range = ranges / (found.size() - 1);
    return Map.of(
        "mean",
        mean,
        "mean range",
        range,
        "spread",
        range / g.of("mean range of two (fixed)"),
        "upper limit",
        mean + 3 * range / g.of("mean range of two (fixed)"));
  }

  private static Map<String, Double> ownOf(Given g) {
    List<Double> found = g.all("found in a row");
    double mean = found.stream().mapToDouble(it -> it).average().orElseThrow();
    double spread = OwnSpread.ofAll(found);
    return Map.of(
        "mean",
        mean,
        "mean range",
        spread * 1.128,
        "spread",
        spread,
        "upper limit",
        mean + 3 * spread);
  }

  private static Map<String, Double> shrink(Given g) {
    double finished = g.of("batch") * (1 - g.of("moisture of the mix")) / (1 - g.of("dried to"));
    double expected = finished * (1 - g.of("shrink"));
    double perKg = g.of("batch") * g.of("price") / expected;
    return Map.of(
        "finished",
        finished,
        "shrink in kg",
        finished - g.of("bagged"),
        "of it planned",
        finished - expected,
        "beyond the plan",
        expected - g.of("bagged"),
        "cost of a kg in the bags",
        perKg,
        "in money for the whole batch",
        (expected - g.of("bagged")) * perKg);
  }

  private static Map<String, Double> shrinkOf(Given g, Path empty) throws IOException {
    BatchYield one =
        batch(
                new SmallFolder(empty)
                    .with(
                        "plant/shed.yaml",
                        "name: Shed\nair-temperature: 25 °C\nshrink: " + g.text("shrink") + "\n")
                    .with(
                        "prices/2026.yaml",
                        "from: 2026-11-01\nsource: workshop\nprices: {pea-meal: "
                            + g.text("price")
                            + "}\n")
                    .ingredient("pea-meal", "moisture: " + g.text("moisture of the mix")),
                g.text("batch"),
                g.text("dried to"),
                "bags: {full: 1, of: " + g.text("bagged") + ", rest: 0 kg}\n")
            .yields()
            .orElseThrow();
    return Map.of(
        "finished", one.finished(),
        "shrink in kg", one.shrink(),
        "of it planned", one.shrinkPlanned(),
        "beyond the plan", one.beyond(),
        "cost of a kg in the bags", one.perKg().orElseThrow(),
        "in money for the whole batch", one.moneyBeyond().orElseThrow());
  }

  /** Of a recipe of pea-meal alone. */
  private static MeasuredBatch batch(SmallFolder folder, String size, String moisture, String more)
      throws IOException {
    Path root =
        folder
            .recipe(
                "  batch "
                    + size
                    + " weighed\nmix\n  pea-meal 100 %\nprocess\n  add-water on-mix 18 %\n"
                    + "  dry moisture "
                    + moisture
                    + "\n")
            .with(
                "batches/A-1-2026-11-20-1.yaml",
                "size: "
                    + size
                    + "\nweighed:\n  - {line: pea-meal, weight: "
                    + size
                    + "}\nwater: 10.8 kg\ndrying:\n  before: 24 %\n  readings:\n"
                    + "    - {at: 6 h, moisture: "
                    + moisture
                    + "}\n"
                    + more)
            .root();
    Shared shared = Shared.of(ReadFolder.of(Texts.at(root)), Days.on(DAY));
    Checked only = Streamed.check(shared, checked -> checked).get(0);
    return only.records().measured().get(0);
  }
}
