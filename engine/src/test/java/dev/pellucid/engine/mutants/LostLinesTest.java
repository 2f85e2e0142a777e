package dev.pellucid.engine.mutants;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CheckGoal;
import dev.pellucid.engine.goal.CheckReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The example with one line of an approved recipe, a premix, a profile or a law lost: a finding
 * says so, or the line is of a kind that protects nothing, or that only the sheet can show.
 *
 * <p>{@code -Dpellucid.lines=1} loses every line in turn, else one in so many.
 */
class LostLinesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Example.whole();
  private static final int ONE_IN = 24;

  /** What a recipe asks of itself shows on its sheet and in its record of figures. */
  private static final Set<String> SHOWN_ON_THE_SHEET =
      Set.of("overage", "limits", "waivers", "mix", "coat", "label");

  /** Steps that change nothing in the feed, and what the sheet alone tells. */
  private static final List<String> OF_NO_ACCOUNT =
      List.of(
          "sieve ",
          "pack ",
          "pellet length",
          "coat temperature",
          "grind soybean-meal-48 ",
          "add-water ");

  @Test
  void noLineThatProtectsIsLostInSilence() throws IOException {
    Texts texts = Texts.at(EXAMPLE).held();
    assertEquals(List.of(), CheckGoal.check(texts, DAY).findings());
    int oneIn = Integer.getInteger("pellucid.lines", ONE_IN);
    List<String> silent = new ArrayList<>();
    int lost = 0;
    int seen = 0;
    for (String path : texts.paths()) {
      List<String> lines = isLookedAt(path) ? lines(path) : List.of();
      String section = "";
      for (int i = 0; i < lines.size(); i++) {
        String line = lines.get(i);
        section = line.matches("[a-z]+") ? line : section;
        if (line.isBlank() || line.strip().startsWith("#") || seen++ % oneIn != 0) {
          continue;
        }
        lost++;
        if (without(texts, path, lines, i).findings().isEmpty() && protects(path, section, line)) {
          silent.add(path + ":" + (i + 1) + " " + line.strip());
        }
      }
    }
    assertEquals(List.of(), silent);
    assertTrue(lost > 1000 / oneIn, lost + " lines were lost");
  }

  private static CheckReport without(Texts texts, String path, List<String> lines, int lost) {
    List<String> left = new ArrayList<>(lines);
    left.remove(lost);
    return CheckGoal.check(texts.over(Map.of(path, String.join("\n", left) + "\n")), DAY);
  }

  private static boolean isLookedAt(String path) throws IOException {
    return path.endsWith(".premix")
        || path.endsWith(".limits")
        || path.endsWith(".recipe")
            && lines(path).stream().anyMatch(line -> line.startsWith("  status    approved"));
  }

  private static List<String> lines(String path) throws IOException {
    return Files.readAllLines(EXAMPLE.resolve(path));
  }

  private static boolean protects(String path, String section, String line) {
    String words = line.strip().replaceAll("\\s+", " ");
    for (String none : OF_NO_ACCOUNT) {
      if (words.startsWith(none)) {
        return false;
      }
    }
    if (path.endsWith(".recipe")) {
      return !SHOWN_ON_THE_SHEET.contains(section);
    }
    // A line of a limit, and a supply, that the sisters do not have either.
    return section.isEmpty() && !words.equals("kind need");
  }
}
