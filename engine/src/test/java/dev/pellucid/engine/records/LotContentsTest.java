package dev.pellucid.engine.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Pantry;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a measured lot makes of the library, worked by hand. */
class LotContentsTest {
  private static final String HEAD =
      """
      lots:
        - number: FM-1
          ingredient: fish-meal
          received: 2026-11-03
          quantity: 500 kg
      """;

  @Test
  @DisplayName("by hand: 5.4 % to 8.0 % moisture rescales all by 0.920 / 0.946, protein to 61.66 %")
  void moistureAloneRescalesAll() {
    LotContents lot = lot("moisture: 8.0 %");
    assertEquals(0.920 / 0.946, lot.dry(), 1e-12);
    assertTrue(lot.protein().isEmpty());
    assertEquals(0.634 * 0.920 / 0.946, content(lot, "crude-protein").low(), 1e-12);
    assertEquals(0.0475 * 0.920 / 0.946, content(lot, "lysine").low(), 1e-12);
    assertEquals(0.015 * 0.920 / 0.946, content(lot, "crude-protein").spread().orElse(0), 1e-12);
    assertEquals(0.08, content(lot, "moisture").low(), 1e-12);
    assertEquals("contents times 0.9725 for its moisture", lot.words());
  }

  @Test
  @DisplayName("by hand: 60.23 % protein for 63.4 % makes lysine 4.75 x 0.95 %, ash stays")
  void proteinAloneRescalesItsParts() {
    LotContents lot = lot("crude-protein: 60.23 %");
    assertEquals(1, lot.dry(), 0);
    assertEquals(0.0475 * 0.95, content(lot, "lysine").low(), 1e-12);
    assertEquals(0.205, content(lot, "crude-ash").low(), 1e-12);
    assertEquals("amino acids times 0.9500 for its protein", lot.words());
  }

  @Test
  void whatWasMeasuredIsNeitherRescaledNorSpread() {
    LotContents lot = lot("moisture: 8.0 %, crude-protein: 60.23 %, lysine: 4.4 %");
    assertEquals(0.044, content(lot, "lysine").low(), 1e-12);
    assertEquals(0, content(lot, "lysine").spread().orElse(1), 0);
    assertEquals(0.0175 * 0.95, content(lot, "methionine").low(), 1e-12);
    assertEquals(0.205 * 0.920 / 0.946, content(lot, "crude-ash").low(), 1e-12);
  }

  @Test
  void aSpreadThatWasWrittenStays() {
    assertEquals(
        0.004,
        content(lot("crude-protein: 62 ± 0.4 %"), "crude-protein").spread().orElse(0),
        1e-12);
  }

  @Test
  void withoutAnAnalysisTheLibraryHolds() {
    FeedTables tables = tables(HEAD);
    Ingredient library = library(tables);
    LotContents lot = LotContents.of(library, delivery(tables), tables.nutrients());
    assertEquals(library.contents(), lot.ingredient().contents());
    assertEquals("FM-1", lot.ingredient().lot());
    assertEquals("", lot.words());
  }

  private static LotContents lot(String contents) {
    FeedTables tables =
        tables(HEAD + "    contents:\n      - {source: pantry, " + contents + "}\n");
    Lot lot = delivery(tables);
    return LotContents.of(library(tables), lot, tables.nutrients());
  }

  private static FeedTables tables(String lots) {
    var stocked = Pantry.full().with("lots/all.yaml", lots).stocked();
    assertEquals(List.of(), stocked.findings());
    return stocked.tables();
  }

  private static Content content(LotContents lot, String nutrient) {
    return LotContents.told(lot.ingredient(), nutrient).orElseThrow();
  }

  private static Ingredient library(FeedTables tables) {
    return Optional.ofNullable(tables.ingredients().get("fish-meal")).orElseThrow();
  }

  private static Lot delivery(FeedTables tables) {
    return Optional.ofNullable(tables.lots().get("FM-1")).orElseThrow();
  }
}
