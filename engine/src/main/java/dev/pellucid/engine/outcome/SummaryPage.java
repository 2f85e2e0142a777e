package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Markdown;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A check in short as Markdown, for the page that a build server shows of a run: the tally, errors,
 * a line for each recipe, what waivers let pass, warnings and notes, the worst first. It never has
 * more than 60,000 characters, and says of each table how many of its lines it left out.
 */
final class SummaryPage {
  static final int LONGEST = 60_000;
  private static final int LONGEST_TALLY = 2_000;
  private static final int LONGEST_CELL = 400;
  private static final int KEPT_FOR_EACH = 8_000;

  /**
   * A table of the page.
   *
   * @param head its title, its column heads and the rule below them
   * @param rows a line each
   */
  private record Table(String head, List<String> rows) {
    int size() {
      return head.length() + rows.stream().mapToInt(String::length).sum();
    }

    /** So many rows as there is room for, and how many are left out. */
    String within(int room) {
      StringBuilder out = new StringBuilder(head);
      String leftOut = leftOut(rows.size());
      boolean all = size() <= room;
      int shown = 0;
      for (String row : rows) {
        if (!all && out.length() + row.length() + leftOut.length() > room) {
          break;
        }
        out.append(row);
        shown++;
      }
      return shown == rows.size() ? out.toString() : out + leftOut(rows.size() - shown);
    }

    private static String leftOut(int number) {
      return "\n" + number + " more left out here; `findings.json` has them all.\n";
    }
  }

  private final PrintedPaths paths;

  private SummaryPage(PrintedPaths paths) {
    this.paths = paths;
  }

  static String of(CheckOutcome outcome, PrintedPaths paths) {
    return new SummaryPage(paths).page(outcome);
  }

  private String page(CheckOutcome outcome) {
    String title =
        "# Check of the feeds\n\n" + Markdown.of(cut(outcome.tally(), LONGEST_TALLY)) + "\n";
    List<Table> tables = tables(outcome);
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

  private List<Table> tables(CheckOutcome outcome) {
    return Stream.of(
            findings("Errors", outcome.of(Severity.ERROR)),
            recipes(outcome.recipes()),
            waived(outcome.waived()),
            findings("Warnings", outcome.of(Severity.WARNING)),
            findings("Notes", outcome.of(Severity.NOTE)))
        .filter(table -> !table.rows().isEmpty())
        .toList();
  }

  private Table findings(String title, List<Finding> findings) {
    return table(
        title + " (" + findings.size() + ")",
        List.of("Where", "What", "Code"),
        findings.stream()
            .map(one -> List.of(place(one.span()), text(one.headline()), code(one.code().text())))
            .toList());
  }

  private Table waived(List<WaivedFinding> waived) {
    return table(
        "Let pass by a waiver (" + waived.size() + ")",
        List.of("Where", "What", "Why"),
        waived.stream()
            .map(
                one ->
                    List.of(
                        place(one.finding().span()),
                        text(one.finding().headline()),
                        text(one.justification())))
            .toList());
  }

  private static Table recipes(List<RecipeOutcome> recipes) {
    return table(
        "Recipes (" + recipes.size() + ")",
        List.of("Recipe", "Limits kept", "Broken", "Not judged", "Waived"),
        recipes.stream()
            .sorted(Comparator.comparingLong(SummaryPage::badness).reversed())
            .map(SummaryPage::recipe)
            .toList());
  }

  private static long badness(RecipeOutcome recipe) {
    return recipe.checked()
        ? recipe.count(LimitOutcome.State.BROKEN) + recipe.count(LimitOutcome.State.NOT_JUDGED)
        : Long.MAX_VALUE;
  }

  private static List<String> recipe(RecipeOutcome recipe) {
    String code = text(recipe.code());
    return recipe.checked()
        ? List.of(
            code,
            Long.toString(recipe.kept()),
            Long.toString(recipe.count(LimitOutcome.State.BROKEN)),
            Long.toString(recipe.count(LimitOutcome.State.NOT_JUDGED)),
            Long.toString(recipe.waived().size()))
        : List.of(code, "**not checked**" + mendFirst(recipe), "", "", "");
  }

  private static String mendFirst(RecipeOutcome recipe) {
    return recipe.mendFirst().isEmpty()
        ? ""
        : text(", mend " + String.join(", ", recipe.mendFirst()) + " first");
  }

  private static Table table(String title, List<String> columns, List<List<String>> cells) {
    String head =
        "\n## " + title + "\n\n" + row(columns) + "|" + "---|".repeat(columns.size()) + "\n";
    List<String> rows = new ArrayList<>();
    for (List<String> line : cells) {
      if (line.size() != columns.size()) {
        throw new IllegalArgumentException(line.size() + " cells under the heads of " + title);
      }
      rows.add(row(line));
    }
    return new Table(head, rows);
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
