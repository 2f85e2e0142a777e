package dev.pellucid.engine.arithmetic;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a feed costs, and the least that it can. */
final class MoneyExamples {
  private MoneyExamples() {}

  static Map<String, Worked> all() {
    return Map.of(
        "cost",
        Worked.of(MoneyExamples::cost, MoneyExamples::costOf),
        "least-cost",
        new Worked(MoneyExamples::least, MoneyExamples::leastOf));
  }

  private static Map<String, Double> cost(Given g) {
    double meal = 100 * g.of("meal");
    double mealMoney = meal * (1 + g.of("overage for handling")) * g.of("price of the meal");
    double branMoney = (100 - meal) * g.of("price of the bran");
    double bagged =
        100 * (1 - g.of("moisture of both")) / (1 - g.of("dried to")) * (1 - g.of("shrink"));
    return Map.of(
        "money for 100 kg", mealMoney + branMoney,
        "in the bags of 100 kg", bagged,
        "cost of a kg weighed", (mealMoney + branMoney) / 100,
        "cost of a kg in the bags", (mealMoney + branMoney) / bagged,
        "of it for the meal", mealMoney / bagged);
  }

  private static Map<String, Double> costOf(Given g) {
    ComputedFeed feed =
        new Cooked()
            .with(
                "plant/shed.yaml",
                "name: Shed\nair-temperature: 25 °C\nshrink: " + g.text("shrink") + "\n")
            .with(
                "prices/now.yaml", prices(g.text("price of the meal"), g.text("price of the bran")))
            .ingredient("pea-meal", "moisture: " + g.text("moisture of both"))
            .ingredient("oat-meal", "moisture: " + g.text("moisture of both"))
            .feed(
                "mix\n  pea-meal "
                    + g.text("meal")
                    + "\n  oat-meal rest\noverage\n  pea-meal "
                    + g.text("overage for handling")
                    + " for handling\nprocess\n  add-water on-mix 18 %\n  dry moisture "
                    + g.text("dried to")
                    + "\n");
    Row meal = feed.rows().get(0);
    return Map.of(
        "money for 100 kg", feed.costPer100(),
        "in the bags of 100 kg", feed.bagged(),
        "cost of a kg weighed", feed.costPer100() / 100,
        "cost of a kg in the bags", feed.costPerKg(),
        "of it for the meal", meal.money() / feed.bagged());
  }

  private static String prices(String meal, String bran) {
    return "from: 2026-11-01\nsource: workshop\nprices:\n  pea-meal: "
        + meal
        + "\n  oat-meal: "
        + bran
        + "\n";
  }

  private static Map<String, Double> least(Given g) {
    double low = g.of("protein of the bran");
    double apart = g.of("protein of the meal") - low;
    double share = (g.of("minimum of protein") - low) / apart;
    double bagged = 1 - g.of("shrink");
    double dearer = g.of("price of the meal") - g.of("price of the bran");
    return Map.of(
        "meal", share,
        "cost of a kg in the bags", (g.of("price of the bran") + share * dearer) / bagged,
        "one point more of protein costs", dearer * 0.01 / apart / bagged);
  }

  private static Map<String, Double> leastOf(Given g, Path empty) throws IOException {
    new SmallFolder(empty)
        .with(
            "plant/shed.yaml",
            "name: Shed\nair-temperature: 25 °C\nshrink: " + g.text("shrink") + "\n")
        .with("prices/now.yaml", prices(g.text("price of the meal"), g.text("price of the bran")))
        .ingredient("pea-meal", "moisture: 10 %, crude-protein: " + g.text("protein of the meal"))
        .ingredient("oat-meal", "moisture: 10 %, crude-protein: " + g.text("protein of the bran"))
        .recipe(
            "mix\n  pea-meal 75.00 % within 0 to 100 %\n  oat-meal rest within 0 to 100 %\n"
                + "limits\n  crude-protein min "
                + g.text("minimum of protein")
                + "\n");
    String text =
        OwnFolder.leastCost(
                empty, LocalDate.of(2026, 11, 25), "A-1", Map.of(), PrintedPaths.BELOW_FOLDER)
            .text();
    return Map.of(
        "meal", found(text, "pea-meal +[0-9.]+ +([0-9.]+)") / 100,
        "cost of a kg in the bags", found(text, "EUR/kg in the bags.* ([0-9.]+) then"),
        "one point more of protein costs",
            found(text, "one point more of crude-protein costs ([0-9.]+) EUR/t") / 1000);
  }

  private static double found(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    if (!found.find()) {
      throw new AssertionError("no " + pattern + " in\n" + text);
    }
    return Double.parseDouble(found.group(1));
  }
}
