package dev.pellucid.engine.arithmetic;

import static dev.pellucid.engine.arithmetic.Feeds.alone;
import static dev.pellucid.engine.arithmetic.Feeds.two;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.data.SteamTable;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.resolve.Line;
import java.util.Map;

/** Shares, overage and the mass of the feed from step to step. */
final class MassExamples {
  private MassExamples() {}

  static Map<String, Worked> all() {
    return Map.ofEntries(
        Map.entry("rest", Worked.of(MassExamples::rest, MassExamples::restOf)),
        Map.entry("handling", Worked.of(MassExamples::handling, MassExamples::handlingOf)),
        Map.entry("stability", Worked.of(MassExamples::stability, MassExamples::stabilityOf)),
        Map.entry(
            "per-weighing", Worked.of(MassExamples::perWeighing, MassExamples::perWeighingOf)),
        Map.entry("dry-matter", Worked.of(MassExamples::dryMatter, MassExamples::dryMatterOf)),
        Map.entry("water-on-mix", Worked.of(MassExamples::onMix, MassExamples::onMixOf)),
        Map.entry(
            "water-to-moisture", Worked.of(MassExamples::toMoisture, MassExamples::toMoistureOf)),
        Map.entry("steam", Worked.of(MassExamples::steam, MassExamples::steamOf)),
        Map.entry("drying", Worked.of(MassExamples::drying, MassExamples::dryingOf)),
        Map.entry("cooling", Worked.of(MassExamples::cooling, MassExamples::coolingOf)),
        Map.entry("cold-coat", Worked.of(MassExamples::coldCoat, MassExamples::coldCoatOf)),
        Map.entry("coat", Worked.of(MassExamples::coat, MassExamples::coatOf)),
        Map.entry("yield", Worked.of(MassExamples::yielded, MassExamples::yieldOf)));
  }

  private static Map<String, Double> rest(Given g) {
    return Map.of("rest", 1 - g.of("soybean meal") - g.of("maize"));
  }

  private static Map<String, Double> restOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .feed(
                "mix\n  soybean-meal "
                    + g.text("soybean meal")
                    + "\n  maize "
                    + g.text("maize")
                    + "\n  wheat-middlings rest\n");
    return Map.of("rest", feed.recipe().rest().orElseThrow().share().part());
  }

  private static Map<String, Double> handling(Given g) {
    double share = g.of("premix as written");
    return Map.of(
        "weighed for 100 kg", 100 * share * (1 + g.of("overage for handling")),
        "in the feed", 100 * share);
  }

  private static Map<String, Double> handlingOf(Given g) {
    Line line =
        first(small(g.text("premix as written"), g.text("overage for handling") + " for handling"));
    return Map.of(
        "weighed for 100 kg",
        line.share().kgPer100() + line.onTop().kgPer100(),
        "in the feed",
        line.share().kgPer100());
  }

  private static Map<String, Double> stability(Given g) {
    double more = g.of("vitamin as written") * g.of("overage for stability");
    double inFeed = g.of("vitamin as written") + more;
    return Map.of(
        "vitamin in the feed",
        inFeed,
        "rest in the feed",
        1 - inFeed,
        "weighed for 100 kg",
        100 * inFeed * (1 + g.of("overage for handling")));
  }

  private static Map<String, Double> stabilityOf(Given g) {
    ComputedFeed feed =
        small(
            g.text("vitamin as written"),
            g.text("overage for stability") + " for stability",
            g.text("overage for handling") + " for handling");
    Line line = first(feed);
    return Map.of(
        "vitamin in the feed",
        line.share().part(),
        "rest in the feed",
        feed.recipe().rest().orElseThrow().share().part(),
        "weighed for 100 kg",
        line.share().kgPer100() + line.onTop().kgPer100());
  }

  private static ComputedFeed small(String share, String... overages) {
    StringBuilder lines =
        new StringBuilder("mix\n  ascorbyl-phosphate " + share + "\n  maize rest\noverage\n");
    for (String overage : overages) {
      lines.append("  ascorbyl-phosphate ").append(overage).append('\n');
    }
    return new Cooked().feed(lines.toString());
  }

  private static Line first(ComputedFeed feed) {
    return feed.recipe().lines().get(0);
  }

  private static Map<String, Double> perWeighing(Given g) {
    double each = g.of("share") * g.of("batch") / g.of("loads") + g.of("overage per weighing");
    return Map.of("weighed in each load", each);
  }

  private static Map<String, Double> perWeighingOf(Given g) {
    Line line =
        first(
            new Cooked()
                .feed(
                    "  batch "
                        + g.text("batch")
                        + " weighed\nmix\n  ascorbyl-phosphate "
                        + g.text("share")
                        + "\n  maize rest\noverage\n  ascorbyl-phosphate "
                        + g.text("overage per weighing")
                        + " per weighing for handling\n"));
    int loads = (int) Math.round(g.of("loads"));
    double batch = g.of("batch");
    return Map.of(
        "weighed in each load", (line.share().part() * batch + line.onTopKg(batch, loads)) / loads);
  }

  private static Map<String, Double> dryMatter(Given g) {
    double meal = g.of("meal");
    double dry =
        meal * (1 - g.of("moisture of the meal")) + (1 - meal) * (1 - g.of("moisture of the bran"));
    return Map.of("dry matter of 100 kg", 100 * dry, "moisture of the mix", 1 - dry);
  }

  private static Map<String, Double> dryMatterOf(Given g) {
    Balance balance =
        expected(
            two(
                g.text("meal"),
                "moisture: " + g.text("moisture of the meal"),
                "moisture: " + g.text("moisture of the bran"),
                ""));
    return Map.of(
        "dry matter of 100 kg", balance.dryMatter(), "moisture of the mix", balance.moisture());
  }

  private static Map<String, Double> onMix(Given g) {
    double water = 100 * g.of("water on the mix");
    double before = 100 * g.of("moisture of the mix");
    return Map.of(
        "water for 100 kg", water, "moisture at the die", (before + water) / (100 + water));
  }

  private static Map<String, Double> onMixOf(Given g) {
    return watered(g, "on-mix " + g.text("water on the mix"));
  }

  private static Map<String, Double> toMoisture(Given g) {
    double water = 100 * (1 - g.of("moisture of the mix")) / (1 - g.of("moisture to reach")) - 100;
    double before = 100 * g.of("moisture of the mix");
    return Map.of(
        "water for 100 kg", water, "moisture at the die", (before + water) / (100 + water));
  }

  private static Map<String, Double> toMoistureOf(Given g) {
    return watered(g, "to-moisture " + g.text("moisture to reach"));
  }

  private static Map<String, Double> watered(Given g, String water) {
    Balance balance =
        expected(
            alone(
                "moisture: " + g.text("moisture of the mix"),
                "process\n  add-water " + water + "\n  dry moisture 1 %\n"));
    return Map.of("water for 100 kg", balance.waterAdded(), "moisture at the die", balance.atDie());
  }

  private static double heatCapacity(Given g, double moisture) {
    return (1 - moisture) * g.of("heat capacity of dry feed (fixed)")
        + moisture * g.of("heat capacity of water (fixed)");
  }

  private static Map<String, Double> steam(Given g) {
    double moisture = g.of("moisture of the mix");
    double heat = 100 * heatCapacity(g, moisture) * (g.of("heated to") - g.of("heated from"));
    double steam = heat / (g.of("heat in a kg of steam") - g.of("heat in a kg of its water"));
    return Map.of(
        "steam for 100 kg", steam, "moisture at the die", (100 * moisture + steam) / (100 + steam));
  }

  private static Map<String, Double> steamOf(Given g) {
    Balance balance =
        expected(
            new Cooked()
                .with(
                    "practice/steam.yaml",
                    steamRows(
                        g.of("heated to"),
                        g.of("heat in a kg of its water"),
                        g.of("heat in a kg of steam")))
                .ingredient("meal", "moisture: " + g.text("moisture of the mix"))
                .feed(
                    "mix\n  meal 100 %\nprocess\n  condition start "
                        + g.text("heated from")
                        + "\n  condition temperature "
                        + g.text("heated to")
                        + "\n  cool moisture 9 %\n"));
    return Map.of("steam for 100 kg", balance.steam(), "moisture at the die", balance.atDie());
  }

  /** One row at a temperature, and beyond it the same steam. */
  private static String steamRows(double temperature, double liquid, double vapour) {
    return "source: workshop\nrows:\n  - {temperature: "
        + temperature
        + " °C, liquid: "
        + liquid
        + " kJ/kg, vapour: "
        + vapour
        + " kJ/kg}\n  - {temperature: 100 °C, liquid: 419.1 kJ/kg, vapour: "
        + vapour
        + " kJ/kg}\n";
  }

  private static Map<String, Double> drying(Given g) {
    double dry = 100 * (1 - g.of("moisture of the mix"));
    double before = 100 + 100 * g.of("water on the mix");
    double after = dry / (1 - g.of("dried to"));
    return Map.of(
        "dry matter of 100 kg", dry,
        "wet feed", before,
        "dried feed", after,
        "water that goes off", before - after);
  }

  private static Map<String, Double> dryingOf(Given g) {
    Balance balance =
        expected(
            alone(
                "moisture: " + g.text("moisture of the mix"),
                "process\n  add-water on-mix "
                    + g.text("water on the mix")
                    + "\n  dry moisture "
                    + g.text("dried to")
                    + "\n"));
    return Map.of(
        "dry matter of 100 kg", balance.dryMatter(),
        "wet feed", balance.mix() + balance.waterAdded(),
        "dried feed", balance.finished(),
        "water that goes off", balance.evaporated());
  }

  private static Map<String, Double> cooling(Given g) {
    double heat =
        100
            * heatCapacity(g, g.of("moisture of the pellets"))
            * (g.of("hot pellets") - g.of("cooled to"));
    double latent = g.of("heat in a kg of steam at 55 °C") - g.of("heat in a kg of water at 55 °C");
    return Map.of("most that can go off from 100 kg", heat / latent);
  }

  private static Map<String, Double> coolingOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .with(
                "practice/steam.yaml",
                steamRows(
                    55,
                    g.of("heat in a kg of water at 55 °C"),
                    g.of("heat in a kg of steam at 55 °C")))
            .ingredient("meal", "moisture: " + g.text("moisture of the pellets"))
            .feed(
                "mix\n  meal 100 %\nprocess\n  pellet temperature "
                    + g.text("hot pellets")
                    + "\n  cool temperature "
                    + g.text("cooled to")
                    + "\n  cool moisture 12 %\n");
    return Map.of("most that can go off from 100 kg", evaporable(feed));
  }

  private static double evaporable(ComputedFeed feed) {
    return expected(feed).stages().stream()
        .map(Stage::evaporable)
        .filter(it -> it.isPresent())
        .findFirst()
        .orElseThrow()
        .getAsDouble();
  }

  private static Map<String, Double> coldCoat(Given g) {
    double pellets = 100 * (1 - g.of("oil")) * heatCapacity(g, g.of("moisture of the pellets"));
    double oil = 100 * g.of("oil") * g.of("heat capacity of oil (fixed)");
    return Map.of(
        "temperature of both",
        (pellets * g.of("hot pellets") + oil * g.of("cold oil")) / (pellets + oil));
  }

  /** The temperature from which a cooler could take off what the engine says that it could. */
  private static Map<String, Double> coldCoatOf(Given g) {
    Cooked pantry =
        new Cooked()
            .ingredient("meal", "moisture: " + g.text("moisture of the pellets"))
            .ingredient("oil", "moisture: none");
    ComputedFeed feed =
        pantry.feed(
            "mix\n  meal rest\ncoat\n  oil "
                + g.text("oil")
                + "\nprocess\n  pellet temperature "
                + g.text("hot pellets")
                + "\n  coat temperature "
                + g.text("cold oil")
                + "\n  cool temperature 30 °C\n  cool moisture 10 %\n");
    double moisture = (1 - g.of("oil")) * g.of("moisture of the pellets");
    double capacity = 100 * ((1 - moisture) * 1.55 + moisture * 4.187);
    SteamTable steam = pantry.tables().practice().steam().orElseThrow();
    double low = 30;
    double high = 100;
    for (int i = 0; i < 60; i++) {
      double warm = (low + high) / 2;
      double mean = (warm + 30) / 2;
      double goesOff = capacity * (warm - 30) / (steam.vapour(mean) - steam.liquid(mean));
      low = goesOff < evaporable(feed) ? warm : low;
      high = goesOff < evaporable(feed) ? high : warm;
    }
    return Map.of("temperature of both", low);
  }

  private static Map<String, Double> coat(Given g) {
    double mix = 100 * (1 - g.of("oil"));
    double kernel = mix * (1 - g.of("moisture of the mix")) / (1 - g.of("kernel dried to"));
    double finished = kernel + 100 * g.of("oil");
    double water =
        kernel * g.of("kernel dried to") + 100 * g.of("oil") * g.of("moisture of the oil");
    return Map.of(
        "kernel of 100 kg",
        kernel,
        "finished feed",
        finished,
        "moisture of the finished feed",
        water / finished,
        "oil on a kg of kernel",
        100 * g.of("oil") / kernel);
  }

  private static Map<String, Double> coatOf(Given g) {
    Balance balance =
        expected(
            new Cooked()
                .ingredient("meal", "moisture: " + g.text("moisture of the mix"))
                .ingredient("oil", "moisture: " + g.text("moisture of the oil"))
                .feed(
                    "mix\n  meal rest\ncoat\n  oil "
                        + g.text("oil")
                        + "\nprocess\n  add-water on-mix 20 %\n  dry moisture "
                        + g.text("kernel dried to")
                        + "\n"));
    return Map.of(
        "kernel of 100 kg", balance.kernel(),
        "finished feed", balance.finished(),
        "moisture of the finished feed", balance.moisture(),
        "oil on a kg of kernel", balance.coat() / balance.kernel());
  }

  private static Map<String, Double> yielded(Given g) {
    double finished = 100 * (1 - g.of("moisture of the mix")) / (1 - g.of("dried to"));
    double bagged = finished * (1 - g.of("shrink"));
    return Map.of(
        "finished feed of 100 kg", finished,
        "in the bags of 100 kg", bagged,
        "weighed for the batch", g.of("batch in the bags") / bagged * 100);
  }

  private static Map<String, Double> yieldOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .with(
                "plant/shed.yaml",
                "name: Shed\nair-temperature: 25 °C\nshrink: " + g.text("shrink") + "\n")
            .ingredient("meal", "moisture: " + g.text("moisture of the mix"))
            .feed(
                "  batch "
                    + g.text("batch in the bags")
                    + " finished\nmix\n  meal 100 %\nprocess\n  add-water on-mix 20 %\n  dry moisture "
                    + g.text("dried to")
                    + "\n");
    return Map.of(
        "finished feed of 100 kg", expected(feed).finished(),
        "in the bags of 100 kg", feed.bagged(),
        "weighed for the batch", feed.weighed(feed.recipe().batch().orElseThrow()));
  }

  private static Balance expected(ComputedFeed feed) {
    return feed.balances().expected();
  }
}
