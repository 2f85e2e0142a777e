package dev.pellucid.engine.benchmark;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.Kept;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.engine.workspace.Whole;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;

/**
 * How long somebody waits after an edit, where the folder is kept: one recipe changed, then the
 * price of an ingredient that all recipes hold, with all that is to be told of the folder each
 * time.
 *
 * <p>Arguments: the number of recipes and of rounds.
 */
public final class KeptBenchmark {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final int WARM_UP = 30;
  private static final String PRICES = "prices/2026-11.yaml";

  private KeptBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    int count = Integer.parseInt(arguments[0]);
    int rounds = Integer.parseInt(arguments[1]) * 5;
    Path root = Files.createTempDirectory("pellucid-kept");
    BenchmarkFolder folder = BenchmarkFolder.write(root, Example.whole(), count, 0);
    try {
      Texts texts = Texts.at(folder.root()).held();
      String recipe = folder.root().relativize(folder.recipes().get(count / 2)).toString();
      String text = Files.readString(folder.recipes().get(count / 2));
      String prices = Files.readString(folder.root().resolve(PRICES));
      System.out.printf(
          Locale.ROOT,
          "%nKept, %d recipes, milliseconds from an edit to all that is found: median (least to most)%n",
          count);
      race("one recipe edited", texts, recipe, text, "max 60.", "max 61.", rounds);
      race("a price edited", texts, PRICES, prices, "wheat: 0", "wheat: 1", rounds);
    } finally {
      folder.delete();
    }
  }

  private static void race(
      String name, Texts texts, String path, String text, String from, String to, int rounds) {
    String other = text.replaceFirst(from.replace(".", "\\."), to);
    if (other.equals(text)) {
      throw new IllegalStateException("nothing to edit in " + path);
    }
    Kept<Summary> kept = Kept.of(texts, Days.on(DAY), Kept.Route.CHECK, Summary::of);
    Whole.of(kept.shared(), kept.all());
    double[] times = new double[rounds];
    for (int round = -WARM_UP; round < rounds; round++) {
      Texts edited = texts.over(Map.of(path, Math.floorMod(round, 2) == 0 ? other : text));
      long start = System.nanoTime();
      kept = kept.with(edited);
      Whole whole = Whole.of(kept.shared(), kept.all());
      if (round >= 0) {
        times[round] = (System.nanoTime() - start) / 1e6;
      }
      if (whole.recipes() != kept.recipes().size() || !whole.notChecked().isEmpty()) {
        throw new IllegalStateException("not all recipes were checked");
      }
    }
    Arrays.sort(times);
    System.out.printf(
        Locale.ROOT,
        "%-34s %.1f (%.1f to %.1f)%n",
        name,
        (times[(rounds - 1) / 2] + times[rounds / 2]) / 2,
        times[0],
        times[rounds - 1]);
  }
}
