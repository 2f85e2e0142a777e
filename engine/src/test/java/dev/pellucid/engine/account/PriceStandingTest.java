package dev.pellucid.engine.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.account.PriceStanding.Priced;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Source.Reliability;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.resolve.Material;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Prices from two days on the 25th of November: 10 days and 66 days old. */
class PriceStandingTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final LocalDate NEW = LocalDate.of(2026, 11, 15);
  private static final LocalDate OLD = LocalDate.of(2026, 9, 20);

  private static Cooked cooked() {
    return new Cooked()
        .ingredient("meal", "moisture: 10 %")
        .ingredient("spice", "moisture: 10 %")
        .ingredient("carrier", "moisture: 10 %")
        .ingredient("herb", "moisture: 10 %")
        .with(
            "prices/old.yaml",
            """
            from: 2026-09-20
            source: workshop
            prices:
              meal: 0.30 EUR/kg
              spice: 5 EUR/kg
              carrier: 0.20 EUR/kg
            """)
        .with("prices/new.yaml", "from: 2026-11-15\nsource: pantry\nprices:\n  meal: 0.31 EUR/kg\n")
        .with(
            "prices/later.yaml",
            "from: 2026-12-01\nsource: pantry\nprices:\n  spice: 6 EUR/kg\n  herb: 7 EUR/kg\n")
        .premix(
            "MIX-1",
            "premix MIX-1 \"Spices\"\n\nmix\n  spice  20 %\n  herb  10 %\n  carrier  rest\n");
  }

  private static final String RECIPE = "mix\n  meal  rest\n  spice  1 %\n  MIX-1  2 %\n";

  private static PriceStanding standing() {
    return PriceStanding.of(cooked().feed(RECIPE), DAY);
  }

  @Test
  void eachPriceOnceWithItsAgeAndItsLines() {
    assertEquals(
        List.of(
            new Priced("meal", List.of("meal"), NEW, 10, "pantry", Reliability.INVENTED),
            new Priced(
                "spice",
                List.of("spice", "MIX-1"),
                OLD,
                66,
                "workshop",
                Reliability.COMMON_PRACTICE),
            new Priced(
                "carrier", List.of("MIX-1"), OLD, 66, "workshop", Reliability.COMMON_PRACTICE)),
        standing().prices());
    assertEquals(List.of("herb"), standing().unpriced());
  }

  @Test
  void theOldestIsTheFirstOfSeveral() {
    assertEquals("spice", standing().oldest().orElseThrow().ingredient());
    assertEquals(2, standing().olderThan(60).size());
    assertEquals(2, standing().olderThan(65).size());
    assertEquals(0, standing().olderThan(66).size());
    assertEquals(3, standing().olderThan(9).size());
  }

  @Test
  void theInventedOnes() {
    assertEquals(1, standing().invented().size());
    assertEquals("meal", standing().invented().get(0).ingredient());
  }

  private static Ingredient ingredient(Cooked pantry, String name) {
    return Objects.requireNonNull(pantry.tables().ingredients().get(name));
  }

  @Test
  void ingredientsThatAreInNoFeed() {
    Cooked pantry = cooked();
    List<Material.Single> all = new ArrayList<>();
    for (String name : List.of("herb", "carrier")) {
      Ingredient one = ingredient(pantry, name);
      all.add(new Material.Single(one, pantry.tables().price(name, DAY)));
    }
    PriceStanding standing = PriceStanding.of(all, DAY);
    assertEquals(
        List.of(new Priced("carrier", List.of(), OLD, 66, "workshop", Reliability.COMMON_PRACTICE)),
        standing.prices());
    assertEquals(List.of("herb"), standing.unpriced());
  }

  @Test
  void withoutPricesThereIsNoOldest() {
    Ingredient herb = ingredient(cooked(), "herb");
    PriceStanding standing =
        PriceStanding.of(List.of(new Material.Single(herb, Optional.empty())), DAY);
    assertTrue(standing.oldest().isEmpty());
    assertEquals(List.of(), standing.olderThan(0));
  }
}
