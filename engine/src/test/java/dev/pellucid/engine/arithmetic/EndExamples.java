package dev.pellucid.engine.arithmetic;

import static dev.pellucid.engine.arithmetic.Feeds.alone;
import static dev.pellucid.engine.arithmetic.Feeds.content;
import static dev.pellucid.engine.arithmetic.Feeds.two;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import java.util.Map;

/** The feed at its poorest and at its richest, and what the way leaves of a vitamin. */
final class EndExamples {
  private EndExamples() {}

  static Map<String, Worked> all() {
    return Map.ofEntries(
        Map.entry("moisture-band", Worked.of(EndExamples::band, EndExamples::bandOf)),
        Map.entry("room", Worked.of(EndExamples::room, EndExamples::roomOf)),
        Map.entry("overage-at-both-ends", Worked.of(EndExamples::overage, EndExamples::overageOf)),
        Map.entry("ratio-at-both-ends", Worked.of(EndExamples::ratio, EndExamples::ratioOf)),
        Map.entry("not-told", Worked.of(EndExamples::notTold, EndExamples::notToldOf)),
        Map.entry("below", Worked.of(EndExamples::below, EndExamples::belowOf)),
        Map.entry("heat", Worked.of(EndExamples::heat, EndExamples::heatOf)),
        Map.entry("store", Worked.of(EndExamples::store, EndExamples::storeOf)),
        Map.entry("whole-way", Worked.of(EndExamples::way, EndExamples::wayOf)));
  }

  private static Map<String, Double> band(Given g) {
    double dry = 1 - g.of("moisture of the mix");
    double protein = g.of("protein of the mix");
    return Map.of(
        "protein on target", protein / dry * (1 - g.of("dried to")),
        "protein at the poorest", protein / dry * (1 - g.of("wettest")),
        "protein at the richest", protein / dry * (1 - g.of("driest")));
  }

  private static Map<String, Double> bandOf(Given g) {
    String accepted = g.text("driest").replace(" %", "") + " to " + g.text("wettest");
    ComputedFeed feed =
        alone(
            "moisture: "
                + g.text("moisture of the mix")
                + ", crude-protein: "
                + g.text("protein of the mix"),
            "process\n  add-water on-mix 18 %\n  dry moisture "
                + g.text("dried to")
                + "  accept "
                + accepted
                + "\n");
    return Map.of(
        "protein on target", content(feed, Scenario.EXPECTED, "crude-protein"),
        "protein at the poorest", content(feed, Scenario.POOREST, "crude-protein"),
        "protein at the richest", content(feed, Scenario.RICHEST, "crude-protein"));
  }

  private static Map<String, Double> room(Given g) {
    double room = g.of("protein at the poorest") - g.of("minimum");
    return Map.of("room", room, "as a part of the limit", room / g.of("minimum"));
  }

  private static Map<String, Double> roomOf(Given g) {
    ComputedFeed feed =
        alone(
            "moisture: 10 %, crude-protein: " + g.text("protein at the poorest"),
            "limits\n  crude-protein min " + g.text("minimum") + "\n");
    Verdict verdict = Judge.limits(feed).get(0).verdict();
    return Map.of(
        "room", verdict.room(), "as a part of the limit", verdict.room() / verdict.limit().bound());
  }

  private static Map<String, Double> overage(Given g) {
    double zinc = 100 * g.of("zinc salt") * g.of("zinc in the salt");
    double more = g.of("overage for handling");
    return Map.of(
        "zinc at the poorest", zinc / 100,
        "zinc at the richest", zinc * (1 + more) / (100 + 100 * g.of("zinc salt") * more));
  }

  private static Map<String, Double> overageOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .ingredient("zinc-salt", "moisture: 10 %, zinc: " + g.text("zinc in the salt"))
            .ingredient("meal", "moisture: 10 %, zinc: none")
            .feed(
                "mix\n  zinc-salt "
                    + g.text("zinc salt")
                    + "\n  meal rest\noverage\n  zinc-salt "
                    + g.text("overage for handling")
                    + " for handling\n");
    return Map.of(
        "zinc at the poorest", content(feed, Scenario.POOREST, "zinc"),
        "zinc at the richest", content(feed, Scenario.RICHEST, "zinc"));
  }

  private static Map<String, Double> ratio(Given g) {
    double meal = g.of("meal");
    double least = meal * g.of("selenium of the meal");
    double zinc = meal * g.of("zinc of the meal") + (1 - meal) * g.of("zinc of the bran");
    double most = least + (1 - meal) * g.of("selenium of the bran, at most");
    return Map.of(
        "selenium : zinc at its lowest",
        least / zinc,
        "selenium : zinc at its highest",
        most / zinc);
  }

  private static Map<String, Double> ratioOf(Given g) {
    ComputedFeed feed =
        two(
            g.text("meal"),
            "moisture: 10 %, selenium: "
                + g.text("selenium of the meal")
                + ", zinc: "
                + g.text("zinc of the meal"),
            "moisture: 10 %, selenium: below "
                + g.text("selenium of the bran, at most")
                + ", zinc: "
                + g.text("zinc of the bran"),
            "");
    return Map.of(
        "selenium : zinc at its lowest", ratioAt(feed, Scenario.POOREST),
        "selenium : zinc at its highest", ratioAt(feed, Scenario.RICHEST));
  }

  private static double ratioAt(ComputedFeed feed, Scenario end) {
    Subject ratio = Feeds.ratioOf(feed, Subject.RatioKind.PLAIN, "selenium", "zinc");
    return new Readings(feed).at(ratio, new Basis.AsFed(), end).value();
  }

  private static Map<String, Double> notTold(Given g) {
    double meal = g.of("meal");
    double told = meal * g.of("ash of the meal");
    double room =
        1 - g.of("moisture of the bran") - g.of("protein of the bran") - g.of("fat of the bran");
    return Map.of(
        "room for ash in the bran", room,
        "ash at the least", told,
        "ash at the most", told + (1 - meal) * room);
  }

  private static Map<String, Double> notToldOf(Given g) {
    ComputedFeed feed =
        two(
            g.text("meal"),
            "moisture: 10 %, crude-ash: " + g.text("ash of the meal"),
            "moisture: "
                + g.text("moisture of the bran")
                + ", crude-protein: "
                + g.text("protein of the bran")
                + ", crude-fat: "
                + g.text("fat of the bran"),
            "");
    int ash = feed.nutrients().named("crude-ash").orElseThrow().index();
    return Map.of(
        "room for ash in the bran", feed.rows().get(1).perKg(Scenario.RICHEST, ash),
        "ash at the least", content(feed, Scenario.POOREST, "crude-ash"),
        "ash at the most", content(feed, Scenario.RICHEST, "crude-ash"));
  }

  private static Map<String, Double> below(Given g) {
    double meal = g.of("meal");
    double told = meal * g.of("selenium of the meal");
    return Map.of(
        "selenium at the least",
        told,
        "selenium at the most",
        told + (1 - meal) * g.of("selenium of the bran, at most"));
  }

  private static Map<String, Double> belowOf(Given g) {
    ComputedFeed feed =
        two(
            g.text("meal"),
            "moisture: 10 %, selenium: " + g.text("selenium of the meal"),
            "moisture: 10 %, selenium: below " + g.text("selenium of the bran, at most"),
            "");
    return Map.of(
        "selenium at the least", content(feed, Scenario.POOREST, "selenium"),
        "selenium at the most", content(feed, Scenario.RICHEST, "selenium"));
  }

  private static Map<String, Double> heat(Given g) {
    double part =
        (g.of("extruded at") - g.of("cooler row")) / (g.of("hotter row") - g.of("cooler row"));
    double cool = g.of("kept at the cooler row");
    double kept = cool + part * (g.of("kept at the hotter row") - cool);
    return Map.of("kept in the extruder", kept, "vitamin A left", g.of("vitamin A") * kept);
  }

  private static Map<String, Double> heatOf(Given g) {
    ComputedFeed feed =
        vitamin(
            g.text("vitamin A"),
            "extrude: {"
                + g.text("cooler row")
                + ": "
                + g.text("kept at the cooler row")
                + ", "
                + g.text("hotter row")
                + ": "
                + g.text("kept at the hotter row")
                + "}\n",
            "  extrude temperature " + g.text("extruded at") + "\n  dry moisture 10 %\n",
            "");
    double left = content(feed, Scenario.EXPECTED, "vitamin-a");
    return Map.of("kept in the extruder", left / g.of("vitamin A"), "vitamin A left", left);
  }

  private static Map<String, Double> store(Given g) {
    double kept = Math.pow(g.of("kept in a month"), g.of("stored") / 24 / 30.4375);
    return Map.of("kept in the store", kept, "vitamin A left", g.of("vitamin A") * kept);
  }

  private static Map<String, Double> storeOf(Given g) {
    ComputedFeed feed =
        vitamin(
            g.text("vitamin A"),
            "store: {25 °C: " + g.text("kept in a month") + "}\n",
            "  store shelf-life " + g.text("stored") + "\n  store temperature 25 °C\n",
            "");
    double left = content(feed, Scenario.POOREST, "vitamin-a");
    return Map.of("kept in the store", left / g.of("vitamin A"), "vitamin A left", left);
  }

  private static Map<String, Double> way(Given g) {
    double supply = g.of("vitamin A in the mix");
    double heated = g.of("kept in the extruder") * g.of("kept in the dryer");
    double feed = Math.pow(g.of("kept in a month, feed"), g.of("feed stored") / 24 / 30.4375);
    double premix = Math.pow(g.of("kept in a month, premix"), g.of("premix stored") / 24 / 30.4375);
    return Map.of(
        "fresh", supply * heated, "at the end of shelf life", supply * heated * feed * premix);
  }

  private static Map<String, Double> wayOf(Given g) {
    String store =
        "store: {15 °C: "
            + g.text("kept in a month, premix")
            + ", 25 °C: "
            + g.text("kept in a month, feed")
            + "}\n";
    ComputedFeed feed =
        vitamin(
            g.text("vitamin A in the mix"),
            "extrude: {60 °C: "
                + g.text("kept in the extruder")
                + "}\n  dry: {60 °C: "
                + g.text("kept in the dryer")
                + "}\n  "
                + store,
            "  extrude temperature 60 °C\n  dry temperature 60 °C\n  dry moisture 10 %\n"
                + "  store shelf-life "
                + g.text("feed stored")
                + "\n  store temperature 25 °C\n",
            "process\n  store shelf-life "
                + g.text("premix stored")
                + "\n  store temperature 15 °C\n");
    return Map.of(
        "fresh", content(feed, Scenario.EXPECTED, "vitamin-a"),
        "at the end of shelf life", content(feed, Scenario.POOREST, "vitamin-a"));
  }

  /**
   * A feed whose vitamin A comes with one premix, which is the whole feed.
   *
   * @param kept rows of the stability class
   */
  private static ComputedFeed vitamin(
      String content, String kept, String process, String premixProcess) {
    return new Cooked()
        .with("practice/retention.yaml", "made-up:\n  source: workshop\n  " + kept)
        .with(
            "nutrients/5-vitamins.yaml",
            """
            vitamin-a: {title: A, unit: IU/kg, stability: made-up}
            vitamin-c: {title: C, unit: mg/kg, stability: stable}
            vitamin-d3: {title: D3, unit: IU/kg, stability: stable}
            """)
        .with("ingredients/ascorbyl-phosphate.yaml", source("vitamin-c: 35 %"))
        .with("ingredients/retinyl-acetate.yaml", source("vitamin-a: " + content))
        .premix(
            "PX-1", "premix PX-1\n  dose 10 g/kg\nmix\n  retinyl-acetate 100 %\n" + premixProcess)
        .feed("mix\n  PX-1 100 %\nprocess\n" + process);
  }

  private static String source(String content) {
    return "name: Source\ngroups: []\nform: powder\ncontents:\n  - source: workshop\n"
        + "    moisture: 10 %\n    "
        + content
        + "\n";
  }
}
