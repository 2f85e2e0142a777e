package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.LeastCostReport;
import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Advice.Standing;
import dev.pellucid.engine.outcome.LeastCostSchema;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Least cost asked of the example: what is offered, what is written, and what is refused. */
class LeastCostTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String GROWER = "catfish/CG-36.recipe";
  private static final String FISH =
      "  fish-meal-65                 15.00 %      within 10 to 20 %";

  @TempDir Path copy;
  private SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = new SlippedFolder(copy);
  }

  @Test
  void offersACheaperRecipeAndWritesNothing() throws IOException {
    Map<String, String> before = texts();
    LeastCostReport report = asked(Map.of());
    Advice advice = only(report);
    assertEquals(Standing.CHEAPER, advice.standing());
    assertTrue(advice.costs().orElseThrow().savesPerTonne() > 1);
    assertEquals(4, advice.costs().orElseThrow().tonnesPerMonth().orElse(0));
    String text = report.shown();
    assertTrue(text.contains("+++ b/catfish/CG-36.recipe\n"), text);
    assertTrue(text.contains(" now, ") && text.contains("EUR a month"), text);
    assertTrue(report.next(false).get(0).contains("-Dpellucid.write=true"));
    assertEquals(before, texts());
  }

  @Test
  void whatIsWrittenKeepsLineEndsAndMarkAndIsTheCheapestThen() throws IOException {
    Path file = copy.resolve(GROWER);
    String windows = "\uFEFF" + Files.readString(file).replace("\n", "\r\n");
    Files.writeString(file, windows);
    LeastCostReport report = asked(Map.of());
    assertEquals(List.of(GROWER), report.apply(copy));
    assertTrue(report.next(true).get(0).contains("tell who reviewed it anew"));
    String written = Files.readString(file, StandardCharsets.UTF_8);
    assertTrue(written.startsWith("\uFEFF") && !written.replace("\r\n", "").contains("\n"));
    assertFalse(written.equals(windows));
    assertEquals(windows.lines().count(), written.lines().count());
    LeastCostReport second = asked(Map.of());
    assertEquals(Standing.CHEAPEST, only(second).standing(), second.shown());
    assertEquals(List.of(), second.apply(copy));
    assertEquals(List.of(), second.next(true));
    assertEquals(written, Files.readString(file, StandardCharsets.UTF_8));
  }

  @Test
  void filesAreWrittenAsOtherGoalsWriteTheirs() throws IOException {
    Path to = copy.resolve("target/least-cost");
    LeastCostReport report = asked(Map.of());
    report.write(to);
    for (String name : List.of("txt", "md", "html", "json")) {
      assertTrue(Files.readString(to.resolve("least-cost." + name)).contains("CG-36"), name);
    }
    assertEquals(List.of(), LeastCostSchema.told(report.json()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "free | soybean-mael-48 | soybean-mael-48 is no ingredient of this folder; did you mean",
        "free | VIT-WW | VIT-WW is a premix, and premixes change only on request: edit the premix",
        "free | krill-meal | krill-meal is no line of CG-36; offer it with -Dpellucid.try=krill",
        "try | maize | maize is in CG-36 already; let its share move with -Dpellucid.free=maize",
        "without | squid-meal | squid-meal is no line of CG-36",
        "move | 3 | pellucid.move is 3; write above 0 and up to 100 points, as in",
        "move | -3 points | pellucid.move is -3 points; write above 0 and up to 100 points",
        "worth | 1 | pellucid.worth is 1; write money for a tonne in the bags, as in",
        "worth | 1 USD/t | pellucid.worth is 1 USD/t; write money for a tonne in the bags",
        "keep | price | pellucid.keep is price; write label, or leave it out",
        "margin | in 120 % of batches | pellucid.margin is in 120 % of batches; write from 50",
        "stock | perhaps | pellucid.stock is perhaps; write yes or no",
        "prices | old | pellucid.prices is old; write fresh, or any to take old ones as they are",
        "sweep | fish-meal-65 1.2 to 2.4 | pellucid.sweep: fish-meal-65 1.2 to 2.4 has no unit",
        "sweep | fish-meal-65 2.4 to 1.2 EUR/kg | goes down; write the smaller figure first: fish",
        "sweep | fish-meel 1 to 2 EUR/kg | fish-meel is neither an ingredient nor a nutrient",
        "sweep | fish-meal-65 -1 to 2 EUR/kg | has a figure below zero; write both from 0 on",
        "sweep | fish-meal-65 1 to 2 % | % is no price in EUR; write as in",
        "sweep | crude-protein 33 to 36 EUR/kg | EUR/kg measures a price, and crude-protein is",
        "sweep | fish-meal-65 | does not name something, two figures and a unit; write",
        "sweep | starch 1 to 2 % | no limit on starch is in force in CG-36, so none can be swept",
      })
  void aSlipInAParameterIsOneSentence(String name, String value, String told) throws IOException {
    Map<String, String> before = texts();
    LeastCostReport report = asked(Map.of(name, value));
    String problem = report.problem().orElse("");
    assertTrue(problem.contains(told), problem);
    assertEquals(1, problem.lines().count(), problem);
    assertEquals(List.of(), report.apply(copy));
    assertEquals(before, texts());
  }

  @Test
  void anUnknownRecipeIsTold() throws IOException {
    LeastCostReport report = asked("CG-63", Map.of());
    String problem = report.problem().orElse("");
    assertTrue(problem.startsWith("CG-63 is not the code of a recipe of this folder"), problem);
    assertTrue(problem.contains("did you mean"), problem);
  }

  @Test
  void aSweepIsOfOneRecipe() throws IOException {
    String problem =
        asked("", Map.of("sweep", "fish-meal-65 1.2 to 2.4 EUR/kg")).problem().orElse("");
    assertTrue(problem.startsWith("a sweep is of one recipe; say which with"), problem);
  }

  @Test
  void anUnreadableLineStandsInTheWayOfItsRecipeAlone() throws IOException {
    folder.with(GROWER, FISH, FISH.replace("%  ", "pct"));
    assertHindered("catfish/CG-36.recipe:13:");
    assertTrue(asked("CG-40", Map.of()).told().get(0).advice().standing() == Standing.CHEAPER);
  }

  @Test
  void anUnknownNameIsTold() throws IOException {
    folder.with(GROWER, "  maize        ", "  maise        ");
    assertHindered("catfish/CG-36.recipe:15:3: ");
  }

  @Test
  void anIngredientWithoutAPriceIsTold() throws IOException {
    folder.with("prices/2026-08.yaml", "  maize: ", "  wheat-gluten-x: ");
    folder.with("prices/2026-08.yaml", "  wheat-gluten-x: 0.23 EUR/kg\n", "");
    folder.with("prices/2026-11.yaml", "  maize: 0.24 EUR/kg\n", "");
    assertHindered("catfish/CG-36.recipe:15:3: maize has no price on 2026-11-25");
  }

  @Test
  void aNegativePriceIsForCheckToTellFirst() throws IOException {
    folder.with("prices/2026-11.yaml", "maize: 0.24", "maize: -0.24");
    assertHindered("check must be clean of this first: prices/2026-11.yaml:");
  }

  @Test
  void anIngredientWithoutMoistureIsTold() throws IOException {
    Path maize = copy.resolve("ingredients/maize.yaml");
    String text = Files.readString(maize);
    Files.writeString(maize, text.replaceAll("(?m)^ *moisture:.*\n", ""));
    assertHindered("ingredients/maize.yaml:");
  }

  @Test
  void whatCannotReachTheWholeIsTold() throws IOException {
    folder.with(GROWER, "rest         within 10 to 30 %", "21.18 %      within 22 to 22.1 %");
    folder.with(GROWER, "44.00 %      within 30 to 48 %", "44.00 %      within 55 to 60 %");
    folder.with(GROWER, FISH, FISH.replace("10 to 20", "15 to 20"));
    assertHindered("and never 100 %; widen a within");
  }

  @Test
  void whereAllIsFixedItSaysHowToFreeALine() throws IOException {
    folder.with(GROWER, FISH, FISH.replace("      within 10 to 20 %", ""));
    folder.with(GROWER, "44.00 %      within 30 to 48 %", "44.00 %");
    folder.with(GROWER, "14.00 %      within 10 to 25 %", "14.00 %");
    folder.with(GROWER, "rest         within 10 to 30 %", "21.18 %");
    assertHindered("write within 2 to 10 % behind the share");
    assertEquals(
        Standing.CHEAPER,
        only(asked(Map.of("free", "soybean-meal-48, wheat-middlings, fish-meal-65"))).standing());
  }

  @Test
  void anOldPriceIsTakenOnlyWhereAPersonAsksForIt() throws IOException {
    LocalDate later = LocalDate.of(2027, 2, 1);
    Advice advice =
        OwnFolder.leastCost(copy, later, "CG-36", Map.of(), PrintedPaths.BELOW_FOLDER)
            .told()
            .get(0)
            .advice();
    assertEquals(Standing.NOT_ASKED, advice.standing());
    assertTrue(advice.why().contains("-Dpellucid.prices=any"), advice.why());
    LeastCostReport any =
        OwnFolder.leastCost(
            copy, later, "CG-36", Map.of("prices", "any"), PrintedPaths.BELOW_FOLDER);
    assertEquals(Standing.CHEAPER, only(any).standing());
    assertTrue(any.shown().lines().skip(2).findFirst().orElse("").startsWith("Prices: "));
  }

  @Test
  void pricesOfALaterDayAreSaidNotToCountYet() throws IOException {
    folder.with("prices/2026-11.yaml", "from: 2026-11-01", "from: 2026-12-01");
    Advice old = only(asked(Map.of()));
    assertEquals(Standing.NOT_ASKED, old.standing());
    String yet = "those from 2026-12-01 do not count yet";
    assertTrue(old.why().contains(yet), old.why());
    LeastCostReport any = asked(Map.of("prices", "any"));
    assertTrue(any.shown().replaceAll("\\s+", " ").contains(yet), any.shown());
    assertTrue(any.json().contains("\"laterPricesFrom\": \"2026-12-01\""), any.json());
  }

  @Test
  void aBrokenLimitIsNoHindrance() throws IOException {
    folder.with(GROWER, "44.00 %      within", "40.00 %      within");
    assertEquals(Standing.KEEPS_AGAIN, only(asked(Map.of())).standing());
  }

  private void assertHindered(String told) throws IOException {
    Map<String, String> before = texts();
    LeastCostReport report = asked(Map.of());
    Advice advice = only(report);
    assertEquals(Standing.NOT_ASKED, advice.standing(), report.shown());
    assertTrue(advice.why().contains(told), advice.why());
    assertEquals(List.of(), report.apply(copy));
    assertEquals(before, texts());
  }

  private LeastCostReport asked(Map<String, String> wishes) throws IOException {
    return asked("CG-36", wishes);
  }

  private LeastCostReport asked(String recipe, Map<String, String> wishes) throws IOException {
    return OwnFolder.leastCost(copy, DAY, recipe, wishes, PrintedPaths.BELOW_FOLDER);
  }

  private static Advice only(LeastCostReport report) {
    assertEquals("", report.problem().orElse(""));
    assertEquals(1, report.told().size());
    return report.told().get(0).advice();
  }

  private Map<String, String> texts() throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.walk(copy)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        texts.put(copy.relativize(file).toString(), Files.readString(file));
      }
    }
    return texts;
  }
}
