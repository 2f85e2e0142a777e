package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.compare.RecipeChange.Moved;
import dev.pellucid.engine.compare.RecipeChange.Shifted;
import dev.pellucid.engine.quantity.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * A comparison for the console and as Markdown for a review: the gravest first, and no longer than
 * a comment may be.
 */
public final class CompareText {
  /** What the review pages of most hosts take, with room to spare. */
  private static final int LONGEST = 60_000;

  private static final int MOST_NUTRIENTS = 8;
  private static final int DIGITS = 4;

  private final String currency;

  public CompareText(String currency) {
    this.currency = currency;
  }

  /** Plain text; lines end in {@code \n}. */
  public String text(Comparison comparison) {
    StringBuilder out = new StringBuilder();
    for (RecipeChange change : comparison.changes()) {
      out.append(change.code()).append("  ").append(change.how().words()).append('\n');
      lines(change).forEach(line -> out.append("  ").append(line).append('\n'));
    }
    return out.append(tally(comparison)).append('\n').toString();
  }

  /** Markdown of at most 60,000 characters; what does not fit is counted. */
  public String markdown(Comparison comparison) {
    StringBuilder out = new StringBuilder("## What this change does to the feeds\n\n");
    out.append(tally(comparison)).append(".\n");
    int shown = 0;
    for (RecipeChange change : comparison.changes()) {
      StringBuilder one = new StringBuilder();
      one.append("\n### ").append(change.code()).append(": ").append(change.how().words());
      one.append('\n').append('\n');
      lines(change).forEach(line -> one.append("- ").append(escaped(line)).append('\n'));
      if (out.length() + one.length() > LONGEST - 200) {
        break;
      }
      out.append(one);
      shown++;
    }
    int left = comparison.changes().size() - shown;
    if (left > 0) {
      out.append("\nAnd ")
          .append(left)
          .append(" more, which change less; the full list is in")
          .append(" compare.txt.\n");
    }
    return out.toString();
  }

  /** One line for the end of a run. */
  public static String tally(Comparison comparison) {
    int count = comparison.changes().size();
    if (count == 0) {
      return "no feed changes";
    }
    long broken = comparison.changes().stream().mapToLong(one -> one.broken().size()).sum();
    return (count == 1 ? "1 feed changes" : count + " feeds change")
        + ", "
        + (broken == 1 ? "1 limit is newly broken" : broken + " limits are newly broken");
  }

  private List<String> lines(RecipeChange change) {
    List<String> lines = new ArrayList<>();
    change.broken().forEach(one -> lines.add("BROKEN " + limit(one)));
    change.tight().forEach(one -> lines.add("tight " + limit(one)));
    change.met().forEach(one -> lines.add("met " + limit(one)));
    change.waivers().forEach(one -> lines.add("waiver " + one));
    cost(change, lines);
    change.lines().forEach(one -> lines.add(shifted(one)));
    List<Moved> moved = change.moved();
    moved.stream().limit(MOST_NUTRIENTS).forEach(one -> lines.add(moved(one)));
    if (moved.size() > MOST_NUTRIENTS) {
      lines.add("and " + (moved.size() - MOST_NUTRIENTS) + " more nutrients, by less");
    }
    if (!change.because().isEmpty()) {
      lines.add("changed with it: " + String.join(", ", change.because()));
    }
    return lines;
  }

  private static String limit(LimitMoved one) {
    Figures.Pair figures = pair(one.before().judged(), one.after().judged());
    return one.after().subject()
        + " "
        + one.after().bound()
        + ": "
        + figures.value()
        + " -> "
        + figures.other();
  }

  private void cost(RecipeChange change, List<String> lines) {
    if (change.costBefore().isPresent() && change.costAfter().isPresent()) {
      if (Math.abs(change.costMoved()) > 1e-9) {
        Figures.Pair money =
            Figures.apart(
                change.costBefore().getAsDouble(), change.costAfter().getAsDouble(), DIGITS);
        lines.add(
            "cost "
                + money.value()
                + " -> "
                + money.other()
                + " "
                + currency
                + "/kg ("
                + signed(change.costMoved())
                + ")");
      }
    } else {
      change.costAfter().ifPresent(now -> lines.add("cost " + money(now)));
    }
  }

  private String money(double perKg) {
    return Figures.fixed(perKg, DIGITS) + " " + currency + "/kg";
  }

  private static String signed(double value) {
    return (value > 0 ? "+" : "") + Figures.fixed(value, DIGITS);
  }

  private static String shifted(Shifted one) {
    return one.line()
        + " "
        + (one.before().isEmpty() ? "none" : one.before())
        + " -> "
        + (one.after().isEmpty() ? "none" : one.after());
  }

  private static String moved(Moved one) {
    Figures.Pair figures =
        pair(one.unit().fromBase(one.before()), one.unit().fromBase(one.after()));
    return one.nutrient()
        + " "
        + figures.value()
        + " -> "
        + figures.other()
        + " "
        + one.unit().symbol();
  }

  /** With four digits that count, and more where they would look alike. */
  private static Figures.Pair pair(double before, double after) {
    double largest = Math.max(Math.abs(before), Math.abs(after));
    int ahead = largest > 0 ? (int) Math.floor(Math.log10(largest)) + 1 : 1;
    return Figures.apart(before, after, Math.max(0, DIGITS - ahead));
  }

  private static String escaped(String line) {
    return line.replace("|", "\\|").replace("<", "&lt;").replace("*", "\\*").replace("_", "\\_");
  }
}
