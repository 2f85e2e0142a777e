package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.Balances;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.TablesReader;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.engine.resolve.Reworks;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.syntax.FeedFile;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * CG-36 of the example folder against a calculator in another language, written from the same
 * formulas by another hand before this engine existed. It took the feed as the river mill would
 * make it, in three loads, with the selenium that the premix brought then.
 */
class IndependentReckoningTest {
  private static final Map<String, String> THEN =
      Map.of(
          "  plant     farm-shed\n", "",
          "  selenium                     0.05 mg/kg", "  selenium  0.08 mg/kg");

  private static ComputedFeed feed;

  @BeforeAll
  static void compute() throws IOException {
    Texts folder = Texts.at(Example.whole());
    List<Finding> findings = new ArrayList<>();
    TreeMap<String, SourceFile> data = new TreeMap<>();
    for (String path : folder.data()) {
      data.put(path, folder.read(path, findings).orElseThrow());
    }
    FeedTables tables = TablesReader.read(data, new TreeMap<>()).tables();
    List<FeedFile.PremixFile> premixes = new ArrayList<>();
    for (String path : folder.ending(".premix")) {
      premixes.add((FeedFile.PremixFile) parsed(folder, path, findings));
    }
    LocalDate day = LocalDate.of(2026, 11, 25);
    Resolver resolver =
        Resolver.prepare(
                new Resolver.Named(
                    tables, premixes, List.of(), Map.of(), Reworks.NONE, Days.on(day)),
                java.util.Optional.empty())
            .resolver();
    FeedFile recipe = parsed(folder, "catfish/CG-36.recipe", findings);
    var resolved = resolver.recipe((FeedFile.RecipeFile) recipe).thing().orElseThrow();
    feed = new FeedComputer(tables).compute(resolved).feed().orElseThrow();
  }

  private static FeedFile parsed(Texts folder, String path, List<Finding> findings)
      throws IOException {
    String text = folder.read(path, findings).orElseThrow().text();
    for (Map.Entry<String, String> one : THEN.entrySet()) {
      text = text.replace(one.getKey(), one.getValue());
    }
    return FeedParser.parse(new SourceFile(path, text)).file();
  }

  @Test
  @DisplayName("masses and moistures agree with the independent calculator")
  void masses() {
    Balances balances = feed.balances();
    assertEquals(98.736248, balances.expected().finished(), 1e-6);
    assertEquals(0.08641773, balances.expected().moisture(), 1e-8);
    assertEquals(99.788650, balances.poorest().finished(), 1e-6);
    assertEquals(97.731376, balances.richest().finished(), 1e-6);
    assertEquals(0.2390, balances.expected().atDie(), 5e-5);
  }

  @Test
  @DisplayName("nutrients and cost agree with the independent calculator")
  void nutrients() {
    assertContent("crude-protein", 0.3583503369, 0.3658975036);
    assertContent("starch", 0.1650852704, 0.1685674066);
    assertPoorest("lysine", 0.0230432601);
    assertContent("digestible-energy", 13.28821596, 13.56827082);
    assertEquals(0.616430, feed.costPerKg(), 1e-6);
  }

  @Test
  @DisplayName("mass is kept in every stage and dry matter through all of them")
  void conserved() {
    for (Scenario end : Scenario.values()) {
      Balance balance = feed.balances().at(end);
      double withCoat = balance.finished() * (1 - balance.moisture());
      boolean coated = false;
      for (Stage stage : balance.stages()) {
        double after = stage.before() + stage.added() - stage.evaporated();
        assertEquals(after, stage.after(), 1e-9);
        double dry = stage.after() * (1 - stage.moistureAfter());
        coated |= stage.pass().coats();
        assertEquals(coated ? withCoat : balance.dryMatter(), dry, 1e-9);
      }
    }
  }

  /** The calculator takes what is untold for nothing at both ends; here it is bounded when rich. */
  private static void assertPoorest(String nutrient, double poorest) {
    int index = feed.nutrients().named(nutrient).orElseThrow().index();
    assertEquals(poorest, feed.content(Scenario.POOREST, index), 1e-9 * poorest);
  }

  private static void assertContent(String nutrient, double poorest, double richest) {
    int index = feed.nutrients().named(nutrient).orElseThrow().index();
    assertEquals(poorest, feed.content(Scenario.POOREST, index), 1e-9 * poorest);
    assertEquals(richest, feed.content(Scenario.RICHEST, index), 1e-9 * richest);
  }
}
