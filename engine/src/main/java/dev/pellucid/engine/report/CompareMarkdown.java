package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.text.Markdown;
import java.util.List;

/**
 * A comparison as Markdown for a review: a table of all that fit, then the feeds one by one, the
 * gravest first in both, and no longer than a comment may be.
 */
public final class CompareMarkdown {
  /** What the review pages of most hosts take, with room to spare. */
  private static final int LONGEST = 60_000;

  private static final int TABLE = 20_000;
  private static final int ROOM = 300;
  private static final int MOST = 6;

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
    out.append(CompareText.tally(comparison)).append(".\n");
    comparison
        .notices()
        .forEach(notice -> out.append("\n**").append(Markdown.of(notice)).append("**\n"));
    if (comparison.changes().isEmpty()) {
      return out.toString();
    }
    table(comparison, out);
    int shown = 0;
    for (RecipeChange change : comparison.changes()) {
      String one = section(change);
      if (out.length() + one.length() > LONGEST - ROOM - fullAt.length()) {
        break;
      }
      out.append(one);
      shown++;
    }
    int left = comparison.changes().size() - shown;
    out.append('\n');
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
    List<String> heads =
        List.of("feed", "how it changed", "broken", "label", "cost " + currency + "/kg", "more");
    out.append('\n');
    row(heads, heads, out);
    out.append("|---|---|--:|---|--:|--:|\n");
    int from = out.length();
    for (RecipeChange change : comparison.changes()) {
      if (out.length() - from > TABLE) {
        return;
      }
      row(heads, cells(change), out);
    }
  }

  private static List<String> cells(RecipeChange change) {
    return List.of(
        change.named(),
        change.how().words(),
        change.effect().map(effect -> count(effect.broken().size())).orElse(""),
        change.effect().filter(Effect::breaksLabel).isPresent() ? CompareWords.label(change) : "",
        change.costAfter().isPresent() ? CompareWords.money(change.costAfter().getAsDouble()) : "",
        CompareWords.costMoved(change));
  }

  private static void row(List<String> heads, List<String> cells, StringBuilder out) {
    if (cells.size() != heads.size()) {
      throw new IllegalArgumentException(cells.size() + " cells under " + heads);
    }
    cells.forEach(cell -> out.append("| ").append(Markdown.of(cell)).append(' '));
    out.append("|\n");
  }

  private static String count(int broken) {
    return broken == 0 ? "" : String.valueOf(broken);
  }

  private String section(RecipeChange change) {
    StringBuilder one = new StringBuilder();
    one.append("\n### ").append(Markdown.of(change.named())).append(": ");
    one.append(change.how().words()).append("\n\n");
    words.of(change).forEach(line -> one.append("- ").append(Markdown.of(line)).append('\n'));
    return one.toString();
  }
}
