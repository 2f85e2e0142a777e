package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.Ingredient.Cap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A cap, the word that there is none, and nothing told are three things. */
class CapTest {
  private static final String BRAN =
      """
      name: Wheat bran
      groups: [grains]
      form: meal
      contents:
        - source: handbook
          moisture: 11 %
      caps:
      """;

  private static Optional<Cap> capFor(String species, String... rows) {
    StringBuilder caps = new StringBuilder(BRAN);
    for (String row : rows) {
      caps.append("  - {").append(row).append(", because: fibre, source: handbook}\n");
    }
    TablesRead read = Pantry.full().with("ingredients/wheat-bran.yaml", caps.toString()).stocked();
    assertEquals(List.of(), read.findings(), caps.toString());
    FeedTables tables = read.tables();
    return Objects.requireNonNull(tables.ingredients().get("wheat-bran"))
        .cap(Objects.requireNonNull(tables.species().get(species)));
  }

  private static OptionalDouble most(String species, String... rows) {
    return capFor(species, rows).orElseThrow().most();
  }

  @Test
  void ofTheGroupOrOfTheSpecies() {
    assertEquals(OptionalDouble.of(0.1), most("african-catfish", "species: other-fish, max: 10 %"));
    assertEquals(
        OptionalDouble.of(0.2),
        most(
            "african-catfish",
            "species: other-fish, max: 10 %",
            "species: african-catfish, max: 20 %"));
  }

  @Test
  void ofTwoTheLower() {
    assertEquals(
        OptionalDouble.of(0.1),
        most(
            "african-catfish", "species: other-fish, max: 20 %", "species: other-fish, max: 10 %"));
  }

  @Test
  void noneForTheSpeciesGoesBeforeACapOfItsGroup() {
    assertEquals(
        OptionalDouble.empty(),
        most(
            "african-catfish",
            "species: other-fish, max: 10 %",
            "species: african-catfish, max: none"));
  }

  @Test
  void aCapForTheSpeciesGoesBeforeNoneOfItsGroup() {
    assertEquals(
        OptionalDouble.of(0.1),
        most(
            "african-catfish",
            "species: african-catfish, max: 10 %",
            "species: other-fish, max: none"));
  }

  @Test
  void ofAnotherSpeciesIsNotTold() {
    assertTrue(capFor("african-catfish", "species: salmonids, max: none").isEmpty());
  }
}
