package dev.pellucid.engine.arithmetic;

import static dev.pellucid.engine.arithmetic.Feeds.alone;
import static dev.pellucid.engine.arithmetic.Feeds.expected;
import static dev.pellucid.engine.arithmetic.Feeds.two;

import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** What a kg of finished feed holds, on each basis, and what follows from what is told. */
final class ContentExamples {
  private ContentExamples() {}

  static Map<String, Worked> all() {
    return Map.ofEntries(
        Map.entry("content", Worked.of(ContentExamples::content, ContentExamples::contentOf)),
        Map.entry("rework", new Worked(ContentExamples::rework, ContentExamples::reworkOf)),
        Map.entry("inclusion", Worked.of(ContentExamples::inclusion, ContentExamples::inclusionOf)),
        Map.entry("bases", Worked.of(ContentExamples::bases, ContentExamples::basesOf)),
        Map.entry("ratio", Worked.of(ContentExamples::ratio, ContentExamples::ratioOf)),
        Map.entry(
            "per-energy", Worked.of(ContentExamples::perEnergy, ContentExamples::perEnergyOf)),
        Map.entry(
            "difference", Worked.of(ContentExamples::difference, ContentExamples::differenceOf)),
        Map.entry("gross-energy", Worked.of(ContentExamples::energy, ContentExamples::energyOf)),
        Map.entry(
            "digestible", Worked.of(ContentExamples::digestible, ContentExamples::digestibleOf)),
        Map.entry(
            "available-phosphorus",
            Worked.of(ContentExamples::available, ContentExamples::availableOf)));
  }

  private static Map<String, Double> content(Given g) {
    double meal = 100 * g.of("meal");
    double bran = 100 - meal;
    double dry =
        meal * (1 - g.of("moisture of the meal")) + bran * (1 - g.of("moisture of the bran"));
    double finished = dry / (1 - g.of("dried to"));
    double protein = meal * g.of("protein of the meal") + bran * g.of("protein of the bran");
    return Map.of(
        "finished feed of 100 kg", finished,
        "protein in it", protein,
        "protein of the feed", protein / finished);
  }

  private static Map<String, Double> contentOf(Given g) {
    ComputedFeed feed =
        two(
            g.text("meal"),
            "moisture: "
                + g.text("moisture of the meal")
                + ", crude-protein: "
                + g.text("protein of the meal"),
            "moisture: "
                + g.text("moisture of the bran")
                + ", crude-protein: "
                + g.text("protein of the bran"),
            "process\n  add-water on-mix 18 %\n  dry moisture " + g.text("dried to") + "\n");
    int protein = feed.nutrients().named("crude-protein").orElseThrow().index();
    return Map.of(
        "finished feed of 100 kg",
        feed.balances().expected().finished(),
        "protein in it",
        feed.rows().stream().mapToDouble(row -> row.amount(Scenario.EXPECTED, protein)).sum(),
        "protein of the feed",
        expected(feed, "crude-protein"));
  }

  private static Map<String, Double> rework(Given g) {
    double dried = g.of("protein of the meal") / 0.9 * (1 - g.of("dried to"));
    double fines = g.of("fines of the other feed");
    return Map.of(
        "protein of the fines",
        dried,
        "protein of the mix",
        fines * dried + (1 - fines) * g.of("protein of the bran"));
  }

  private static Map<String, Double> reworkOf(Given g, Path empty) throws IOException {
    new SmallFolder(empty)
        .ingredient("pea-meal", "moisture: 10 %, crude-protein: " + g.text("protein of the meal"))
        .ingredient("oat-meal", "moisture: 10 %, crude-protein: " + g.text("protein of the bran"))
        .with(
            "B-1.recipe",
            "recipe B-1\nmix\n  pea-meal 100 %\nprocess\n  add-water on-mix 18 %\n  dry moisture "
                + g.text("dried to")
                + "\n")
        .recipe("mix\n  rework B-1 " + g.text("fines of the other feed") + "\n  oat-meal rest\n");
    Shared shared = Shared.of(ReadFolder.of(Texts.at(empty)), Days.on(LocalDate.of(2026, 11, 25)));
    return Map.of(
        "protein of the fines", protein(shared, "B-1.recipe"),
        "protein of the mix", protein(shared, "A-1.recipe"));
  }

  private static double protein(Shared shared, String recipe) throws IOException {
    return expected(
        Streamed.judged(shared, recipe).recipe().orElseThrow().feed().orElseThrow(),
        "crude-protein");
  }

  private static Map<String, Double> inclusion(Given g) {
    return Map.of("maize in all", g.of("maize") + g.of("premix") * g.of("maize in the premix"));
  }

  private static Map<String, Double> inclusionOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .premix(
                "PX-1",
                "premix PX-1\n  dose 10 g/kg\nmix\n  maize "
                    + g.text("maize in the premix")
                    + "\n  limestone rest\n")
            .feed(
                "mix\n  maize "
                    + g.text("maize")
                    + "\n  PX-1 "
                    + g.text("premix")
                    + "\n  wheat-middlings rest\n");
    return Map.of("maize in all", new Readings(feed).inclusion(List.of("maize")));
  }

  private static Map<String, Double> bases(Given g) {
    double dry = 1 - g.of("moisture of the feed");
    double zinc = g.of("zinc as fed");
    return Map.of(
        "zinc on dry matter",
        zinc / dry,
        "zinc at the other moisture",
        zinc / dry * (1 - g.of("other moisture")));
  }

  private static Map<String, Double> basesOf(Given g) {
    ComputedFeed feed =
        alone(
            "moisture: " + g.text("moisture of the feed") + ", zinc: " + g.text("zinc as fed"), "");
    Basis at = new Basis.AtMoisture(g.of("other moisture"), g.text("other moisture"));
    return Map.of(
        "zinc on dry matter", Feeds.read(feed, Scenario.EXPECTED, new Basis.DryMatter(), "zinc"),
        "zinc at the other moisture", Feeds.read(feed, Scenario.EXPECTED, at, "zinc"));
  }

  private static Map<String, Double> ratio(Given g) {
    return Map.of("lysine : crude-protein", g.of("lysine") / g.of("crude protein"));
  }

  private static Map<String, Double> ratioOf(Given g) {
    ComputedFeed feed =
        alone(
            "moisture: 10 %, crude-protein: "
                + g.text("crude protein")
                + ", lysine: "
                + g.text("lysine"),
            "");
    return Map.of(
        "lysine : crude-protein",
        Feeds.ratio(feed, Subject.RatioKind.PLAIN, "lysine", "crude-protein"));
  }

  private static Map<String, Double> perEnergy(Given g) {
    return Map.of(
        "protein for each MJ", 1000 * g.of("digestible protein") / g.of("digestible energy"));
  }

  private static Map<String, Double> perEnergyOf(Given g) {
    ComputedFeed feed =
        alone(
            "moisture: 10 %, digestible-protein: "
                + g.text("digestible protein")
                + ", digestible-energy: "
                + g.text("digestible energy"),
            "");
    return Map.of(
        "protein for each MJ",
        Feeds.ratio(feed, Subject.RatioKind.PER_ENERGY, "digestible-protein", "digestible-energy"));
  }

  private static Map<String, Double> difference(Given g) {
    double left =
        1
            - g.of("moisture")
            - g.of("crude protein")
            - g.of("crude fat")
            - g.of("crude fibre")
            - g.of("crude ash");
    return Map.of("nitrogen-free extract", left);
  }

  private static Map<String, Double> differenceOf(Given g) {
    ComputedFeed feed =
        alone(
            "moisture: "
                + g.text("moisture")
                + ", crude-protein: "
                + g.text("crude protein")
                + ", crude-fat: "
                + g.text("crude fat")
                + ", crude-fibre: "
                + g.text("crude fibre")
                + ", crude-ash: "
                + g.text("crude ash"),
            "");
    return Map.of("nitrogen-free extract", expected(feed, "nitrogen-free-extract"));
  }

  private static Map<String, Double> energy(Given g) {
    double carbohydrate = g.of("nitrogen-free extract") + g.of("crude fibre");
    return Map.of(
        "gross energy",
        g.of("energy of protein") * g.of("crude protein")
            + g.of("energy of fat") * g.of("crude fat")
            + g.of("energy of carbohydrate") * carbohydrate);
  }

  private static Map<String, Double> energyOf(Given g) {
    String carbohydrate = g.text("energy of carbohydrate");
    ComputedFeed feed =
        new Cooked()
            .with(
                "nutrients/2-energy.yaml",
                "gross-energy:\n  title: Gross energy\n  unit: MJ/kg\n  source: energy-factors\n"
                    + "  formula: "
                    + g.text("energy of protein")
                    + " crude-protein + "
                    + g.text("energy of fat")
                    + " crude-fat + "
                    + carbohydrate
                    + " nitrogen-free-extract + "
                    + carbohydrate
                    + " crude-fibre\n"
                    + "digestible-energy:\n  title: Digestible energy\n  unit: MJ/kg\n"
                    + "  digestible-of: gross-energy\n"
                    + "digestible-protein:\n  title: Digestible protein\n  unit: \"%\"\n"
                    + "  digestible-of: crude-protein\n")
            .ingredient(
                "feed",
                "moisture: 10 %, crude-protein: "
                    + g.text("crude protein")
                    + ", crude-fat: "
                    + g.text("crude fat")
                    + ", crude-fibre: "
                    + g.text("crude fibre")
                    + ", nitrogen-free-extract: "
                    + g.text("nitrogen-free extract"))
            .feed("mix\n  feed 100 %\n");
    return Map.of("gross energy", expected(feed, "gross-energy"));
  }

  private static Map<String, Double> digestible(Given g) {
    double meal = g.of("meal");
    double fromMeal = meal * g.of("protein of the meal") * g.of("digested of it in the meal");
    double fromBran = (1 - meal) * g.of("protein of the bran") * g.of("digested of it in the bran");
    return Map.of("digestible protein", fromMeal + fromBran);
  }

  private static Map<String, Double> digestibleOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .with(
                "ingredients/meal.yaml",
                digested(g.text("protein of the meal"), g.text("digested of it in the meal")))
            .with(
                "ingredients/bran.yaml",
                digested(g.text("protein of the bran"), g.text("digested of it in the bran")))
            .feed("  species african-catfish\nmix\n  meal " + g.text("meal") + "\n  bran rest\n");
    return Map.of("digestible protein", expected(feed, "digestible-protein"));
  }

  private static String digested(String protein, String coefficient) {
    return "name: One\ngroups: []\nform: meal\ncontents:\n  - source: workshop\n"
        + "    moisture: 10 %\n    crude-protein: "
        + protein
        + "\ndigestibility:\n  - source: workshop\n    species: african-catfish\n"
        + "    crude-protein: "
        + coefficient
        + "\n";
  }

  private static Map<String, Double> available(Given g) {
    double meal = g.of("meal");
    return Map.of(
        "available phosphorus",
        meal * g.of("available in the meal") + (1 - meal) * g.of("available in the bran"));
  }

  private static Map<String, Double> availableOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .with(
                "nutrients/9-available.yaml",
                "available-phosphorus: {title: Available phosphorus, unit: \"%\", part-of: phosphorus,"
                    + " stability: stable}\n")
            .ingredient(
                "meal",
                "moisture: 10 %, phosphorus: 2.8 %, available-phosphorus: "
                    + g.text("available in the meal"))
            .ingredient(
                "bran",
                "moisture: 10 %, phosphorus: 1.0 %, available-phosphorus: "
                    + g.text("available in the bran"))
            .feed("mix\n  meal " + g.text("meal") + "\n  bran rest\n");
    return Map.of("available phosphorus", expected(feed, "available-phosphorus"));
  }
}
