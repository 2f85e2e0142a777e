package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.compute.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.ojalgo.matrix.MatrixR064;

/** Properties over random recipes, from a seed. */
class RandomFeedsTest {
  private static final List<String> MIX =
      List.of("maize", "soybean-meal", "fish-meal", "wheat-middlings", "salt", "limestone");
  private static final List<String> STABLE =
      List.of("crude-protein", "crude-fat", "crude-fibre", "crude-ash", "lysine", "calcium");
  private static final int TRIALS = 200;

  @Test
  @DisplayName("mass is conserved through water, drying, coating and losses to 1e-9")
  void massIsConserved() {
    Random random = new Random(11);
    Cooked pantry = new Cooked();
    for (int trial = 0; trial < TRIALS; trial++) {
      String recipe = recipe(random);
      ComputedFeed feed = pantry.feed(recipe);
      for (Scenario end : Scenario.values()) {
        Balance balance = feed.balances().at(end);
        double in = balance.mix() + balance.waterAdded() + balance.steam() + balance.coat();
        assertEquals(in - balance.evaporated(), balance.finished(), 1e-9, recipe);
        assertEquals(
            balance.dryMatter(), balance.kernel() * (1 - balance.kernelMoisture()), 1e-9, recipe);
        for (Stage stage : balance.stages()) {
          double after = stage.before() + stage.added() - stage.evaporated();
          assertEquals(after, stage.after(), 1e-9, recipe);
        }
        double kg = feed.rows().stream().mapToDouble(row -> row.kg(end)).sum();
        assertEquals(balance.mix() + balance.coat(), kg, 1e-9, recipe);
      }
      assertEquals(100, feed.rows().stream().mapToDouble(Row::kg).sum(), 1e-9, recipe);
    }
  }

  @Test
  @DisplayName("nutrient totals agree with a matrix product of ojAlgo")
  void totalsAreAMatrixProduct() {
    Random random = new Random(12);
    Cooked pantry = new Cooked();
    for (int trial = 0; trial < TRIALS; trial++) {
      String recipe = recipe(random);
      ComputedFeed feed = pantry.feed(recipe);
      List<Row> rows = feed.rows();
      MatrixR064.DenseReceiver contents =
          MatrixR064.FACTORY.newDenseBuilder(STABLE.size(), rows.size());
      MatrixR064.DenseReceiver kg = MatrixR064.FACTORY.newDenseBuilder(rows.size(), 1);
      for (int column = 0; column < rows.size(); column++) {
        kg.set(column, 0, rows.get(column).kg());
        for (int line = 0; line < STABLE.size(); line++) {
          int index = feed.nutrients().named(STABLE.get(line)).orElseThrow().index();
          contents.set(line, column, rows.get(column).composition().low().at(index));
        }
      }
      MatrixR064 totals =
          contents.get().multiply(kg.get()).divide(feed.balances().expected().finished());
      for (int line = 0; line < STABLE.size(); line++) {
        double ours = Cooked.content(feed, STABLE.get(line));
        assertEquals(totals.doubleValue(line, 0), ours, 1e-12, STABLE.get(line) + "\n" + recipe);
      }
    }
  }

  private static String recipe(Random random) {
    List<Integer> cents = new ArrayList<>();
    int left = 9000;
    for (int i = 1; i < MIX.size(); i++) {
      int share = random.nextInt(left / 2) + 1;
      cents.add(share);
      left -= share;
    }
    StringBuilder lines = new StringBuilder("  batch 500 kg weighed\nmix\n");
    for (int i = 1; i < MIX.size(); i++) {
      lines.append(line(MIX.get(i), cents.get(i - 1)));
    }
    lines.append("  maize rest\ncoat\n").append(line("fish-oil", random.nextInt(900) + 1));
    lines.append("overage\n  salt ").append(random.nextInt(30)).append(" % for handling\n");
    lines.append("process\n  add-water on-mix ").append(10 + random.nextInt(20)).append(" %\n");
    if (random.nextBoolean()) {
      lines.append("  condition start 20 °C\n  condition temperature 80 °C\n");
    }
    return lines.append("  dry moisture 9 % accept 8 to 10 %\n").toString();
  }

  private static String line(String name, int cents) {
    return String.format(Locale.ROOT, "  %s %d.%02d %%%n", name, cents / 100, cents % 100);
  }
}
