package dev.pellucid.engine.arithmetic;

import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.records.LotContents;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What was measured of a lot, and what was weighed and bagged of a batch. */
final class RecordExamples {
  private RecordExamples() {}

  static Map<String, Worked> all() {
    return Map.of(
        "lot-moisture",
        Worked.of(RecordExamples::moist, RecordExamples::moistOf),
        "lot-protein",
        Worked.of(RecordExamples::protein, RecordExamples::proteinOf),
        "weighed",
        new Worked(RecordExamples::weighed, RecordExamples::weighedOf),
        "bagged",
        new Worked(RecordExamples::bagged, RecordExamples::baggedOf));
  }

  private static Map<String, Double> moist(Given g) {
    double times = (1 - g.of("moisture of the lot")) / (1 - g.of("moisture of the library"));
    return Map.of(
        "all else times", times, "protein of the lot", g.of("protein of the library") * times);
  }

  private static Map<String, Double> moistOf(Given g) {
    LotContents lot =
        lot(
            "moisture: "
                + g.text("moisture of the library")
                + ", crude-protein: "
                + g.text("protein of the library"),
            "moisture: " + g.text("moisture of the lot"));
    return Map.of("all else times", lot.dry(), "protein of the lot", content(lot, "crude-protein"));
  }

  private static Map<String, Double> protein(Given g) {
    double times = g.of("protein of the lot") / g.of("protein of the library");
    return Map.of(
        "amino acids times", times, "lysine of the lot", g.of("lysine of the library") * times);
  }

  private static Map<String, Double> proteinOf(Given g) {
    LotContents lot =
        lot(
            "moisture: 8 %, crude-protein: "
                + g.text("protein of the library")
                + ", lysine: "
                + g.text("lysine of the library"),
            "crude-protein: " + g.text("protein of the lot"));
    return Map.of(
        "amino acids times", lot.protein().orElseThrow(),
        "lysine of the lot", content(lot, "lysine"));
  }

  private static LotContents lot(String library, String measured) {
    FeedTables tables =
        new Cooked()
            .ingredient("meal", library)
            .with(
                "lots/all.yaml",
                "lots:\n  - number: M-1\n    ingredient: meal\n    received: 2026-11-03\n"
                    + "    quantity: 500 kg\n    contents:\n      - {source: pantry, "
                    + measured
                    + "}\n")
            .tables();
    Ingredient meal = Optional.ofNullable(tables.ingredients().get("meal")).orElseThrow();
    Lot lot = Optional.ofNullable(tables.lots().get("M-1")).orElseThrow();
    return LotContents.of(meal, lot, tables.nutrients());
  }

  private static double content(LotContents lot, String nutrient) {
    return lot.ingredient()
        .telling(nutrient, Optional.empty())
        .map(block -> block.byNutrient().get(nutrient).low())
        .orElseThrow();
  }

  private static Map<String, Double> weighed(Given g) {
    double asked = g.of("share") * g.of("batch");
    return Map.of(
        "asked for",
        asked,
        "off by",
        Math.abs(g.of("weighed") - asked),
        "allowed",
        g.of("may be off") * asked);
  }

  private static Map<String, Double> weighedOf(Given g, Path empty) throws IOException {
    String text =
        new SmallFolder(empty)
            .with(
                "practice/bounds.yaml",
                "weighing-macro: {to: " + g.text("may be off") + ", source: workshop}\n")
            .ingredient("pea-meal", "moisture: 10 %")
            .ingredient("oat-meal", "moisture: 10 %")
            .recipe(
                "  batch "
                    + g.text("batch")
                    + " weighed\nmix\n  pea-meal "
                    + g.text("share")
                    + "\n  oat-meal rest\n")
            .with(
                "batches/A-1-2026-11-20-1.yaml",
                "size: "
                    + g.text("batch")
                    + "\nweighed:\n  - {line: pea-meal, weight: "
                    + g.text("weighed")
                    + "}\n  - {line: oat-meal, weight: 30 kg}\n")
            .text();
    return Map.of(
        "asked for", found(text, "pea-meal was weighed as .* kg, ([0-9.]+) kg were asked for"),
        "off by", found(text, "off by ([0-9.]+ k?g), allowed"),
        "allowed", found(text, "allowed are ([0-9.]+ k?g)"));
  }

  private static Map<String, Double> bagged(Given g) {
    double planned =
        g.of("batch")
            * (1 - g.of("moisture of the mix"))
            / (1 - g.of("dried to"))
            * (1 - g.of("shrink"));
    return Map.of("planned", planned, "bagged of what was planned", g.of("bagged") / planned);
  }

  private static Map<String, Double> baggedOf(Given g, Path empty) throws IOException {
    String text =
        new SmallFolder(empty)
            .with(
                "plant/shed.yaml",
                "name: Shed\nair-temperature: 25 °C\nshrink: " + g.text("shrink") + "\n")
            .ingredient("pea-meal", "moisture: " + g.text("moisture of the mix"))
            .recipe(
                "  batch "
                    + g.text("batch")
                    + " weighed\nmix\n  pea-meal 100 %\nprocess\n  add-water on-mix 18 %\n"
                    + "  dry moisture "
                    + g.text("dried to")
                    + "\n")
            .with(
                "batches/A-1-2026-11-20-1.yaml",
                "size: "
                    + g.text("batch")
                    + "\nweighed:\n  - {line: pea-meal, weight: "
                    + g.text("batch")
                    + "}\nwater: 10.8 kg\nbags: {full: 1, of: "
                    + g.text("bagged")
                    + ", rest: 0 kg}\n")
            .text();
    return Map.of(
        "planned", found(text, "were bagged of ([0-9.]+ kg) planned"),
        "bagged of what was planned", found(text, "planned, which is ([0-9.]+ %)"));
  }

  private static double found(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    if (!found.find()) {
      throw new AssertionError("no " + pattern + " in\n" + text);
    }
    return new Figure(found.group(1)).all().get(0);
  }
}
