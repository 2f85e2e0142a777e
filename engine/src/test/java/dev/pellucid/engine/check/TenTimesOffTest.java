package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CheckGoal;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The figures of each line of {@code process} of approved recipes and of premixes in the example
 * folder, ten times what they are and a tenth of it: told at that line, and by the first finding in
 * at least 95 of 100. Tried is a sample of a fixed seed; more with {@code -Dpellucid.tenfold=1000}.
 */
class TenTimesOffTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final int TRIED = Integer.getInteger("pellucid.tenfold", 120);
  private static final Pattern FIGURE = Pattern.compile("(?<![\\w.-])\\d+(\\.\\d+)?(?!\\w)");

  @TempDir Path copy = Path.of("");

  private record Slip(String path, int line, String text, String written) {
    boolean isAt(Finding finding) {
      return finding.span().place().contains(path + ":" + (line + 1) + ":");
    }
  }

  @Test
  void aFigureOfTheProcessIsToldAtItsLine() throws IOException {
    new SlippedFolder(copy);
    List<Slip> slips = slips();
    Collections.shuffle(slips, new Random(20261128));
    List<Slip> tried = slips.subList(0, Math.min(TRIED, slips.size()));
    List<String> late = new ArrayList<>();
    for (Slip slip : tried) {
      List<Finding> findings =
          CheckGoal.check(Texts.at(copy).over(Map.of(slip.path(), slip.text())), DAY).findings();
      assertTrue(findings.stream().anyMatch(slip::isAt), slip.path() + ": " + slip.written());
      if (!slip.isAt(findings.get(0))) {
        late.add(slip.path() + ": " + slip.written());
      }
    }
    assertTrue(late.size() * 20 <= tried.size(), String.join("\n", late));
  }

  private List<Slip> slips() throws IOException {
    List<Slip> slips = new ArrayList<>();
    try (Stream<Path> files = Files.walk(copy)) {
      for (Path file : files.sorted().toList()) {
        String name = file.toString();
        List<String> lines =
            name.endsWith(".recipe") || name.endsWith(".premix")
                ? Files.readAllLines(file)
                : List.of();
        boolean draft = lines.stream().anyMatch(line -> line.matches("  status +draft"));
        if (!draft) {
          slips(copy.relativize(file).toString(), lines, slips);
        }
      }
    }
    return slips;
  }

  private static void slips(String path, List<String> lines, List<Slip> slips) {
    boolean inProcess = false;
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      inProcess = line.startsWith(" ") ? inProcess : line.equals("process");
      if (inProcess && line.matches("  [a-z].*")) {
        for (int power : new int[] {1, -1}) {
          String off = times(line, power);
          if (!off.equals(line)) {
            List<String> slipped = new ArrayList<>(lines);
            slipped.set(i, off);
            slips.add(new Slip(path, i, String.join("\n", slipped) + "\n", off.strip()));
          }
        }
      }
    }
  }

  /** What stands behind {@code accept} stays. */
  private static String times(String line, int power) {
    int accept = line.indexOf(" accept ");
    String target = accept < 0 ? line : line.substring(0, accept);
    Matcher figures = FIGURE.matcher(target);
    String off =
        figures.replaceAll(
            figure ->
                new BigDecimal(figure.group())
                    .scaleByPowerOfTen(power)
                    .stripTrailingZeros()
                    .toPlainString());
    return accept < 0 ? off : off + line.substring(accept);
  }
}
