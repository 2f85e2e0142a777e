package dev.pellucid.engine.figures;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What can be wrong with a record of figures that was kept. */
public final class FiguresFindings {
  private static final Code STALE = new Code("figures-stale");
  private static final Code WITHOUT_RECIPE = new Code("figures-without-recipe");
  private static final Pattern LINE_END = Pattern.compile("\r\n|\n|\r");
  private static final String ANEW =
      "write it again and commit it together with its cause: mvn pellucid:figures";

  private FiguresFindings() {}

  /** Every code of this room. */
  public static List<Code> codes() {
    return List.of(STALE, WITHOUT_RECIPE);
  }

  /** Whether two records say the same; how lines end, and a byte order mark, say nothing. */
  public static boolean same(String one, String other) {
    return texts(lines(one)).equals(texts(lines(other)));
  }

  /**
   * The first line of a record that is no longer so; empty where all are.
   *
   * @param recorded as it was kept
   * @param now as it would be written
   */
  public static Optional<Finding> stale(SourceFile recorded, String now) {
    List<RecordLine> was = lines(recorded.text());
    List<RecordLine> is = lines(now);
    return same(recorded.text(), now)
        ? Optional.empty()
        : Optional.of(stale(recorded, was, Difference.between(texts(was), texts(is))));
  }

  private static Finding stale(SourceFile recorded, List<RecordLine> was, Difference difference) {
    Span span = was.isEmpty() ? recorded.beginning() : span(recorded, was, difference);
    String others =
        switch (difference.others()) {
          case 0 -> "";
          case 1 -> "; 1 more line differs";
          default -> "; " + difference.others() + " more lines differ";
        };
    return Finding.warning(STALE, span, difference.words() + others).helping(ANEW);
  }

  private static Span span(SourceFile recorded, List<RecordLine> was, Difference difference) {
    RecordLine line = was.get(Math.min(difference.at(), was.size() - 1));
    int from = line.text().length() - line.text().stripLeading().length();
    int to = line.text().stripTrailing().length();
    if (difference.how() == Difference.How.MOVED) {
      String piece = difference.was();
      int at = line.text().lastIndexOf(piece);
      from = at < 0 ? from : at;
      to = at < 0 ? to : at + piece.length();
    }
    return recorded.span(line.start() + Math.min(from, to), line.start() + to);
  }

  /**
   * A record beside which there is no recipe.
   *
   * @param elsewhere paths of recipes of that code
   */
  public static Finding withoutRecipe(SourceFile recorded, Set<String> elsewhere) {
    Finding finding =
        Finding.warning(
            WITHOUT_RECIPE,
            recorded.beginning(),
            "these figures have no recipe " + recorded.stem() + " beside them");
    return elsewhere.isEmpty()
        ? finding.helping("delete the file, or bring its recipe back")
        : finding.helping(
            "delete the file; the recipe is at "
                + String.join(" and ", elsewhere)
                + " and gets its own by mvn pellucid:figures");
  }

  /** A line and where it starts in the text. */
  private record RecordLine(int start, String text) {}

  private static List<String> texts(List<RecordLine> lines) {
    return lines.stream().map(RecordLine::text).toList();
  }

  private static List<RecordLine> lines(String text) {
    List<RecordLine> lines = new ArrayList<>();
    int start = text.startsWith("\uFEFF") ? 1 : 0;
    Matcher end = LINE_END.matcher(text);
    while (end.find()) {
      lines.add(new RecordLine(start, text.substring(start, end.start())));
      start = end.end();
    }
    if (start < text.length()) {
      lines.add(new RecordLine(start, text.substring(start)));
    }
    return lines;
  }
}
