package dev.pellucid.engine.benchmark;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.finding.Severity;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.ToIntFunction;
import org.antlr.v4.runtime.atn.PredictionMode;

/**
 * How long a check of many recipes takes, as a ratio to the bare generated parser on the same
 * texts, in the same JVM and on as many threads. Two folders are checked: one in which all is well
 * and one in which one recipe in ten breaks a limit, for which a fix is looked for. A check that
 * does not report every recipe and every limit stops the benchmark.
 *
 * <p>Arguments: the number of recipes and of rounds.
 */
public final class CheckBenchmark {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final int WARM_UP = 5;
  private static final int BROKEN_EACH = 10;

  private CheckBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    Path example = Example.whole();
    int count = Integer.parseInt(arguments[0]);
    int rounds = Integer.parseInt(arguments[1]);
    Path temporary = Files.createTempDirectory("pellucid-benchmark");
    BenchmarkFolder good = BenchmarkFolder.write(temporary.resolve("good"), example, count, 0);
    BenchmarkFolder slipped =
        BenchmarkFolder.write(temporary.resolve("slipped"), example, count, BROKEN_EACH);
    try {
      System.out.println(check(good).tally());
      System.out.println(check(slipped).tally());
      Rounds race = new Rounds(contenders(good, slipped), 0, count);
      for (int threads : new int[] {1, Runtime.getRuntime().availableProcessors()}) {
        System.out.println();
        System.out.print(race.run(threads, WARM_UP, rounds));
      }
    } finally {
      good.delete();
      slipped.delete();
      Files.delete(temporary);
    }
  }

  private static List<Contender> contenders(BenchmarkFolder good, BenchmarkFolder slipped)
      throws IOException {
    List<SourceFile> texts = good.texts();
    BareParser ll = new BareParser(PredictionMode.LL);
    BareParser sll = new BareParser(PredictionMode.SLL);
    return List.of(
        new Contender(
            "bare parser, LL, text in memory", () -> each(texts, text -> ll.parse(text.text()))),
        new Contender(
            "bare parser, LL, read from disk",
            () -> each(good.recipes(), file -> ll.parse(text(file)))),
        new Contender(
            "bare parser, SLL, text in memory", () -> each(texts, text -> sll.parse(text.text()))),
        new Contender("own parser, text in memory", () -> each(texts, CheckBenchmark::own)),
        new Contender("check", () -> check(good).recipes()),
        new Contender("check, one in ten broken", () -> check(slipped).recipes()));
  }

  private static <T> int each(List<T> all, ToIntFunction<T> work) {
    return all.parallelStream().mapToInt(work).sum();
  }

  private static int own(SourceFile source) {
    return FeedParser.parse(source).findings().isEmpty() ? 1 : 0;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException closed) {
      throw new UncheckedIOException(closed);
    }
  }

  /** Checks a folder and makes sure that all of it was checked. */
  private static CheckReport check(BenchmarkFolder folder) throws IOException {
    CheckReport report = OwnFolder.check(folder.root(), DAY);
    int count = folder.recipes().size();
    boolean whole =
        report.recipes() == count
            && report.limits() == count * RecipeWriter.LIMITS
            && report.notChecked().isEmpty()
            && report.findings().size() == folder.broken()
            && report.count(Severity.ERROR) == folder.broken();
    if (!whole) {
      String first = report.findings().isEmpty() ? "" : ": " + report.findings().get(0);
      throw new IllegalStateException(
          "expected %d recipes with %d limits each and %d errors, got %s%s"
              .formatted(count, RecipeWriter.LIMITS, folder.broken(), report.tally(), first));
    }
    return report;
  }
}
