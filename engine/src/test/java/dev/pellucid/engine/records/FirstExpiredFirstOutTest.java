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
import java.util.Set;
import org.junit.jupiter.api.Test;

/** First expired, first out, and what is passed over. */
class FirstExpiredFirstOutTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final GoesInto FEED =
      new GoesInto("CG-1", Set.of("CG-1", "tilapia", "starter"), false, 100, DAY, DAY);

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
        new Use(
            "A", "", "X-1-2026-11-20-1", DAY, 45, 0.5, true, new SourceFile("x", "").beginning());
    Stock stock = new Stock(tables, List.of(use));
    FirstExpiredFirstOut choice =
        FirstExpiredFirstOut.of(ingredient(tables, "maize"), 20, FEED, tables, stock).orElseThrow();
    assertEquals(List.of("A 5.0"), picks(choice));
    assertEquals(15, choice.shortfall(), 1e-9);
  }

  @Test
  void anIngredientWithoutLotsAsksForNone() {
    FeedTables tables = tables(lot("A", "2027-02-01", "passed", "2026-11-01"));
    assertTrue(
        FirstExpiredFirstOut.of(
                ingredient(tables, "salt"), 20, FEED, tables, new Stock(tables, List.of()))
            .isEmpty());
  }

  @Test
  void whatCountsIsTheLastStateByTheDay() {
    FirstExpiredFirstOut choice =
        choice(
            90,
            lot("A", "2027-01-01", states("2026-11-02 waiting", "2026-11-25 passed")),
            lot("B", "2027-01-02", states("2026-11-02 passed", "2026-11-25 on-hold")),
            lot("C", "2027-01-03", states("2026-11-02 passed", "2026-11-26 on-hold")),
            lot("D", "2027-01-04", states("2026-11-26 passed")));
    assertEquals(List.of("A 50.0", "C 40.0"), picks(choice));
    assertEquals(
        List.of(
            "lot B is on hold since 2026-11-25 by gate", "lot D was not looked at by 2026-11-25"),
        choice.passedOver());
  }

  @Test
  void aLotThatIsPassedForOthersIsPassedOver() {
    FirstExpiredFirstOut choice =
        choice(
            200,
            lot("A", "2027-01-01", states("2026-11-02 passed-for, only-for: [CG-2, grower]")),
            lot("B", "2027-01-02", states("2026-11-02 passed-for, not-for: [starter]")),
            lot("C", "2027-01-03", states("2026-11-02 passed-for, only-for: [CG-2, tilapia]")),
            lot("D", "2027-01-04", states("2026-11-02 passed-for, not-for: [CG-2]")),
            lot("E", "2027-01-05", states("2026-11-02 passed-for, at-most: 5 %")));
    assertEquals(List.of("C 50.0", "D 50.0", "E 5.0"), picks(choice));
    assertEquals(
        List.of("lot A is passed only for CG-2, grower", "lot B is not for starter"),
        choice.passedOver());
  }

  @Test
  void ofABinWithSeveralLotsAllMustBePassed() {
    String passed = states("2026-11-02 passed") + "\n    bin: B1";
    String held = states("2026-11-02 on-hold") + "\n    bin: B1";
    FirstExpiredFirstOut mixed =
        choice(70, lot("A", "2027-01-01", passed), lot("B", "2027-02-01", passed));
    assertEquals(List.of("B1 70.0 [A, B]"), named(mixed));
    FirstExpiredFirstOut stopped =
        choice(70, lot("A", "2027-01-01", passed), lot("B", "2027-02-01", held));
    assertEquals(List.of(), named(stopped));
    assertEquals(
        List.of("bin B1 may hold lot B, which is on hold since 2026-11-02 by gate"),
        stopped.passedOver());
  }

  @Test
  void whatABinHeldBeforeItWasEmptiedIsGone() {
    String passed = states("2026-11-02 passed") + "\n    bin: B1";
    String emptied = "bins:\n  - {bin: B1, emptied: 2026-11-03}\n";
    FirstExpiredFirstOut choice =
        choice(
            70,
            lot("A", "2027-01-01", passed),
            lot("B", "2027-02-01", passed).replace("2026-11-01", "2026-11-09"),
            emptied);
    assertEquals(List.of("B 50.0 [B]"), named(choice));
    assertEquals(20, choice.shortfall(), 1e-9);
  }

  @Test
  void aPremixMustBeNamedWhereALotIsForSomeFeedsAlone() {
    GoesInto premix = new GoesInto("MIN-1", Set.of("MIN-1"), true, 1000, DAY, DAY);
    FeedTables tables =
        tables(
            lot("A", "2027-01-01", states("2026-11-02 passed-for, not-for: [starter]")),
            lot("B", "2027-01-02", states("2026-11-02 passed-for, only-for: [grower]")),
            lot("C", "2027-01-03", states("2026-11-02 passed-for, only-for: [MIN-1]")),
            lot("D", "2027-01-04", states("2026-11-02 passed-for, at-most: 1 %")));
    FirstExpiredFirstOut choice =
        FirstExpiredFirstOut.of(
                ingredient(tables, "maize"), 200, premix, tables, new Stock(tables, List.of()))
            .orElseThrow();
    assertEquals(List.of("C 50.0", "D 10.0"), picks(choice));
  }

  private static List<String> named(FirstExpiredFirstOut choice) {
    return choice.picks().stream()
        .map(it -> it.number() + " " + it.kg() + " " + it.lots())
        .toList();
  }

  private static String states(String... states) {
    StringBuilder all = new StringBuilder("\n    states:");
    for (String state : states) {
      all.append("\n      - {day: ")
          .append(state, 0, 10)
          .append(", by: gate, state: ")
          .append(state.substring(11))
          .append(state.contains("on-hold") ? ", because: smell}" : "}");
    }
    return all.toString();
  }

  /** Received on 2026-11-01, with states as they are written. */
  private static String lot(String number, String bestBefore, String states) {
    return "  - number: "
        + number
        + "\n    ingredient: maize\n    quantity: 50 kg\n    received: 2026-11-01\n    best-before: "
        + bestBefore
        + states
        + "\n";
  }

  private static FirstExpiredFirstOut choice(double kg, String... lots) {
    FeedTables tables = tables(lots);
    return FirstExpiredFirstOut.of(
            ingredient(tables, "maize"), kg, FEED, tables, new Stock(tables, List.of()))
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
