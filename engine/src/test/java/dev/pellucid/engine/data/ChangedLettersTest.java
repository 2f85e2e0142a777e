package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.show.FindingText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whatever happens to the letters of the pantry, it is read without an exception and truly. */
class ChangedLettersTest {
  private static final int TRIALS = 5_000;
  private static final String[] PIECES = {
    " ",
    "\t",
    "\n",
    ":",
    ": ",
    "#",
    " #",
    " # ",
    "-",
    "- ",
    "%",
    "\"",
    "'",
    "[",
    "]",
    "{",
    "}",
    ",",
    "&a",
    "*a",
    "!x",
    "|",
    ">",
    "0",
    "9",
    ".",
    "e3",
    "±",
    "𝒳",
    "\uFEFF",
    "\u0007",
    "\r",
    "\u00A0",
    "---",
    "...",
    "<<",
    "?",
    "@",
    "`",
    "none",
    "below ",
    "\\",
    "\uD835",
    "x".repeat(70)
  };

  /** With these alone a trial takes a third of the time; every tenth has the whole pantry. */
  private static final String[] FEW = {"pellucid", "sources", "groups", "nutrients/1"};

  private static final String[] OF_SOYA = {
    "pellucid", "sources", "groups", "nutrients", "species", "plant", "label", "practice/retention",
  };

  @Test
  void fiveThousandChangesNeverThrow() {
    Random random = new Random(20261125);
    Pantry good = Pantry.full().withSequence();
    List<String> paths = good.paths();
    for (int trial = 0; trial < TRIALS; trial++) {
      String path = paths.get(random.nextInt(paths.size()));
      String text = good.text(path);
      int changes = 1 + random.nextInt(3);
      for (int i = 0; i < changes; i++) {
        text = changed(text, random);
      }
      String shown = text;
      Pantry pantry = trial % 10 == 0 ? Pantry.full() : Pantry.full().only(FEW);
      TablesRead stocked =
          assertDoesNotThrow(() -> pantry.with(path, shown).stocked(), () -> path + "\n" + shown);
      stocked.findings().forEach(finding -> assertPrintable(finding, path, shown));
    }
  }

  private static String changed(String text, Random random) {
    if (text.isEmpty()) {
      return PIECES[random.nextInt(PIECES.length)];
    }
    int at = random.nextInt(text.length());
    String piece = PIECES[random.nextInt(PIECES.length)];
    return switch (random.nextInt(5)) {
      case 0 -> text.substring(0, at) + piece + text.substring(at);
      case 1 -> text.substring(0, at) + text.substring(at + 1);
      case 2 -> text.substring(0, at) + piece + text.substring(at + 1);
      case 3 -> text.substring(0, at);
      default -> text.substring(0, at) + text.substring(random.nextInt(text.length()));
    };
  }

  private static void assertPrintable(Finding finding, String path, String text) {
    String printed = FindingText.of(finding);
    assertTrue(!finding.helps().isEmpty(), () -> printed + path + "\n" + text);
    for (String word : List.of("tools.jackson", "snakeyaml", "Exception", "null", "in reader")) {
      assertTrue(!finding.headline().contains(word), printed);
    }
  }

  /** A figure of contents, and what is put in its place; the rest of the file stays. */
  @Test
  void aChangedFigureIsAFindingOrReadAsWhatItSays() {
    Random random = new Random(7);
    String path = "ingredients/soybean-meal.yaml";
    String good = Pantry.full().text(path);
    List<int[]> values = places(good);
    int read = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      int[] place = values.get(random.nextInt(values.size()));
      String value = changedFigure(good.substring(place[0], place[1]), random);
      String text = good.substring(0, place[0]) + value + good.substring(place[1]);
      TablesRead stocked = Pantry.full().only(OF_SOYA).with(path, text).stocked();
      if (stocked.findings().isEmpty()) {
        assertReadAs(stocked, nutrientAt(good, place[0]), value);
        read++;
      }
    }
    assertTrue(read > TRIALS / 20 && read < TRIALS * 9 / 10, "read " + read);
  }

  private static String changedFigure(String value, Random random) {
    int at = random.nextInt(value.length() + 1);
    String piece =
        random.nextInt(3) == 0
            ? PIECES[random.nextInt(PIECES.length)]
            : String.valueOf("0123456789.,-+eE %/ ±".charAt(random.nextInt(20)));
    return switch (random.nextInt(3)) {
      case 0 -> value.substring(0, at) + piece + value.substring(at);
      case 1 -> value.substring(0, Math.max(0, at - 1)) + value.substring(at);
      default -> value.substring(0, Math.max(0, at - 1)) + piece + value.substring(at);
    };
  }

  private static List<int[]> places(String text) {
    List<int[]> places = new ArrayList<>();
    int contents = text.indexOf("contents:");
    int end = text.indexOf("digestibility:");
    Matcher line = Pattern.compile("(?m)^    [a-z0-9-]+: ([0-9].*)$").matcher(text);
    while (line.find()) {
      if (line.start() > contents && line.start() < end) {
        places.add(new int[] {line.start(1), line.end(1)});
      }
    }
    return places;
  }

  private static String nutrientAt(String text, int valueStart) {
    int lineStart = text.lastIndexOf('\n', valueStart) + 1;
    return text.substring(lineStart, text.indexOf(':', lineStart)).strip();
  }

  /** An independent reading of the one line: all of its letters, or the test fails. */
  private static void assertReadAs(TablesRead stocked, String nutrient, String value) {
    Content content = content(stocked, nutrient);
    String text = value.replaceFirst("  +#( .*)?$", "").replace('\u00A0', ' ').strip();
    if (text.startsWith("\"") || text.startsWith("'")) {
      text = text.substring(1, text.length() - 1);
    }
    if (text.equals("none")) {
      assertEquals(0, content.high());
      return;
    }
    Matcher figure =
        Pattern.compile(
                "(below )?([0-9]+(?:\\.[0-9]+)?)(?:\\s*±\\s*([0-9]+(?:\\.[0-9]+)?))?\\s*(\\S+)")
            .matcher(text);
    if (!figure.matches()) {
      fail("read without a finding: " + value);
    }
    Unit unit = Unit.of(figure.group(4)).orElseThrow();
    double high = unit.toBase(new BigDecimal(figure.group(2)));
    assertEquals(high, content.high(), value);
    assertEquals(figure.group(1) == null ? high : 0, content.low(), value);
    double spread =
        Optional.ofNullable(figure.group(3))
            .map(it -> unit.toBase(new BigDecimal(it)))
            .orElse(-1.0);
    assertEquals(spread, content.spread().orElse(-1), value);
  }

  private static Content content(TablesRead stocked, String nutrient) {
    Ingredient meal =
        Optional.ofNullable(stocked.tables().ingredients().get("soybean-meal")).orElseThrow();
    for (ContentBlock block : meal.contents()) {
      Content content = block.byNutrient().get(nutrient);
      if (content != null) {
        return content;
      }
    }
    return fail("lost " + nutrient);
  }
}
