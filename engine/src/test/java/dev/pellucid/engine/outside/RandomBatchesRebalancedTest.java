package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.RebalanceReport;
import dev.pellucid.engine.rebalance.Rebalancing;
import dev.pellucid.engine.rebalance.Rebalancing.LineMove;
import dev.pellucid.engine.rebalance.Rebalancing.Standing;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Planned batches of the example with lots that are moister, or hold less or more protein, than
 * their ingredients. What is offered is kept by check once it is written, lies within the bounds of
 * its lines, and moves no more than a search of its own finds ({@link BatchByHand}); where nothing
 * is broken nothing is said. With {@code -Dpellucid.rebalances=200} so many, with {@code
 * -Dpellucid.rebalancesSeed=7} others.
 */
class RandomBatchesRebalancedTest {
  private static final LocalDate DAY = LocalDate.of(2026, 12, 2);
  private static final int COUNT = Integer.getInteger("pellucid.rebalances", 8);
  private static final long SEED = Long.getLong("pellucid.rebalancesSeed", 18);

  /** A hundredth of a point for each line that moves, and what the scales round off. */
  private static final double ROUNDED = 0.12;

  /** What a scale rounds off, as a part of a bound. */
  private static final double ON_SCALES = 0.001;

  @TempDir Path copy;

  /** A batch as it was drawn. */
  private record Drawn(String number, ResolvedRecipe recipe, Path file) {}

  @Test
  @DisplayName("a batch moves no more points than a linear program written apart from it finds")
  void movesTheFewestPointsThatCheckKeeps() throws IOException {
    Random random = new Random(SEED);
    // Without lots and records of its own, so that the store has nothing to add.
    SlippedFolder folder = new SlippedFolder(copy);
    Files.createDirectories(copy.resolve("lots"));
    Files.createDirectories(copy.resolve("batches"));
    assertEquals(List.of(), folder.codes(), folder.text());
    Map<Standing, Integer> standings = new EnumMap<>(Standing.class);
    List<Checked> recipes = recipes();
    for (int i = 0; i < COUNT; i++) {
      Checked recipe = recipes.get(random.nextInt(recipes.size()));
      Drawn drawn = drawn(recipe, random);
      RebalanceReport report = OwnFolder.rebalance(copy, DAY, drawn.number());
      String lots = Files.readString(copy.resolve("lots/drawn.yaml"));
      Rebalancing told =
          report.told().orElseThrow(() -> new AssertionError(report.problem() + "\n" + lots));
      standings.merge(told.standing(), 1, Integer::sum);
      String about = i + ": " + report.text() + "\n" + lots;
      switch (told.standing()) {
        case KEPT -> assertSilent(drawn, report, about);
        case MOVED -> assertMoved(drawn, report, told, about);
        case IMPOSSIBLE -> assertEquals(OptionalDouble.empty(), byHand(drawn).fewest(), about);
        // So near to what its lines can reach that the scales decide.
        case NOT_PROVEN ->
            assertEquals(OptionalDouble.empty(), byHand(drawn).fewest(ON_SCALES), about);
        case NO_GROUND, RECIPE_KEEPS -> throw new AssertionError(about);
      }
      Files.delete(drawn.file());
    }
    System.out.println("batches re-balanced: " + standings);
  }

  private BatchByHand byHand(Drawn drawn) throws IOException {
    return new BatchByHand(Texts.at(copy), DAY, drawn.number());
  }

  private void assertSilent(Drawn drawn, RebalanceReport report, String about) throws IOException {
    assertEquals(Optional.empty(), report.changed(), about);
    assertEquals(List.of(), graveOf(drawn), about);
  }

  private void assertMoved(Drawn drawn, RebalanceReport report, Rebalancing told, String about)
      throws IOException {
    assertTrue(!graveOf(drawn).isEmpty(), about);
    OptionalDouble fewest = byHand(drawn).fewest();
    assertTrue(fewest.isPresent(), "nothing is found by hand\n" + about);
    assertTrue(
        told.points() <= fewest.getAsDouble() + ROUNDED,
        fewest.getAsDouble() + " points would do\n" + about);
    for (LineMove line : told.lines()) {
      assertTrue(isWithin(drawn.recipe(), line), line + "\n" + about);
    }
    report.apply(copy);
    assertEquals(List.of(), graveOf(drawn), about);
  }

  private static boolean isWithin(ResolvedRecipe recipe, LineMove move) {
    Line line =
        recipe.lines().stream()
            .filter(one -> one.material().name().equals(move.name()))
            .findFirst()
            .orElseThrow();
    return line.allows(move.batch() / 100);
  }

  /** What check says of the record. */
  private List<String> graveOf(Drawn drawn) throws IOException {
    List<String> grave = new ArrayList<>();
    for (Finding one : OwnFolder.check(copy, DAY).findings()) {
      if (one.severity() != Severity.NOTE && one.span().file().path().contains(drawn.number())) {
        grave.add(one.headline());
      }
    }
    return grave;
  }

  /** Those that are sound and tell which lines may move. */
  private List<Checked> recipes() throws IOException {
    Shared shared = Shared.of(ReadFolder.of(Texts.at(copy)), Days.on(DAY));
    List<Checked> sound = new ArrayList<>();
    for (String code : shared.trees().recipes()) {
      Checked recipe = Streamed.judged(shared, shared.trees().path(code).orElseThrow());
      boolean kept =
          recipe.recipe().orElseThrow().limits().stream().allMatch(it -> it.state().isKept());
      if (recipe.isSound() && kept && movable(recipe).size() > 2) {
        sound.add(recipe);
      }
    }
    assertTrue(sound.size() > 5, "too few recipes");
    return sound;
  }

  private static List<Line> movable(Checked recipe) {
    return recipe.recipe().orElseThrow().recipe().lines().stream()
        .filter(line -> line.material().single().isPresent() && line.isTaken())
        .filter(line -> line.rest() || line.within().isPresent())
        .toList();
  }

  private Drawn drawn(Checked recipe, Random random) throws IOException {
    String number = recipe.code() + "-2026-12-03-1";
    List<Line> lines = new ArrayList<>(movable(recipe));
    Collections.shuffle(lines, random);
    StringBuilder lots = new StringBuilder("lots:\n");
    StringBuilder record = new StringBuilder();
    double kg = recipe.recipe().orElseThrow().recipe().batch().map(it -> it.kg()).orElse(100.0);
    record.append("size: ").append(kg).append(" kg\nweighed:\n");
    int count = 2 + random.nextInt(2);
    for (Line line : lines.subList(0, Math.min(count, lines.size()))) {
      int lotsOfLine = random.nextInt(4) == 0 ? 2 : 1;
      for (int i = 1; i <= lotsOfLine; i++) {
        String lot = "Z-" + line.index() + "-" + i;
        Ingredient one = line.material().single().orElseThrow().ingredient();
        lots.append(lot(lot, one, random));
        record.append("  - {line: " + one.name() + ", lot: " + lot + "}\n");
      }
    }
    Files.writeString(copy.resolve("lots/drawn.yaml"), lots);
    Path file = copy.resolve("batches/" + number + ".yaml");
    Files.writeString(file, record);
    return new Drawn(number, recipe.recipe().orElseThrow().recipe(), file);
  }

  private static String lot(String number, Ingredient one, Random random) {
    double moisture = told(one, "moisture");
    double most = one.maxMoisture().orElse(1) - 0.003;
    double moist = Math.min(most, moisture * (0.9 + 0.35 * random.nextDouble()));
    double protein = told(one, "crude-protein") * (0.78 + 0.24 * random.nextDouble());
    String text =
        """
          - number: %s
            ingredient: %s
            received: 2026-11-20
            best-before: 2027-11-20
            quantity: 9000 kg
            inspection: passed
            supplier: Harbour Meals
            supplier-lot: "%s"
            contents:
              - source: scenario
        """
            .formatted(number, one.name(), number);
    text += line("moisture", moist);
    return protein > 0.02 ? text + line("crude-protein", protein) : text;
  }

  private static String line(String nutrient, double part) {
    return String.format(Locale.ROOT, "        %s: %.2f %%%n", nutrient, part * 100);
  }

  private static double told(Ingredient one, String nutrient) {
    return one.telling(nutrient, Optional.empty())
        .map(block -> block.byNutrient().get(nutrient))
        .map(Content::low)
        .orElse(0.0);
  }
}
