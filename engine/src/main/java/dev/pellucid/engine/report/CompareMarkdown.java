package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.FileChange;
import dev.pellucid.engine.compare.PremixChange;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.text.Markdown;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;

/**
 * A comparison as Markdown for a review: a table of all that fit, then the feeds one by one, the
 * gravest first in both, figures folded, and no longer than a comment may be.
 */
public final class CompareMarkdown {
  /** What the review pages of most hosts take, with room to spare. */
  private static final int LONGEST = 60_000;

  private static final int TABLE = 20_000;
  private static final int ROOM = 400;
  private static final int MOST = 6;
  private static final List<String> HEADS =
      List.of("feed", "how it changed", "new", "gone", "broken", "label", "cost", "more");

  private final CompareWords words;
  private final String currency;
  private final String fullAt;

  /**
   * For one folder.
   *
   * @param fullAt where the full comparison is
   */
  public CompareMarkdown(String currency, String fullAt) {
    this.words = new CompareWords(currency, MOST);
    this.currency = currency;
    this.fullAt = fullAt;
  }

  /** Markdown of less than 60,000 characters; what does not fit is counted. */
  public String text(Comparison comparison) {
    StringBuilder out = new StringBuilder("## What this change does to the feeds\n\n");
    out.append(Markdown.of(CompareTally.of(comparison))).append(".\n");
    comparison
        .notices()
        .forEach(notice -> out.append("\n**").append(Markdown.of(notice)).append("**\n"));
    if (comparison.isNone()) {
      return out.toString();
    }
    table(comparison, out);
    List<String> sections = sections(comparison);
    int shown = 0;
    for (String one : sections) {
      if (out.length() + one.length() > LONGEST - ROOM - fullAt.length()) {
        break;
      }
      out.append(one);
      shown++;
    }
    int left = sections.size() - shown;
    out.append('\n');
    CompareTally.foot(comparison).forEach(words -> out.append(Markdown.of(words)).append(".\n"));
    if (left > 0) {
      out.append("And ").append(left).append(" more, which change less. ");
    }
    return out.append("All figures: [")
        .append(fullAt)
        .append("](")
        .append(fullAt)
        .append(")\n")
        .toString();
  }

  private void table(Comparison comparison, StringBuilder out) {
    List<List<String>> rows = new ArrayList<>();
    CompareTally.told(comparison).forEach(change -> rows.add(cells(change)));
    CompareTally.premixes(comparison).forEach(change -> rows.add(cells(change)));
    comparison.files().forEach(change -> rows.add(cells(change)));
    if (rows.isEmpty()) {
      return;
    }
    out.append('\n');
    row(heads(), out);
    out.append("|---|---|---|---|--:|---|--:|--:|\n");
    int from = out.length();
    for (int i = 0; i < rows.size(); i++) {
      if (out.length() - from > TABLE) {
        out.append("\nThe table leaves out ")
            .append(Plural.of(rows.size() - i, "row", "rows"))
            .append(".\n");
        return;
      }
      row(rows.get(i), out);
    }
  }

  private List<String> heads() {
    List<String> heads = new ArrayList<>(HEADS);
    heads.set(HEADS.indexOf("cost"), "cost " + currency + "/kg");
    return heads;
  }

  private static List<String> cells(RecipeChange change) {
    Effect effect = change.effectOrNone();
    return List.of(
        change.named(),
        change.how().words() + (CompareWords.passesByWaiver(change) ? ", by a waiver" : ""),
        CompareTally.cell(change.findings()::fresh),
        CompareTally.cell(change.findings()::gone),
        effect.broken().isEmpty() ? "" : String.valueOf(effect.broken().size()),
        CompareWords.labelCell(change),
        change.costAfter().isPresent() ? CompareMoney.money(change.costAfter().getAsDouble()) : "",
        CompareMoney.costMoved(change));
  }

  private static List<String> cells(PremixChange change) {
    return List.of(
        change.code(),
        "premix, " + change.how().words(),
        CompareTally.cell(change.findings()::fresh),
        CompareTally.cell(change.findings()::gone),
        "",
        "",
        change.costAfter().isPresent() ? CompareMoney.money(change.costAfter().getAsDouble()) : "",
        change.costMoves() ? CompareMoney.signed(change.costMoved()) : "");
  }

  private static List<String> cells(FileChange change) {
    return List.of(
        change.path(),
        "",
        CompareTally.cell(change.findings()::fresh),
        CompareTally.cell(change.findings()::gone),
        "",
        "",
        "",
        "");
  }

  private static void row(List<String> cells, StringBuilder out) {
    if (cells.size() != HEADS.size()) {
      throw new IllegalArgumentException(cells.size() + " cells under " + HEADS);
    }
    cells.forEach(cell -> out.append("| ").append(Markdown.of(cell)).append(' '));
    out.append("|\n");
  }

  private List<String> sections(Comparison comparison) {
    List<String> sections = new ArrayList<>();
    for (RecipeChange change : CompareTally.told(comparison)) {
      sections.add(
          section(
              change.named() + ": " + change.how().words(),
              words.of(change),
              words.details(change)));
    }
    for (PremixChange change : CompareTally.premixes(comparison)) {
      sections.add(
          section(
              change.code() + ": premix, " + change.how().words(),
              CompareFindings.lines(change.findings(), false),
              CompareFindings.premixDetails(change, currency, MOST)));
    }
    for (FileChange change : comparison.files()) {
      sections.add(
          section(change.path(), CompareFindings.lines(change.findings(), false), List.of()));
    }
    return sections;
  }

  private static String section(String head, List<String> lines, List<String> folded) {
    StringBuilder one = new StringBuilder("\n### ").append(Markdown.of(head)).append("\n\n");
    list(lines, one);
    if (!folded.isEmpty()) {
      one.append(lines.isEmpty() ? "" : "\n").append("<details><summary>Figures</summary>\n\n");
      list(folded, one);
      one.append("\n</details>\n");
    }
    return one.toString();
  }

  private static void list(List<String> lines, StringBuilder out) {
    lines.forEach(line -> out.append("- ").append(Markdown.of(line)).append('\n'));
  }
}
