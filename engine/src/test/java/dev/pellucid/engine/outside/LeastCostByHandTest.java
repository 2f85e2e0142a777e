package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Advising;
import dev.pellucid.engine.leastcost.Held;
import dev.pellucid.engine.leastcost.Posed;
import dev.pellucid.engine.leastcost.Wishes;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Least cost against problems that are worked by hand in the words of each test. Contents and
 * prices are invented, the sums are not.
 */
class LeastCostByHandTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final double EXACT = 1e-9;

  /** The mill of the folder loses 1.5 % of what is finished on the way to the bag. */
  private static final double BAGGED = 0.985;

  @TempDir private Path root;

  /** 44 a + 9 (1 - a) = 30 at a = 0.6; it costs 0.6 * 0.50 + 0.4 * 0.20. */
  @Test
  @DisplayName("two meals and a minimum of protein: 60 % of the dear one, 0.38 a kg")
  void twoMeals() throws IOException {
    Answer.Found found =
        found(
            folder()
                .ingredient("pea-meal", "moisture: 10 %, crude-protein: 44 %")
                .ingredient("oat-meal", "moisture: 10 %, crude-protein: 9 %")
                .with("prices/now.yaml", prices("pea-meal: 0.50", "oat-meal: 0.20"))
                .recipe(
                    """
                    mix
                      pea-meal 70.00 % within 0 to 100 %
                      oat-meal rest
                    limits
                      crude-protein min 30 %
                    """));
    assertEquals(60, found.shares()[0], EXACT);
    assertEquals(0.38 / BAGGED, found.feed().costPerKg(), EXACT);
  }

  /** (3.0 a + 1.6 b) / (50 a + 40 b) = 5 % where 0.5 a = 0.4 b, so a : b is 4 : 5. */
  @Test
  @DisplayName("a ratio: lysine at least 5 % of the protein takes four parts to five")
  void ratio() throws IOException {
    Answer.Found found =
        found(
            folder()
                .ingredient("pea-meal", "moisture: 10 %, crude-protein: 50 %, lysine: 3.0 %")
                .ingredient("oat-meal", "moisture: 10 %, crude-protein: 40 %, lysine: 1.6 %")
                .with("prices/now.yaml", prices("pea-meal: 0.60", "oat-meal: 0.40"))
                .recipe(
                    """
                    mix
                      pea-meal 70.00 % within 0 to 100 %
                      oat-meal rest
                    limits
                      lysine : crude-protein min 5 %
                    """));
    assertEquals(400.0 / 9, found.shares()[0], EXACT);
    assertEquals(((4 * 0.60 + 5 * 0.40) / 9) / BAGGED, found.feed().costPerKg(), EXACT);
  }

  /**
   * Protein over dry matter is (0.50 a + 0.08 b) / (0.90 a + 0.86 b), which is 30 % where 0.23 a =
   * 0.178 b. Dried to 8 % the feed weighs its dry matter over 0.92.
   */
  @Test
  @DisplayName("a limit on dry matter, of meals of two moistures that are dried to a third")
  void dryMatter() throws IOException {
    Answer.Found found =
        found(
            folder()
                .ingredient("pea-meal", "moisture: 10 %, crude-protein: 50 %")
                .ingredient("oat-meal", "moisture: 14 %, crude-protein: 8 %")
                .with("prices/now.yaml", prices("pea-meal: 0.60", "oat-meal: 0.20"))
                .recipe(
                    """
                    mix
                      pea-meal 70.00 % within 0 to 100 %
                      oat-meal rest
                    limits
                      crude-protein min 30 % on dry matter
                    process
                      add-water on-mix 20 %
                      extrude temperature 40 °C
                      dry temperature 55 °C
                      dry moisture 8 %
                    """));
    double a = 17.8 / (17.8 + 23) * 100;
    double b = 100 - a;
    assertEquals(a, found.shares()[0], EXACT);
    double finished = (0.90 * a + 0.86 * b) / 0.92;
    assertEquals(((0.60 * a + 0.20 * b) / finished) / BAGGED, found.feed().costPerKg(), EXACT);
  }

  /**
   * A wet paste is cheaper on the scale, 0.15 for 0.30, and dearer in the bag, 0.3375 for 0.2842.
   */
  @Test
  @DisplayName("what counts is a kg in the bag: a paste of 60 % water loses against a dry meal")
  void inTheBag() throws IOException {
    Answer.Found found =
        found(
            folder()
                .ingredient("paste", "moisture: 60 %, crude-protein: 15 %")
                .ingredient("oat-meal", "moisture: 5 %, crude-protein: 12 %")
                .with("prices/now.yaml", prices("paste: 0.15", "oat-meal: 0.30"))
                .recipe(
                    """
                    mix
                      paste 70.00 % within 0 to 100 %
                      oat-meal rest
                    limits
                      crude-protein max 60 %
                    process
                      add-water on-mix 20 %
                      extrude temperature 40 °C
                      dry temperature 55 °C
                      dry moisture 10 %
                    """));
    assertEquals(0, found.shares()[0], EXACT);
    assertEquals((0.30 * 0.90 / 0.95) / BAGGED, found.feed().costPerKg(), EXACT);
  }

  /**
   * With a spread of 2 points, 95 of 100 batches keep 30 % where 44 a + 9 (1 - a) - 1.6448536 * 2 a
   * is 30; the quantile of the normal distribution is that of the NIST handbook, 1.3.6.7.1.
   */
  @Test
  @DisplayName("a minimum in 95 % of batches takes 66.2 % where the mean alone takes 60 %")
  void confidence() throws IOException {
    Answer.Found found =
        found(
            folder()
                .ingredient("pea-meal", "moisture: 10 %, crude-protein: 44 ± 2 %")
                .ingredient("oat-meal", "moisture: 10 %, crude-protein: 9 ± 0 %")
                .with("prices/now.yaml", prices("pea-meal: 0.50", "oat-meal: 0.20"))
                .recipe(
                    """
                    mix
                      pea-meal 70.00 % within 0 to 100 %
                      oat-meal rest
                    limits
                      crude-protein min 30 % in 95 % of batches
                    """));
    assertEquals(100 * 21 / (35 - 2 * 1.6448536269514722), found.shares()[0], 1e-7);
  }

  /**
   * What is lost on the way brings nothing and costs money: 0.50 x + 0.0025 (1 - x) = 0.01 as if
   * there were no overage, and each kg of it is paid 1.1 times.
   */
  @Test
  @DisplayName("overage is paid and does not count for a minimum")
  void overage() throws IOException {
    Answer.Found found =
        found(
            folder()
                .ingredient("lysine-source", "moisture: 10 %, lysine: 50 %, crude-protein: 60 %")
                .ingredient("oat-meal", "moisture: 10 %, lysine: 0.25 %, crude-protein: 9 %")
                .with("prices/now.yaml", prices("lysine-source: 1.00", "oat-meal: 0.20"))
                .recipe(
                    """
                      batch 100 kg weighed
                    mix
                      lysine-source 3.00 % within 0 to 10 %
                      oat-meal rest
                    overage
                      lysine-source 10 % for handling
                    limits
                      lysine min 1 %
                    """));
    double x = 0.0075 / 0.4975;
    assertEquals(100 * x, found.shares()[0], EXACT);
    assertEquals((1.10 * x + 0.20 * (1 - x)) / BAGGED, found.feed().costPerKg(), EXACT);
  }

  /** 66.66... % is written as 66.67 %, the next above, since 66.66 % would not keep the limit. */
  @Test
  @DisplayName("a share is written so that the limit is still kept")
  void rounded() throws IOException {
    Advice advice =
        advice(
            folder()
                .ingredient("pea-meal", "moisture: 10 %, crude-protein: 40 %")
                .ingredient("oat-meal", "moisture: 10 %, crude-protein: 10 %")
                .with("prices/now.yaml", prices("pea-meal: 0.50", "oat-meal: 0.20"))
                .recipe(
                    """
                    mix
                      pea-meal     70.00 %     within 0 to 100 %  # peas
                      oat-meal rest
                    limits
                      crude-protein min 30 %
                    """));
    assertEquals(
        """
        recipe A-1
        mix
          pea-meal     66.67 %     within 0 to 100 %  # peas
          oat-meal rest
        limits
          crude-protein min 30 %
        """,
        advice.change().after());
  }

  private SmallFolder folder() throws IOException {
    return new SmallFolder(root);
  }

  private static String prices(String... each) {
    StringBuilder text = new StringBuilder("from: 2026-11-01\nsource: workshop\nprices:\n");
    for (String one : each) {
      text.append("  ").append(one).append(" EUR/kg\n");
    }
    return text.toString();
  }

  private Answer.Found found(SmallFolder folder) throws IOException {
    Shared shared = shared();
    Posed posed =
        Posed.of(
                recipe(shared, folder),
                Wishes.NONE,
                new FeedComputer(shared.tables()),
                new Held(new FeedComputer(shared.tables()), shared.findings()))
            .orElseThrow();
    return new Optimiser(Solver.standard())
        .solve(posed.task())
        .byKind(
            it -> it,
            unmet -> {
              throw new AssertionError("unmet");
            },
            undecided -> {
              throw new AssertionError(undecided.why());
            });
  }

  private Advice advice(SmallFolder folder) throws IOException {
    Shared shared = shared();
    return new Advising(Solver.standard(), new FeedComputer(shared.tables()), shared.findings())
        .of(recipe(shared, folder), Wishes.NONE);
  }

  private Shared shared() throws IOException {
    return Shared.of(ReadFolder.of(Texts.at(root)), Days.on(DAY));
  }

  private static RuleContext recipe(Shared shared, SmallFolder folder) throws IOException {
    return Streamed.judged(shared, "A-1.recipe")
        .recipe()
        .orElseThrow(
            () -> {
              try {
                return new AssertionError(folder.text());
              } catch (IOException disk) {
                return new AssertionError(disk);
              }
            });
  }
}
