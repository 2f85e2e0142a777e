package dev.pellucid.engine.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Pantry;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** First expired, first out, and what is passed over. */
class FirstExpiredFirstOutTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @Test
  void theLotThatExpiresFirstIsEmptiedFirst() {
    FirstExpiredFirstOut choice =
        choice(
            70,
            lot("B", "2027-03-01", "passed", "2026-11-01"),
            lot("A", "2027-02-01", "passed", "2026-11-09"));
    assertEquals(List.of("A 50.0", "B 20.0"), picks(choice));
    assertEquals(0, choice.shortfall(), 0);
  }

  @Test
  void ofOneDayTheOneReceivedFirstGoesFirst() {
    assertEquals(
        List.of("B 10.0"),
        picks(
            choice(
                10,
                lot("A", "2027-02-01", "passed", "2026-11-09"),
                lot("B", "2027-02-01", "passed", "2026-11-01"))));
  }

  @Test
  void expiredFailedUninspectedAndComingLotsArePassedOver() {
    FirstExpiredFirstOut choice =
        choice(
            60,
            lot("A", "2026-11-24", "passed", "2026-10-01"),
            lot("B", "2027-01-01", "failed", "2026-10-01"),
            lot("C", "2027-01-01", "", "2026-10-01"),
            lot("D", "2027-01-01", "passed", "2026-11-26"),
            lot("E", "2026-11-25", "passed", "2026-10-01"));
    assertEquals(List.of("E 50.0"), picks(choice));
    assertEquals(10, choice.shortfall(), 1e-9);
  }

  @Test
  void whatOthersTookIsGone() {
    FeedTables tables = tables(lot("A", "2027-02-01", "passed", "2026-11-01"));
    Use use =
        new Use("A", "X-1-2026-11-20-1", DAY, 45, 0.5, true, new SourceFile("x", "").beginning());
    Stock stock = new Stock(tables, List.of(use));
    FirstExpiredFirstOut choice =
        FirstExpiredFirstOut.of(ingredient(tables, "maize"), 20, DAY, tables, stock).orElseThrow();
    assertEquals(List.of("A 5.0"), picks(choice));
    assertEquals(15, choice.shortfall(), 1e-9);
  }

  @Test
  void anIngredientWithoutLotsAsksForNone() {
    FeedTables tables = tables(lot("A", "2027-02-01", "passed", "2026-11-01"));
    assertTrue(
        FirstExpiredFirstOut.of(
                ingredient(tables, "salt"), 20, DAY, tables, new Stock(tables, List.of()))
            .isEmpty());
  }

  private static FirstExpiredFirstOut choice(double kg, String... lots) {
    FeedTables tables = tables(lots);
    return FirstExpiredFirstOut.of(
            ingredient(tables, "maize"), kg, DAY, tables, new Stock(tables, List.of()))
        .orElseThrow();
  }

  private static List<String> picks(FirstExpiredFirstOut choice) {
    return choice.picks().stream().map(it -> it.number() + " " + it.kg()).toList();
  }

  private static String lot(String number, String bestBefore, String inspection, String received) {
    return "  - number: "
        + number
        + "\n    ingredient: maize\n    quantity: 50 kg\n    received: "
        + received
        + "\n    best-before: "
        + bestBefore
        + (inspection.isEmpty() ? "\n" : "\n    inspection: " + inspection + "\n");
  }

  private static FeedTables tables(String... lots) {
    return Pantry.full()
        .with("lots/all.yaml", "lots:\n" + String.join("", lots))
        .stocked()
        .tables();
  }

  private static Ingredient ingredient(FeedTables tables, String name) {
    return Optional.ofNullable(tables.ingredients().get(name)).orElseThrow();
  }
}
