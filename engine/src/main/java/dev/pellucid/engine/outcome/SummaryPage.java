package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Markdown;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Span;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A check in short as Markdown, for the page that a build server shows of a run: the tally, errors,
 * a line for each recipe, what waivers let pass, warnings and notes, the worst first. It never has
 * more than 60,000 characters, and says of each table how many of its lines it left out.
 */
final class SummaryPage implements Report {
  static final int LONGEST = 60_000;
  private static final int LONGEST_TALLY = 2_000;
  private static final int LONGEST_CELL = 400;
  private static final int KEPT_FOR_EACH = 8_000;

  /**
   * A table of the page. Of its rows only those are made that can stand on it.
   *
   * @param head its title, its column heads and the rule below them
   * @param rows a line each, all of them or more than the page holds
   * @param count how many rows there are
   */
  private record Table(String head, List<String> rows, int count) {
    int size() {
      int size = head.length();
      for (String row : rows) {
        size += row.length();
      }
      return size;
    }

    /** So many rows as there is room for, and how many are left out. */
    String within(int room) {
      StringBuilder out = new StringBuilder(head);
      String leftOut = leftOut(count);
      boolean all = size() <= room;
      int shown = 0;
      for (String row : rows) {
        if (!all && out.length() + row.length() + leftOut.length() > room) {
          break;
        }
        out.append(row);
        shown++;
      }
      return shown == count ? out.toString() : out + leftOut(count - shown);
    }

    private static String leftOut(int number) {
      return "\n" + number + " more left out here; `findings.json` has them all.\n";
    }
  }

  private final CheckOutcome outcome;
  private final PrintedPaths paths;

  SummaryPage(CheckOutcome outcome, PrintedPaths paths) {
    this.outcome = outcome;
    this.paths = paths;
  }

  @Override
  public void writeTo(OutputStream out) throws IOException {
    out.write(page().getBytes(StandardCharsets.UTF_8));
  }

  private String page() {
    String title =
        "# Check of the feeds\n\n"
            + Markdown.of(cut(outcome.tally(), LONGEST_TALLY))
            + "\n"
            + askers();
    List<Table> tables = tables();
    StringBuilder page = new StringBuilder(title);
    for (int i = 0; i < tables.size(); i++) {
      int later =
          tables.subList(i + 1, tables.size()).stream()
              .mapToInt(table -> Math.min(table.size(), KEPT_FOR_EACH))
              .sum();
      page.append(tables.get(i).within(LONGEST - page.length() - later));
    }
    return page.toString();
  }

  private String askers() {
    String words = outcome.askers().words();
    return words.isEmpty() ? "" : "\n" + Markdown.of(cut(words, LONGEST_TALLY)) + "\n";
  }

  private List<Table> tables() {
    return Stream.of(
            findings("Errors", outcome.of(Severity.ERROR)),
            recipes(outcome.recipes()),
            waived(outcome.waived()),
            findings("Warnings", outcome.of(Severity.WARNING)),
            findings("Notes", outcome.of(Severity.NOTE)))
        .filter(table -> table.count() > 0)
        .toList();
  }

  private Table findings(String title, List<Finding> findings) {
    return table(
        title,
        List.of("Where", "What", "Code"),
        findings,
        one -> List.of(place(one.span()), text(one.headline()), code(one.code().text())));
  }

  private Table waived(List<WaivedFinding> waived) {
    return table(
        "Let pass by a waiver",
        List.of("Where", "What", "Why"),
        waived,
        one ->
            List.of(
                place(one.finding().span()),
                text(one.finding().headline()),
                text(one.justification())));
  }

  private static Table recipes(List<RecipeStanding> recipes) {
    List<RecipeStanding> worstFirst = new ArrayList<>(recipes);
    worstFirst.sort(Comparator.comparingInt(SummaryPage::badness).reversed());
    return table(
        "Recipes",
        List.of("Recipe", "Limits kept", "Broken", "Not judged", "Waived"),
        worstFirst,
        SummaryPage::recipe);
  }

  private static int badness(RecipeStanding recipe) {
    return recipe.checked() ? recipe.broken() + recipe.notJudged() : Integer.MAX_VALUE;
  }

  private static List<String> recipe(RecipeStanding recipe) {
    String code = text(recipe.code());
    return recipe.checked()
        ? List.of(
            code,
            Integer.toString(recipe.kept()),
            Integer.toString(recipe.broken()),
            Integer.toString(recipe.notJudged()),
            Integer.toString(recipe.waived().size()))
        : List.of(code, "**not checked**" + mendFirst(recipe), "", "", "");
  }

  private static String mendFirst(RecipeStanding recipe) {
    return recipe.mendFirst().isEmpty()
        ? ""
        : text(", fix " + String.join(", ", recipe.mendFirst()) + " first");
  }

  private static <T> Table table(
      String title, List<String> columns, List<T> lines, Function<T, List<String>> cells) {
    String numbered = title + " (" + lines.size() + ")";
    String head =
        "\n## " + numbered + "\n\n" + row(columns) + "|" + "---|".repeat(columns.size()) + "\n";
    List<String> rows = new ArrayList<>();
    int made = 0;
    for (int i = 0; i < lines.size() && made <= LONGEST; i++) {
      List<String> line = cells.apply(lines.get(i));
      if (line.size() != columns.size()) {
        throw new IllegalArgumentException(line.size() + " cells under the heads of " + title);
      }
      String row = row(line);
      rows.add(row);
      made += row.length();
    }
    return new Table(head, rows, lines.size());
  }

  private static String row(List<String> cells) {
    return "| " + String.join(" | ", cells) + " |\n";
  }

  private String place(Span span) {
    return text(paths.of(span.file()) + ":" + span.from().line());
  }

  private static String code(String code) {
    return "`" + code + "`";
  }

  private static String text(String text) {
    return Markdown.of(cut(text, LONGEST_CELL));
  }

  private static String cut(String text, int length) {
    if (text.length() <= length) {
      return text;
    }
    int end = Character.isHighSurrogate(text.charAt(length - 1)) ? length - 1 : length;
    return text.substring(0, end) + "…";
  }
}
