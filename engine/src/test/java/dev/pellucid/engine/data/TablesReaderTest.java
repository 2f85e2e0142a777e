package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.data.Nutrient.Formula;
import dev.pellucid.engine.data.Nutrient.Formula.Term;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Retention.Row;
import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import dev.pellucid.syntax.Step;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What stands in the files is what is in the tables. */
class TablesReaderTest {
  private static final FeedTables TABLES = Pantry.full().stocked().tables();

  @Test
  void thePantryIsReadInSilence() {
    assertEquals("", FindingText.of(Pantry.full().stocked().findings()));
  }

  @Test
  void theExampleFolderIsReadInSilence() {
    TablesRead stocked = Pantry.of(Example.whole()).stocked();
    assertEquals("", FindingText.of(stocked.findings()));
    assertTrue(stocked.tables().ingredients().size() >= 40);
  }

  @Test
  void settingsAndSources() {
    assertEquals("The small pantry", TABLES.settings().name());
    assertEquals("EUR", TABLES.settings().currency());
    assertEquals(Optional.of("EU"), TABLES.settings().jurisdiction());
    assertEquals("pellucid.yaml:4:15", TABLES.settings().place().place());
    Source source = there(TABLES.sources(), "workshop");
    assertEquals(Source.Reliability.COMMON_PRACTICE, source.reliability());
    assertEquals("usual practice of a small feed maker, no source", source.cite());
    assertEquals("workshop", source.declared().text());
  }

  @Test
  void nutrientsStandInTheOrderOfTheirFiles() {
    Nutrients nutrients = TABLES.nutrients();
    assertEquals(0, nutrients.moisture().orElseThrow().index());
    assertEquals("vitamin-c", nutrients.at(nutrients.count() - 1).name());
    Nutrient lysine = nutrients.named("lysine").orElseThrow();
    assertEquals(Optional.of("crude-protein"), lysine.partOf());
    assertEquals("stable", lysine.stability());
    assertEquals(
        "vitamin-a-beadlet", nutrients.named("vitamin-a").map(Nutrient::stability).orElseThrow());
  }

  @Test
  void formulasAreSumsInTheBaseOfTheirKind() {
    Formula energy = formula("gross-energy");
    assertEquals(0, energy.constant());
    assertEquals(
        List.of(
            new Term(23.6, "crude-protein"),
            new Term(39.5, "crude-fat"),
            new Term(17.2, "nitrogen-free-extract"),
            new Term(17.2, "crude-fibre")),
        energy.terms());
    assertEquals(Optional.of("energy-factors"), energy.source().map(Source::id));
    Formula extract = formula("nitrogen-free-extract");
    assertEquals(1, extract.constant());
    assertEquals(new Term(-1, "moisture"), extract.terms().get(0));
    assertEquals(5, extract.terms().size());
  }

  private static Formula formula(String nutrient) {
    return TABLES.nutrients().named(nutrient).flatMap(Nutrient::formula).orElseThrow();
  }

  @Test
  void anIngredientKeepsEachFigureWithItsPlaceAndSource() {
    Ingredient maize = ingredient("maize");
    assertEquals("Maize, yellow", maize.title());
    assertEquals(Form.GRAIN, maize.form());
    assertEquals(Set.of("grains"), maize.groups());
    assertEquals(0.14, maize.maxMoisture().orElseThrow());
    assertTrue(maize.whole());
    Content moisture = content(maize, "moisture");
    assertEquals(0.112, moisture.low(), 1e-15);
    assertEquals(0.008, moisture.spread().orElseThrow());
    assertEquals("11.2 ± 0.8 %", moisture.asWritten());
    assertEquals("11.2 ± 0.8 %", moisture.place().text());
    assertEquals("proximates", moisture.source().id());
    Content selenium = content(maize, "selenium");
    assertEquals(0, selenium.low());
    assertEquals(0.05e-6, selenium.high(), 1e-20);
    assertEquals(0, content(maize, "vitamin-c").high());
    assertEquals(5e8, content(ingredient("retinyl-acetate"), "vitamin-a").low());
  }

  private static Ingredient ingredient(String name) {
    return there(TABLES.ingredients(), name);
  }

  private static <T> T there(Map<String, T> things, String name) {
    return Optional.ofNullable(things.get(name)).orElseThrow();
  }

  private static Content content(Ingredient ingredient, String nutrient) {
    for (ContentBlock block : ingredient.contents()) {
      Content content = block.byNutrient().get(nutrient);
      if (content != null) {
        return content;
      }
    }
    throw new AssertionError(nutrient);
  }

  @Test
  void traitsCapsAndDigestibility() {
    assertEquals(Set.of(Trait.MARINE_OIL, Trait.ANTIOXIDANT), ingredient("fish-oil").traits());
    Ingredient soya = ingredient("soybean-meal");
    assertEquals(OptionalDouble.of(0.5), soya.caps().get(0).most());
    assertEquals("trypsin inhibitor, low methionine", soya.caps().get(0).because());
    assertEquals(0.869, there(soya.digestibility().get(0).coefficients(), "crude-protein"), 1e-15);
    assertEquals(Optional.of("african-catfish"), soya.digestibility().get(0).species());
    assertEquals(
        "vitamin-c-phosphate", ingredient("ascorbyl-phosphate").stability().get("vitamin-c"));
  }

  @Test
  void theSequenceStandsInTheOrderOfItsFile() {
    TablesRead stocked = Pantry.full().withSequence().stocked();
    assertEquals("", FindingText.of(stocked.findings()));
    List<SequenceRow> rows = stocked.tables().practice().sequence();
    assertEquals(
        List.of("Meals of animals", "Selenium above 5 mg/kg", "Trace salt"),
        rows.stream().map(row -> row.left().words()).toList());
    assertEquals(List.of("rainbow-trout"), rows.get(0).before());
    assertEquals(25, rows.get(0).flush().orElseThrow().kg());
    assertEquals("maize", rows.get(0).flush().orElseThrow().with().name());
    assertEquals("kept for feeds that hold them", rows.get(0).flush().orElseThrow().to());
    assertEquals(Optional.empty(), rows.get(1).flush());
    assertEquals("practice/sequence.yaml:7:12", rows.get(1).place().place());
    assertEquals(0.5, rows.get(2).flush().orElseThrow().kg());
    Optional<Species> trout = Optional.of(there(TABLES.species(), "rainbow-trout"));
    Optional<Species> catfish = Optional.of(there(TABLES.species(), "african-catfish"));
    assertTrue(rows.get(0).isFor(trout) && rows.get(1).isFor(trout) && rows.get(2).isFor(trout));
    assertFalse(rows.get(0).isFor(catfish));
    assertTrue(rows.get(1).isFor(catfish));
    assertFalse(rows.get(1).isFor(Optional.empty()));
    assertTrue(rows.get(2).isFor(Optional.empty()));
  }

  @Test
  void speciesPlantAndPractice() {
    Species catfish = there(TABLES.species(), "african-catfish");
    assertEquals(0.05, catfish.sizes().get(1).lightest());
    assertEquals(4, catfish.sizes().get(1).thickest());
    Plant plant = TABLES.plant().orElseThrow();
    assertEquals(0.015, plant.shrink());
    Dryer.Trays trays = new Dryer.Trays(2, OptionalInt.empty());
    assertEquals(List.of(new Dryer("dryer", trays, Optional.empty())), plant.dryers());
    Practice practice = TABLES.practice();
    assertEquals(12.0, practice.bound(BoundOf.DRYING_TIME).orElseThrow().high());
    assertEquals(0.25, practice.bound(BoundOf.BLENDING_TIME).orElseThrow().high(), 1e-15);
    assertEquals(0.03, practice.spread("crude-protein").orElseThrow());
    Retention crystals = there(practice.retention(), "vitamin-c-crystals");
    assertTrue(crystals.unprotected());
    assertEquals(
        List.of(new Row(40, 0.8), new Row(120, 0.25)), crystals.bySteps().get(Step.EXTRUDE));
    assertEquals(0.6, crystals.perMonth(25).orElseThrow());
    assertEquals(2675.6, practice.steam().orElseThrow().vapour(100));
    assertEquals(2, practice.inspection().size());
    assertFalse(practice.cautions().containsKey("inspection"));
    assertTrue(practice.cautions().containsKey("trace-salt"));
  }

  @Test
  void pricesArePerKgFromTheirDay() {
    LocalDate day = LocalDate.of(2026, 11, 25);
    assertEquals(0.24, TABLES.price("maize", day).orElseThrow().perKg());
    assertEquals(1.45, TABLES.price("fish-meal", day).orElseThrow().perKg());
    assertTrue(TABLES.price("maize", LocalDate.of(2026, 10, 31)).isEmpty());
  }

  @Test
  void aFileThatCannotBeReadCostsNoOther() {
    TablesRead stocked =
        Pantry.full()
            .with("sources.yaml", "pantry: [\n")
            .with("groups.yaml", "grains: {\n")
            .with("ingredients/maize.yaml", "name: Maize\n\tform: grain\n")
            .stocked();
    List<String> codes = stocked.findings().stream().map(f -> f.code().text()).toList();
    assertEquals(
        List.of("yaml-open-bracket", "yaml-tab", "yaml-open-bracket"),
        codes,
        FindingText.of(stocked.findings()));
    Ingredient maize = there(stocked.tables().ingredients(), "maize");
    assertFalse(maize.whole());
    assertTrue(there(stocked.tables().ingredients(), "salt").whole());
  }

  @Test
  void anIngredientWithAWrongFigureIsThereAndNotWhole() {
    Pantry pantry = Pantry.full();
    String text = pantry.text("ingredients/maize.yaml").replace("62 %", "62,0 %");
    TablesRead stocked = pantry.with("ingredients/maize.yaml", text).stocked();
    assertEquals(1, stocked.findings().size(), FindingText.of(stocked.findings()));
    Finding finding = stocked.findings().get(0);
    assertEquals("62,0 %", finding.span().text());
    assertFalse(there(stocked.tables().ingredients(), "maize").whole());
  }
}
