package dev.pellucid.engine.arithmetic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.arithmetic.ArithmeticPage.Section;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page on the arithmetic: what each example prints comes out of the formula by plain
 * arithmetic, and out of the engine, to the last digit.
 */
class ArithmeticPageTest {
  private static final Map<String, Worked> CHECKS = checks();

  @TempDir Path root;

  private static Map<String, Worked> checks() {
    Map<String, Worked> all = new TreeMap<>();
    for (Map<String, Worked> some :
        List.of(
            MassExamples.all(),
            ContentExamples.all(),
            EndExamples.all(),
            PremixExamples.all(),
            SpreadExamples.all(),
            MoneyExamples.all(),
            FloorExamples.all(),
            QualityExamples.all(),
            RecordExamples.all(),
            TrendExamples.all())) {
      for (Map.Entry<String, Worked> one : some.entrySet()) {
        if (all.put(one.getKey(), one.getValue()) != null) {
          throw new AssertionError("two checks of " + one.getKey());
        }
      }
    }
    return all;
  }

  private static List<Example> examples() throws IOException {
    return ArithmeticPage.sections().stream().flatMap(it -> it.examples().stream()).toList();
  }

  private static Worked check(Example example) {
    Worked check = CHECKS.get(example.id());
    if (check == null) {
      throw new AssertionError("nothing checks the example " + example.id());
    }
    return check;
  }

  @Test
  void eachExampleHasACheckAndEachCheckAnExample() throws IOException {
    Set<String> ids = new TreeSet<>();
    for (Example example : examples()) {
      assertTrue(ids.add(example.id()), "twice on the page: " + example.id());
    }
    assertEquals(ids, CHECKS.keySet());
    assertTrue(ids.size() >= 50, "examples found: " + ids.size());
  }

  @Test
  void eachSectionHasAFormulaItsSourceAndAnExample() throws IOException {
    for (Section section : ArithmeticPage.sections()) {
      assertFalse(section.formulas().isEmpty(), "no formula: " + section.title());
      assertTrue(
          section.lines().stream().anyMatch(line -> line.startsWith("Source: ")),
          "no source: " + section.title());
      assertFalse(section.examples().isEmpty(), "no example: " + section.title());
      for (Example example : section.examples()) {
        assertFalse(example.given().isEmpty(), "begins with nothing: " + example.id());
        assertFalse(example.gives().isEmpty(), "gives nothing: " + example.id());
      }
    }
  }

  /** A table that is not read as an example would not be checked. */
  @Test
  void noTableOfThePageIsAnythingElse() throws IOException {
    long tables =
        Files.readAllLines(ArithmeticPage.PAGE).stream().filter("|---|---|"::equals).count();
    long separators =
        Files.readAllLines(ArithmeticPage.PAGE).stream().filter(it -> it.startsWith("|-")).count();
    assertEquals(separators, tables, "tables of another shape");
    assertEquals(examples().size(), tables);
  }

  @TestFactory
  Stream<DynamicTest> theFormulaGivesWhatIsPrinted() throws IOException {
    return examples().stream()
        .map(
            example ->
                DynamicTest.dynamicTest(
                    example.id(),
                    () ->
                        assertEquals(
                            example.printed(),
                            example.printed(check(example).byHand().apply(new Given(example))))));
  }

  @TestFactory
  Stream<DynamicTest> theEngineGivesWhatIsPrinted() throws IOException {
    return examples().stream()
        .map(
            example ->
                DynamicTest.dynamicTest(
                    example.id(),
                    () -> assertEquals(example.printed(), example.printed(engine(example)))));
  }

  /** What neither way asks for is on the page for nothing; what is fixed, the engine knows. */
  @TestFactory
  Stream<DynamicTest> eachFigureIsAskedForByBoth() throws IOException {
    return examples().stream()
        .map(example -> DynamicTest.dynamicTest(example.id(), () -> assertAsked(example)));
  }

  private void assertAsked(Example example) throws IOException {
    Given byHand = new Given(example);
    assertFalse(check(example).byHand().apply(byHand).isEmpty());
    assertEquals(new TreeSet<>(example.given().keySet()), byHand.asked());
    Given byEngine = new Given(example);
    check(example).byEngine().of(byEngine, Files.createTempDirectory(root, example.id()));
    Set<String> open = new TreeSet<>(example.given().keySet());
    open.removeIf(name -> name.endsWith(" (fixed)"));
    assertEquals(open, byEngine.asked());
  }

  /**
   * A tenth more of any figure that an example begins with, or where that is rounded away three
   * times as much, and what it prints is wrong.
   */
  @TestFactory
  Stream<DynamicTest> noFigureCanBeChangedUnseen() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Example example : examples()) {
      for (Map.Entry<String, Figure> one : example.given().entrySet()) {
        for (int i = 0; i < one.getValue().all().size(); i++) {
          Example tenth = example.with(one.getKey(), one.getValue().raised(i, "1.1"));
          Example thrice = example.with(one.getKey(), one.getValue().raised(i, "3"));
          tests.add(
              DynamicTest.dynamicTest(
                  example.id() + ", " + one.getKey() + " " + i,
                  () -> assertFalse(holds(tenth) && holds(thrice), "unseen: " + tenth.given())));
        }
      }
    }
    assertTrue(tests.size() > 200, "figures changed: " + tests.size());
    return tests.stream();
  }

  /** Whether both ways still give what is printed; what cannot be worked out does not. */
  private boolean holds(Example example) throws IOException {
    try {
      Map<String, Double> byHand = check(example).byHand().apply(new Given(example));
      return example.printed().equals(example.printed(byHand))
          && example.printed().equals(example.printed(engine(example)));
    } catch (RuntimeException | AssertionError stopped) {
      return false;
    }
  }

  private Map<String, Double> engine(Example example) throws IOException {
    Path empty = Files.createTempDirectory(root, example.id());
    return check(example).byEngine().of(new Given(example), empty);
  }

  @Test
  void whatIsPrintedIsRoundedAsPrinted() {
    assertEquals("24.58 %", new Figure("24.58 %").printed(29.0 / 118));
    assertEquals("0.5 kg", new Figure("0.4 kg").printed(0.45));
    assertEquals("1.0 EUR/kg", new Figure("1.1 EUR/kg").printed(1));
    assertEquals(Set.of(0.4, 0.02), new HashSet<>(new Figure("40 ± 2 %").all()));
    assertEquals("40 ± 2.2 %", new Figure("40 ± 2 %").raised(1, "1.1").text());
  }
}
