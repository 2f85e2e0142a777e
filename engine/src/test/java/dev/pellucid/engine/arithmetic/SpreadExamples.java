package dev.pellucid.engine.arithmetic;

import static dev.pellucid.engine.arithmetic.Feeds.alone;
import static dev.pellucid.engine.arithmetic.Feeds.deviation;
import static dev.pellucid.engine.arithmetic.Feeds.sum;
import static dev.pellucid.engine.arithmetic.Feeds.two;

import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.KeptTogether;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;

/** How figures vary from lot to lot, and what is left for it. */
final class SpreadExamples {
  /** Of the standard normal distribution: NIST handbook, 1.3.6.7.1. */
  private static final Map<String, Double> QUANTILES =
      Map.of("95 %", 1.6448536, "90 %", 1.2815516, "99 %", 2.3263479);

  private SpreadExamples() {}

  static Map<String, Worked> all() {
    return Map.ofEntries(
        Map.entry("margin", Worked.of(SpreadExamples::margin, SpreadExamples::marginOf)),
        Map.entry("across", Worked.of(SpreadExamples::across, SpreadExamples::acrossOf)),
        Map.entry("within", Worked.of(SpreadExamples::within, SpreadExamples::withinOf)),
        Map.entry("net", Worked.of(SpreadExamples::net, SpreadExamples::netOf)),
        Map.entry("ratio-spread", Worked.of(SpreadExamples::ratio, SpreadExamples::ratioOf)),
        Map.entry("usual-spread", Worked.of(SpreadExamples::usual, SpreadExamples::usualOf)),
        Map.entry("law", new Worked(SpreadExamples::law, SpreadExamples::lawOf)),
        Map.entry(
            "kept-together", Worked.of(SpreadExamples::together, SpreadExamples::togetherOf)));
  }

  private static Map<String, Double> margin(Given g) {
    Double z = QUANTILES.get(g.text("part of batches"));
    double deviations = z == null ? Double.NaN : z;
    double margin = deviations * g.spread("crude protein");
    return Map.of(
        "deviations", deviations, "margin", margin, "judged", g.of("crude protein") - margin);
  }

  private static Map<String, Double> marginOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .ingredient("meal", "moisture: 10 %, crude-protein: " + g.text("crude protein"))
            .feed(
                "mix\n  meal 100 %\nlimits\n  crude-protein min 34 % in "
                    + g.text("part of batches")
                    + " of batches\n");
    var verdict = Judge.limits(feed).get(0).verdict();
    double margin = Math.abs(verdict.margin());
    return Map.of(
        "deviations",
        margin / verdict.reading().deviation(),
        "margin",
        margin,
        "judged",
        verdict.judged());
  }

  private static Map<String, Double> across(Given g) {
    double meal = g.of("meal");
    double fromMeal = meal * g.spread("protein of the meal");
    double fromBran = (1 - meal) * g.spread("protein of the bran");
    return Map.of(
        "protein of the feed",
        meal * g.of("protein of the meal") + (1 - meal) * g.of("protein of the bran"),
        "its standard deviation",
        Math.sqrt(fromMeal * fromMeal + fromBran * fromBran));
  }

  private static Map<String, Double> acrossOf(Given g) {
    ComputedFeed feed =
        two(
            g.text("meal"),
            "moisture: 10 %, crude-protein: " + g.text("protein of the meal"),
            "moisture: 10 %, crude-protein: " + g.text("protein of the bran"),
            "");
    return Map.of(
        "protein of the feed", Feeds.expected(feed, "crude-protein"),
        "its standard deviation", deviation(feed, sum(feed, "crude-protein")));
  }

  private static Map<String, Double> within(Given g) {
    return Map.of(
        "methionine + cystine", g.of("methionine") + g.of("cystine"),
        "its standard deviation", g.spread("methionine") + g.spread("cystine"));
  }

  private static Map<String, Double> withinOf(Given g) {
    ComputedFeed feed =
        alone(
            "moisture: 10 %, methionine: "
                + g.text("methionine")
                + ", cystine: "
                + g.text("cystine"),
            "");
    return Map.of(
        "methionine + cystine", Feeds.expected(feed, "methionine-cystine"),
        "its standard deviation", deviation(feed, sum(feed, "methionine", "cystine")));
  }

  private static Map<String, Double> net(Given g) {
    double carbohydrate = 17.2;
    double left =
        1 - g.of("moisture") - g.of("crude protein") - g.of("crude fat") - g.of("crude ash");
    double byProtein = 23.6 - carbohydrate;
    double byFat = 39.5 - carbohydrate;
    double rest = g.spread("moisture") + g.spread("crude ash");
    return Map.of(
        "gross energy",
        23.6 * g.of("crude protein") + 39.5 * g.of("crude fat") + carbohydrate * left,
        "net energy of protein",
        byProtein,
        "net energy of fat",
        byFat,
        "deviation of gross energy",
        byProtein * g.spread("crude protein")
            + byFat * g.spread("crude fat")
            + carbohydrate * rest);
  }

  private static Map<String, Double> netOf(Given g) {
    double of = energyDeviation(g);
    return Map.of(
        "gross energy",
            Feeds.expected(
                energyFeed(
                    g.text("moisture"),
                    g.text("crude protein"),
                    g.text("crude fat"),
                    g.text("crude ash")),
                "gross-energy"),
        "net energy of protein", slope(g, "crude protein", of),
        "net energy of fat", slope(g, "crude fat", of),
        "deviation of gross energy", of);
  }

  private static double energyDeviation(Given g) {
    return energyDeviation(
        g.text("moisture"), g.text("crude protein"), g.text("crude fat"), g.text("crude ash"));
  }

  private static double energyDeviation(String moisture, String protein, String fat, String ash) {
    ComputedFeed feed = energyFeed(moisture, protein, fat, ash);
    return deviation(feed, sum(feed, "gross-energy"));
  }

  private static ComputedFeed energyFeed(String moisture, String protein, String fat, String ash) {
    return alone(
        "moisture: "
            + moisture
            + ", crude-protein: "
            + protein
            + ", crude-fat: "
            + fat
            + ", crude-fibre: 4 ± 0 %, crude-ash: "
            + ash,
        "");
  }

  /** By how much less it varies without the spread of one content, for each point of that. */
  private static double slope(Given g, String name, double of) {
    String still = g.text(name).replaceAll("± .* %", "± 0 %");
    double without =
        name.equals("crude fat")
            ? energyDeviation(
                g.text("moisture"), g.text("crude protein"), still, g.text("crude ash"))
            : energyDeviation(g.text("moisture"), still, g.text("crude fat"), g.text("crude ash"));
    return (of - without) / g.spread(name);
  }

  private static Map<String, Double> ratio(Given g) {
    double ratio = g.of("lysine") / g.of("crude protein");
    double lysine = g.spread("lysine") / g.of("lysine");
    double protein = g.spread("crude protein") / g.of("crude protein");
    return Map.of(
        "lysine : crude-protein",
        ratio,
        "its standard deviation",
        ratio * Math.sqrt(lysine * lysine + protein * protein));
  }

  private static Map<String, Double> ratioOf(Given g) {
    ComputedFeed feed =
        alone(
            "moisture: 10 %, lysine: "
                + g.text("lysine")
                + ", crude-protein: "
                + g.text("crude protein"),
            "");
    Subject.RatioKind kind = Subject.RatioKind.PLAIN;
    return Map.of(
        "lysine : crude-protein", Feeds.ratio(feed, kind, "lysine", "crude-protein"),
        "its standard deviation",
            deviation(feed, Feeds.ratioOf(feed, kind, "lysine", "crude-protein")));
  }

  private static Map<String, Double> usual(Given g) {
    return Map.of("standard deviation", g.of("lysine") * g.of("usual part of itself"));
  }

  private static Map<String, Double> usualOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .with(
                "practice/spreads.yaml",
                "source: workshop\nlysine: " + g.text("usual part of itself") + "\n")
            .ingredient("meal", "moisture: 10 %, lysine: " + g.text("lysine"))
            .feed("mix\n  meal 100 %\n");
    return Map.of("standard deviation", deviation(feed, sum(feed, "lysine")));
  }

  private static Map<String, Double> law(Given g) {
    double room = (g.of("maximum") - g.of("zinc")) / g.spread("zinc");
    return Map.of("room in deviations", room, "batches that keep it", below(room));
  }

  /** The part of a normal distribution below so many deviations, added up in small steps. */
  private static double below(double deviations) {
    int steps = 20_000;
    double width = deviations / steps;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double x = (i + 0.5) * width;
      sum += Math.exp(-x * x / 2) * width;
    }
    return 0.5 + sum / Math.sqrt(2 * Math.PI);
  }

  private static Map<String, Double> lawOf(Given g, Path empty) throws IOException {
    SmallFolder folder = new SmallFolder(empty);
    folder.with(
        "pellucid.yaml",
        "format: 1\nname: Folder\ncurrency: EUR\njurisdiction: EU\nplant: shed\nlabel: shop\n");
    folder.with(
        "law/eu-other-fish.limits",
        "profile eu-other-fish \"Maxima\"\n  species other-fish\n  kind law\n  jurisdiction EU\n"
            + "  source eu-zinc\nlimits\n  zinc max "
            + g.text("maximum")
            + "\n");
    folder.ingredient("meal", "moisture: 10 %, zinc: " + g.text("zinc"));
    folder.recipe("  species african-catfish\nmix\n  meal 100 %\n");
    Shared shared = Shared.of(ReadFolder.of(Texts.at(empty)), Days.on(LocalDate.of(2026, 11, 25)));
    LawMargin margin =
        Streamed.judged(shared, "A-1.recipe").recipe().orElseThrow().limits().stream()
            .filter(it -> it.limit().subject().text().equals("zinc"))
            .flatMap(it -> LawMargin.of(it).stream())
            .findFirst()
            .orElseThrow();
    double room = margin.limit().bound() - margin.reading().value();
    return Map.of(
        "room in deviations",
        room / margin.reading().deviation(),
        "batches that keep it",
        margin.keeps());
  }

  private static Map<String, Double> together(Given g) {
    double protein =
        below((g.of("crude protein") - g.of("minimum of protein")) / g.spread("crude protein"));
    double fat = below((g.of("maximum of fat") - g.of("crude fat")) / g.spread("crude fat"));
    return Map.of(
        "batches with enough protein", protein,
        "batches with fat below its maximum", fat,
        "batches with both", protein * fat);
  }

  private static Map<String, Double> togetherOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .ingredient(
                "meal",
                "moisture: 10 %, crude-protein: "
                    + g.text("crude protein")
                    + ", crude-fat: "
                    + g.text("crude fat"))
            .feed(
                "mix\n  meal 100 %\nlimits\n  crude-protein min "
                    + g.text("minimum of protein")
                    + "\n  crude-fat max "
                    + g.text("maximum of fat")
                    + "\n");
    KeptTogether kept = KeptTogether.of(feed, Judge.limits(feed));
    return Map.of(
        "batches with enough protein", kept.limits().get(0).kept(),
        "batches with fat below its maximum", kept.limits().get(1).kept(),
        "batches with both", kept.all());
  }
}
