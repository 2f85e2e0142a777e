package dev.pellucid.engine.arithmetic;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.List;
import java.util.Map;

/** What a premix is made of, and what it brings. */
final class PremixExamples {
  private PremixExamples() {}

  static Map<String, Worked> all() {
    return Map.of(
        "premix", Worked.of(PremixExamples::made, PremixExamples::madeOf),
        "premix-off-dose", Worked.of(PremixExamples::offDose, PremixExamples::offDoseOf));
  }

  private static Map<String, Double> made(Given g) {
    double content = g.of("zinc supplied") / g.of("dose");
    double salt = content / g.of("zinc in the salt");
    double more = salt * (1 + g.of("overage for stability"));
    return Map.of(
        "zinc to be in the premix", content,
        "salt without overage", salt,
        "salt in the premix", more,
        "carrier", 1 - more);
  }

  private static Map<String, Double> madeOf(Given g) {
    ComputedFeed feed =
        feed(
            g,
            g.text("zinc in the salt"),
            g.text("dose"),
            "overage\n  zinc-salt " + g.text("overage for stability") + " for stability\n");
    List<ResolvedPremix.Part> parts = parts(feed);
    double without = parts.get(0).designed().part();
    return Map.of(
        "zinc to be in the premix",
        without * g.of("zinc in the salt"),
        "salt without overage",
        without,
        "salt in the premix",
        parts.get(0).share().part(),
        "carrier",
        parts.get(1).share().part());
  }

  private static Map<String, Double> offDose(Given g) {
    double times = g.of("premix in the feed") / g.of("dose");
    return Map.of("zinc in the feed", g.of("zinc supplied") * times);
  }

  private static Map<String, Double> offDoseOf(Given g) {
    return Map.of(
        "zinc in the feed",
        Feeds.expected(feed(g, "35 %", g.text("premix in the feed"), ""), "zinc"));
  }

  private static ComputedFeed feed(Given g, String salt, String share, String overage) {
    return new Cooked()
        .ingredient("zinc-salt", "moisture: 10 %, zinc: " + salt)
        .ingredient("chalk", "moisture: 10 %, zinc: none")
        .premix(
            "PX-1",
            "premix PX-1\n  dose "
                + g.text("dose")
                + "\nsupply\n  zinc "
                + g.text("zinc supplied")
                + " from zinc-salt\n"
                + overage
                + "carrier\n  chalk rest\n"
                + "process\n  blend time 10 min\n  pack bag 5 kg\n  store shelf-life 90 d\n"
                + "  store temperature 15 °C\n")
        .feed("mix\n  PX-1 " + share + "\n  chalk rest\n");
  }

  private static List<ResolvedPremix.Part> parts(ComputedFeed feed) {
    return feed.recipe()
        .lines()
        .get(0)
        .material()
        .byKind(single -> List.of(), premixed -> premixed.premix().parts(), reworked -> List.of());
  }
}
