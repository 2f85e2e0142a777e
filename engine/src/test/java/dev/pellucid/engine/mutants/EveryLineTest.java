package dev.pellucid.engine.mutants;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CheckGoal;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every line of every recipe, premix, profile and law of the example, lost, doubled, or moved to
 * the end of its file: the check says something in that file.
 *
 * <p>One line in so many is tried; {@code -Dpellucid.lines=1} tries all, and {@code
 * -Dpellucid.linesSilent=FILE} writes those of which nothing is said.
 */
class EveryLineTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Example.whole();
  private static final int USUAL = 40;

  private enum Change {
    LOST,
    TWICE,
    MOVED
  }

  private static final class Count {
    private int tried;
    private int silent;
    private int elsewhere;
  }

  @Test
  void whatProtectsDoesNotVanish() throws IOException {
    Texts example = Texts.at(EXAMPLE);
    String sound = CheckGoal.check(example, DAY).tally();
    int each = Integer.getInteger("pellucid.lines", USUAL);
    Map<Change, Count> counts = new EnumMap<>(Change.class);
    List<String> silent = new ArrayList<>();
    int number = 0;
    for (String path : paths()) {
      List<String> lines = Files.readAllLines(EXAMPLE.resolve(path));
      for (int at = 0; at < lines.size(); at++) {
        String line = lines.get(at);
        boolean written = !line.isBlank() && !line.strip().startsWith("#");
        if (!written || number++ % each != 0) {
          continue;
        }
        for (Change change : Change.values()) {
          Optional<Slip> slip = slip(change, path, lines, at);
          if (slip.isPresent()) {
            Count count = counts.computeIfAbsent(change, none -> new Count());
            look(example, sound, change, slip.get(), count, silent);
          }
        }
      }
    }
    counts.forEach(
        (change, count) ->
            System.out.printf(
                "%-6s %5d tried, %4d silent, %4d told in another file alone%n",
                change, count.tried, count.silent, count.elsewhere));
    String file = System.getProperty("pellucid.linesSilent", "");
    if (!file.isEmpty()) {
      Files.write(Path.of(file), silent);
    }
    assertTrue(number > 1_000, number + " lines");
    Count lost = counts.get(Change.LOST);
    assertTrue(lost != null && 5 * (lost.silent + lost.elsewhere) <= lost.tried, silent.toString());
    Count twice = counts.get(Change.TWICE);
    assertTrue(twice != null && 10 * twice.silent <= twice.tried, silent.toString());
  }

  private static void look(
      Texts example, String sound, Change change, Slip slip, Count count, List<String> silent) {
    CheckReport report = CheckGoal.check(example.over(Map.of(slip.path(), slip.after())), DAY);
    List<Finding> found = report.findings();
    count.tried++;
    if (found.isEmpty()) {
      count.silent++;
      String tally = report.tally().equals(sound) ? "" : "  (" + report.tally() + ")";
      silent.add(change + " " + slip.path() + ": " + slip.before().strip() + tally);
    } else if (found.stream().noneMatch(it -> it.span().file().path().equals(slip.path()))) {
      count.elsewhere++;
      silent.add(
          change
              + " "
              + slip.path()
              + ": "
              + slip.before().strip()
              + "  ELSEWHERE "
              + found.get(0).span().place()
              + " "
              + found.get(0).headline());
    }
  }

  private static Optional<Slip> slip(Change change, String path, List<String> lines, int at) {
    return switch (change) {
      case LOST -> Optional.of(Slip.lost(path, lines, at, 0));
      case TWICE -> Optional.of(Slip.twice(path, lines, at));
      case MOVED ->
          at + 1 < lines.size()
              ? Optional.of(Slip.moved(path, lines, at, lines.size() - 1))
              : Optional.empty();
    };
  }

  private static List<String> paths() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      return files
          .map(file -> EXAMPLE.relativize(file).toString().replace('\\', '/'))
          .filter(path -> path.matches(".*\\.(recipe|premix|limits)"))
          .sorted()
          .toList();
    }
  }
}
