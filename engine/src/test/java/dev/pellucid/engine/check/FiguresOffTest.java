package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CheckGoal;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * One slip in a line of the example's profiles, law and premixes, seeded: told at that line. With
 * {@code -Dpellucid.slips=500} nearly every line is tried.
 */
class FiguresOffTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
  private static final Path EXAMPLE = Example.whole();
  private static final int SLIPS = Integer.getInteger("pellucid.slips", 24);
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?<=\\s)([0-9]+(?:\\.[0-9]+)?)(?= (?:%|g/kg|mg/kg|µg/kg|IU/kg|kcal/kg|g/MJ))");

  /** What slips. */
  enum Slip {
    TEN_TIMES,
    A_TENTH,
    OTHER_SIDE,
    LOST,
    TERMS;

    /** The line as it is then, nothing for a lost one; absent where there is nothing to slip. */
    Optional<String> of(String line) {
      return switch (this) {
        case TEN_TIMES -> moved(line, 1);
        case A_TENTH -> moved(line, -1);
        case OTHER_SIDE -> otherSide(line);
        case LOST -> Optional.of("");
        case TERMS -> {
          String less = line.replaceFirst(" +(at 12 % moisture|in 95 % of batches)", "");
          yield less.equals(line) ? Optional.empty() : Optional.of(less);
        }
      };
    }

    private static Optional<String> moved(String line, int places) {
      Matcher figure = FIGURE.matcher(line);
      if (!figure.find() || new BigDecimal(figure.group(1)).signum() == 0) {
        return Optional.empty();
      }
      String moved = Magnitude.moved(new BigDecimal(figure.group(1)), places);
      return Optional.of(line.substring(0, figure.start()) + moved + line.substring(figure.end()));
    }

    private static Optional<String> otherSide(String line) {
      boolean min = line.contains(" min ");
      boolean max = line.contains(" max ");
      if (min == max) {
        return Optional.empty();
      }
      return Optional.of(min ? line.replace(" min ", " max ") : line.replace(" max ", " min "));
    }
  }

  /** A line of limits or of supply. */
  private record Line(String path, List<String> lines, int index) {
    String text() {
      return lines.get(index);
    }

    /** What law asks of one raw material may be six times what it asks of the next. */
    boolean isOfMaterial() {
      return path.startsWith("law/materials/") || path.startsWith("guidance/");
    }

    String with(String slipped) {
      List<String> changed = new ArrayList<>(lines);
      if (slipped.isEmpty()) {
        changed.remove(index);
      } else {
        changed.set(index, slipped);
      }
      return String.join("\n", changed) + "\n";
    }
  }

  @ParameterizedTest
  @EnumSource(Slip.class)
  void isToldAtItsLine(Slip slip) throws IOException {
    Texts example = Texts.at(EXAMPLE);
    List<Line> lines = lines(example);
    if (slip == Slip.TEN_TIMES || slip == Slip.A_TENTH) {
      lines.removeIf(Line::isOfMaterial);
    }
    Collections.shuffle(lines, new Random(20261128 + slip.name().length()));
    List<String> missed = new ArrayList<>();
    int made = 0;
    for (Line line : lines) {
      Optional<String> slipped = made < SLIPS ? slip.of(line.text()) : Optional.empty();
      if (slipped.isPresent()) {
        made++;
        String text = line.with(slipped.get());
        List<Finding> findings =
            CheckGoal.check(example.over(Map.of(line.path(), text)), DAY).findings();
        if (!isTold(findings, line, slipped.get().isEmpty())) {
          missed.add(line.path() + ":" + (line.index() + 1) + " " + slipped.get());
        }
      }
    }
    assertTrue(made > SLIPS / 2, "too few lines: " + made);
    assertTrue(missed.size() <= 0.05 * made, missed.size() + " of " + made + ": " + missed);
  }

  private static boolean isTold(List<Finding> findings, Line line, boolean lost) {
    for (Finding finding : findings) {
      if (finding.span().file().path().equals(line.path())
          && (lost || finding.span().from().line() == line.index() + 1)) {
        return true;
      }
    }
    return false;
  }

  private static List<Line> lines(Texts example) {
    List<Line> found = new ArrayList<>();
    for (String ending : List.of(".limits", ".premix")) {
      for (String path : example.ending(ending)) {
        List<String> lines =
            example.read(path, new ArrayList<>()).orElseThrow().text().lines().toList();
        boolean inside = false;
        for (int i = 0; i < lines.size(); i++) {
          String line = lines.get(i);
          inside = line.isBlank() ? inside : line.startsWith(" ") ? inside : isFigures(line);
          if (inside && line.startsWith("  ") && !line.strip().startsWith("#")) {
            found.add(new Line(path, lines, i));
          }
        }
      }
    }
    return found;
  }

  private static boolean isFigures(String heading) {
    return heading.equals("limits") || heading.equals("supply");
  }
}
