package dev.pellucid.engine.explain;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.explain.Worked.Head;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.quantity.Remainders;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What 100 kg of recipe come to in the bags, step by step, and what that does to the cost. */
final class Yield {
  private static final int KG_DECIMALS = 3;
  private static final int MOISTURE_DECIMALS = 2;
  private static final String SHRINK = "dust, fines and start-up";

  private final ComputedFeed feed;
  private final Balance balance;
  private final List<List<String>> rows = new ArrayList<>();
  private BigDecimal before = BigDecimal.ZERO;

  private Yield(ComputedFeed feed) {
    this.feed = feed;
    this.balance = feed.balances().expected();
  }

  /** The mass from the scale to the bags, on target, handling overage left out. */
  static Worked mass(ComputedFeed feed) {
    return new Yield(feed).mass();
  }

  private Worked mass() {
    step(
        "weighed for the mixer",
        balance.mix(),
        part(balance.mix() - balance.dryMatter(), balance.mix()));
    boolean coated = false;
    for (Stage stage : balance.stages()) {
      if (stage.added() > 0 || stage.evaporated() > 0) {
        step(stage.pass().word(), stage.after(), stage.moistureAfter());
      }
      coated |= stage.pass().coats();
    }
    if (!coated && balance.coat() > 0) {
      step("coat", balance.finished(), balance.moisture());
    }
    step(
        SHRINK + ", " + Figures.plain(feed.shrink(), Unit.PERCENT),
        feed.bagged(),
        balance.moisture());
    rows.add(
        List.of(
            "In the bags, of 100 kg of recipe",
            "",
            Figures.fixed(feed.bagged(), KG_DECIMALS),
            Figures.fixed(balance.moisture() * 100, MOISTURE_DECIMALS)));
    return new Worked(
        "From the scale to the bags",
        List.of(
            Head.ofWords("Step"),
            Head.ofFigures("Adds kg"),
            Head.ofFigures("kg after it"),
            Head.ofFigures("Moisture %")),
        rows,
        true,
        List.of(
            "What is weighed on top for handling is left out: it is expected to be lost.",
            Figures.fixed(balance.finished(), KG_DECIMALS)
                + " kg of it is finished feed; contents and limits are per kg of that."));
  }

  private static double part(double part, double whole) {
    return whole > 0 ? part / whole : 0;
  }

  /** What a step adds is what its printed figure is more than the one before. */
  private void step(String words, double kg, double moisture) {
    BigDecimal after = new BigDecimal(Figures.fixed(kg, KG_DECIMALS));
    rows.add(
        List.of(
            words,
            after.subtract(before).toPlainString(),
            after.toPlainString(),
            Figures.fixed(moisture * 100, MOISTURE_DECIMALS)));
    before = after;
  }

  /**
   * What a kg costs as it is weighed, and what overage, water and dust make of that.
   *
   * @param total of it, as it is printed
   */
  static Worked cost(ComputedFeed feed, BigDecimal total, String currency) {
    double weighed = 0;
    for (Row row : feed.rows()) {
      weighed += row.money() * part(row.kg(), row.kgRichest());
    }
    double money = feed.costPer100();
    double finished = feed.balances().expected().finished();
    double bagged = feed.bagged();
    List<Double> exact =
        List.of(
            weighed / 100,
            (money - weighed) / 100,
            money / finished - money / 100,
            money / bagged - money / finished);
    List<BigDecimal> adds = Remainders.out(exact, total);
    List<String> words =
        List.of(
            "100 kg of recipe as weighed",
            "weighed on top for handling",
            "water in and off: " + Figures.fixed(finished, KG_DECIMALS) + " kg of finished feed",
            SHRINK + ": " + Figures.fixed(bagged, KG_DECIMALS) + " kg in the bags");
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      rows.add(List.of(words.get(i), adds.get(i).toPlainString()));
    }
    rows.add(List.of("A kg in the bags", total.toPlainString()));
    List<String> below = new ArrayList<>();
    wetter(feed, currency).ifPresent(below::add);
    return new Worked(
        "What the yield does to the cost",
        List.of(Head.ofWords("Step"), Head.ofFigures(currency + "/kg")),
        rows,
        true,
        below);
  }

  /**
   * Where a step sets the moisture, what a wetter lot of the largest line costs though no price
   * moves.
   */
  private static Optional<String> wetter(ComputedFeed feed, String currency) {
    Optional<Row> largest =
        feed.rows().stream()
            .filter(row -> !feed.keepsItsWater(row))
            .max(Comparator.comparingDouble(Row::kg));
    Optional<Balance.MoistureSet> set = feed.balances().expected().moistureSet();
    if (largest.isEmpty() || set.isEmpty() || feed.bagged() <= 0) {
      return Optional.empty();
    }
    double lostDry = largest.get().kg() / 100;
    double lost = lostDry / (1 - set.get().aim().aim()) * (1 - feed.shrink());
    double dearer = feed.costPer100() / (feed.bagged() - lost) - feed.costPerKg();
    if (!(dearer > Closeness.PART)) {
      return Optional.empty();
    }
    return Optional.of(
        "One point more of water in "
            + largest.get().ingredient().name()
            + " is "
            + Figures.plain(lost)
            + " kg less in the bags, since "
            + set.get().by().word()
            + " takes it out again: "
            + Figures.visible(dearer, Figures.decimals(feed.costPerKg()))
            + " "
            + currency
            + "/kg more, though no price moves.");
  }
}
