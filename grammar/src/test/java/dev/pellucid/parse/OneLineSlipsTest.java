package dev.pellucid.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Twenty thousand slips, each on one line of a good file: no other line may be read otherwise, and
 * what is said must point at the line that was slipped on.
 *
 * <p>Three kinds of slip change how a file is built, and then other lines may move or be left out:
 * one that makes the opening line or a section's heading vanish, stand indented among other words
 * (or as {@code oat}), or no longer known, one that makes a line a single word that is a heading or
 * can only be one, and one that takes away the only line of a section. They are counted, so that
 * they stay few.
 */
class OneLineSlipsTest {
  private static final int SLIPS = 20_000;
  private static final String LETTERS = "abkmx MKG059.,:+#\"%-_/=<>()°µ\t\u00A0";

  private final Map<SourceFile, SortedMap<Integer, String>> read = new HashMap<>();
  private final Random random = new Random(20_260_401);

  @Test
  @DisplayName("20,000 slips on one line never cost another line")
  void slipsStayOnTheirLine() {
    List<SourceFile> files = new ArrayList<>();
    for (SourceFile file : GoodFiles.all()) {
      files.addAll(Collections.nCopies(file.lineCount(), file));
    }
    int structural = 0;
    int silent = 0;
    for (int i = 0; i < SLIPS; i++) {
      SourceFile good = files.get(random.nextInt(files.size()));
      Slipped slipped = slip(good);
      Parsed parsed = FeedParser.parse(slipped.file());
      silent += parsed.findings().isEmpty() ? 1 : 0;
      if (changesStructure(slipped, parsed)) {
        structural++;
      } else {
        assertStays(good, slipped, parsed);
      }
    }
    assertTrue(structural < SLIPS / 25, structural + " slips changed how the file is built");
    assertTrue(silent < SLIPS / 2, silent + " slips were not seen at all");
  }

  private void assertStays(SourceFile good, Slipped slipped, Parsed parsed) {
    int line = slipped.line();
    for (Finding finding : parsed.findings()) {
      assertEquals(
          line, finding.span().from().line(), () -> slipped + "\n" + FindingText.of(finding));
    }
    SortedMap<Integer, String> before =
        new TreeMap<>(read.computeIfAbsent(good, OneLineSlipsTest::read));
    SortedMap<Integer, String> after = TreeText.byLine(parsed.file());
    before.remove(line);
    after.remove(line);
    assertEquals(
        String.join("\n", before.values()), String.join("\n", after.values()), slipped::toString);
  }

  private static SortedMap<Integer, String> read(SourceFile file) {
    return TreeText.byLine(FeedParser.parse(file).file());
  }

  private static boolean changesStructure(Slipped slipped, Parsed parsed) {
    String was = content(slipped.was());
    String now = content(slipped.now());
    boolean heading = isHeading(was);
    boolean opening = opens(was) && now.isEmpty();
    boolean vanished =
        now.isEmpty()
            || (isIndented(slipped.now())
                && (now.split("\\s+", -1).length > 1 || was.equals("coat")));
    boolean becameHeading =
        !heading && (isHeading(now) || (!isIndented(slipped.now()) && now.matches("\\p{L}+")));
    boolean unknownHeading =
        heading
            && parsed.findings().stream()
                .anyMatch(f -> f.code().text().equals("section-unknown") && f.edits().isEmpty());
    boolean otherHeading = heading && isHeading(now) && !was.equals(now);
    boolean onlyLine =
        !heading
            && parsed.findings().stream().anyMatch(f -> f.code().text().equals("section-empty"));
    return opening
        || (heading && vanished)
        || becameHeading
        || unknownHeading
        || otherHeading
        || onlyLine;
  }

  /** Also true of the opening line while it stands. */
  private static boolean opens(String content) {
    return content.matches("(recipe|premix|profile)\\b.*");
  }

  private static boolean isIndented(String line) {
    return Character.isWhitespace(line.charAt(0)) || line.charAt(0) == '\u00A0';
  }

  private static boolean isHeading(String content) {
    return SectionWord.of(content).isPresent();
  }

  private static String content(String line) {
    String text = line.strip().replace("\u00A0", "");
    return text.startsWith("#") ? "" : text.replaceAll("\\s+#.*", "");
  }

  private Slipped slip(SourceFile good) {
    List<String> lines = new ArrayList<>(Arrays.asList(good.text().split("\n", -1)));
    int index = random.nextInt(lines.size() - 1);
    while (lines.get(index).isBlank()) {
      index = random.nextInt(lines.size() - 1);
    }
    String was = lines.get(index);
    String now = random.nextBoolean() ? letterSlip(was) : tokenSlip(was);
    lines.set(index, now);
    SourceFile file = new SourceFile(good.path(), String.join("\n", lines));
    return new Slipped(file, index + 1, was, now);
  }

  private String letterSlip(String line) {
    int at = random.nextInt(line.length());
    char letter = LETTERS.charAt(random.nextInt(LETTERS.length()));
    return switch (random.nextInt(4)) {
      case 0 -> line.substring(0, at) + line.substring(at + 1);
      case 1 -> line.substring(0, at) + letter + line.substring(at);
      case 2 -> line.substring(0, at) + letter + line.substring(at + 1);
      default ->
          at == 0
              ? line
              : line.substring(0, at - 1)
                  + line.charAt(at)
                  + line.charAt(at - 1)
                  + line.substring(at + 1);
    };
  }

  /** Words and the white space between them are pieces alike, the indent too. */
  private String tokenSlip(String line) {
    List<String> pieces = new ArrayList<>(List.of(line.split("(?<=\\s)(?=\\S)|(?<=\\S)(?=\\s)")));
    int at = random.nextInt(pieces.size());
    int other = random.nextInt(pieces.size());
    switch (random.nextInt(4)) {
      case 0 -> pieces.remove(at);
      case 1 -> pieces.add(at, " " + pieces.get(other) + " ");
      case 2 -> pieces.set(at, pieces.get(other));
      default -> Collections.swap(pieces, at, other);
    }
    return String.join("", pieces);
  }

  private record Slipped(SourceFile file, int line, String was, String now) {
    @Override
    public String toString() {
      return file.path() + ":" + line + "\n was " + was + "\n now " + now;
    }
  }
}
