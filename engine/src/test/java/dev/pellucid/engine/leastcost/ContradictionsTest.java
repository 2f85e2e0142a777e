package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.leastcost.Advice.Standing;
import dev.pellucid.engine.leastcost.Contradiction.Loosening;
import dev.pellucid.engine.leastcost.Contradiction.Member;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is said of a recipe of the example that cannot be met, and that what is offered does. */
class ContradictionsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
  private static final String RECIPE = "catfish/CG-36.recipe";
  private static final String NEEDS = "limits/catfish-grower.limits";
  private static final String LAW = "law/eu-other-fish.limits";

  private final Texts example;
  private final Map<String, String> texts = new HashMap<>();

  ContradictionsTest() throws IOException {
    this.example = Texts.at(Example.whole()).held();
  }

  private ContradictionsTest with(String path, String from, String to) {
    String text = text(path);
    assertTrue(text.contains(from), () -> path + " has no " + from);
    texts.put(path, text.replace(from, to));
    return this;
  }

  private String text(String path) {
    String changed = texts.get(path);
    return changed != null ? changed : example.read(path, new ArrayList<>()).orElseThrow().text();
  }

  private Advice asked(Wishes wishes) {
    Shared shared = Shared.of(ReadFolder.of(example.over(texts)), Days.on(DAY));
    RuleContext recipe = Streamed.judged(shared, RECIPE).recipe().orElseThrow();
    return new Advising(Solver.standard(), new FeedComputer(shared.tables()), List.of())
        .of(recipe, wishes);
  }

  private Contradiction unmet() {
    return unmet(Wishes.NONE);
  }

  private Contradiction unmet(Wishes wishes) {
    Advice advice = asked(wishes);
    assertEquals(Standing.UNMET, advice.standing(), advice.why());
    return advice.conflict().orElseThrow();
  }

  private static List<String> words(Contradiction told) {
    return told.members().stream().map(Member::words).toList();
  }

  private static List<String> loosenings(Contradiction told) {
    return told.loosenings().stream().map(Loosening::words).toList();
  }

  @Test
  void aFigureThatNoIngredientReachesStandsAlone() {
    Contradiction told = with(RECIPE, "min 34 %     in", "min 60 %     in").unmet();
    assertEquals(
        List.of("crude-protein at least 60 % in 95 % of batches (the recipe itself)"), words(told));
    assertEquals(RECIPE, told.members().get(0).place().orElseThrow().file().path());
    Contradiction.Reach reach = told.reach().orElseThrow();
    assertEquals("crude-protein", reach.name());
    assertEquals(60, reach.asked(), 1e-9);
    assertEquals(36.52, reach.most(), 0.01);
    assertEquals(
        List.of("ask for crude-protein at least 36.4 % in place of 60 %"), loosenings(told));
    with(RECIPE, "min 60 %     in", "min 36.4 %   in");
    assertNotEquals(Standing.UNMET, asked(Wishes.NONE).standing());
  }

  @Test
  void linesThatDoNotReachAllAreNamedWithThoseThatStay() {
    Contradiction told =
        with(RECIPE, "within 10 to 20", "within 10 to 15")
            .with(RECIPE, "within 30 to 48", "within 30 to 34")
            .with(RECIPE, "within 10 to 25", "within 10 to 14")
            .with(RECIPE, "within 10 to 30", "within 10 to 26")
            .unmet();
    assertEquals(
        List.of(
            "the lines that stay as they are make 5.82 %, so that the others must make 94.18 %",
            "fish-meal-65 at most 15 % (its within)",
            "soybean-meal-48 at most 34 % (its within)",
            "maize at most 14 % (its within)",
            "wheat-middlings at most 26 % (its within)"),
        words(told));
    List<String> offered = loosenings(told);
    assertTrue(
        offered.contains("widen the within of soybean-meal-48 up to 41 % in place of 34 %"),
        offered::toString);
    with(RECIPE, "within 30 to 34", "within 30 to 41");
    assertNotEquals(Standing.UNMET, asked(Wishes.NONE).standing());
  }

  @Test
  void limitsThatExcludeEachOtherAreBothNamed() {
    Contradiction told =
        with(
                RECIPE,
                "crude-fibre                  max 6 %",
                "starch                       min 28 %")
            .with(RECIPE, "wheat-middlings  max 40 %", "wheat-middlings  max 33 %")
            .unmet();
    assertTrue(
        words(told).contains("starch at least 28 % (the recipe itself)"), words(told)::toString);
    List<String> offered = loosenings(told);
    assertFalse(offered.isEmpty());
    Matcher starch =
        Pattern.compile("ask for starch at least ([0-9.]+ %) in place of 28 %")
            .matcher(String.join("\n", offered));
    assertTrue(starch.find(), offered::toString);
    with(RECIPE, "min 28 %", "min " + starch.group(1));
    assertNotEquals(Standing.UNMET, asked(Wishes.NONE).standing());
  }

  @Test
  void lawAgainstANeedIsNamedAndNotOffered() {
    with(
        LAW,
        "selenium                     max 0.5 mg/kg",
        "selenium                     max 0.27 mg/kg");
    Advice advice = asked(Wishes.NONE);
    Contradiction told = advice.conflict().orElseThrow();
    assertTrue(
        words(told).contains("selenium at most 0.27 mg/kg at 12 % moisture (law, eu-other-fish)"),
        words(told)::toString);
    assertTrue(words(told).stream().anyMatch(it -> it.contains("need of the fish")));
    assertEquals(List.of(), loosenings(told));
    assertTrue(advice.why().endsWith("take another lot, or do not make it"), advice::why);
  }

  @Test
  void anIngredientThatWouldMakeItPossibleIsNamed() {
    with(NEEDS, "digestible-protein           min 29 %", "digestible-protein           min 38 %");
    String why = asked(Wishes.NONE).why();
    Matcher named = Pattern.compile("\\(([a-z0-9-]+).* would make it possible\\)").matcher(why);
    assertTrue(named.find(), why);
    assertNotEquals(
        Standing.UNMET, asked(Wishes.NONE.trying(named.group(1))).standing(), named.group(1));
  }

  @Test
  void aMoveThatIsTooSmallSaysHowLargeItMustBe() {
    with(RECIPE, "min 34 %     in", "min 36 %     in");
    Contradiction told = unmet(Wishes.NONE.moving(OptionalDouble.of(1)));
    assertTrue(
        words(told).contains("no more than 1 point moved (-Dpellucid.move)"),
        words(told)::toString);
    Matcher move =
        Pattern.compile("move up to ([0-9.]+) points in place of 1 \\(-Dpellucid.move\\)")
            .matcher(loosenings(told).get(0));
    assertTrue(move.matches(), loosenings(told)::toString);
    double points = Double.parseDouble(move.group(1));
    assertNotEquals(
        Standing.UNMET, asked(Wishes.NONE.moving(OptionalDouble.of(points))).standing());
    assertEquals(
        Standing.UNMET, asked(Wishes.NONE.moving(OptionalDouble.of(points - 0.3))).standing());
  }
}
