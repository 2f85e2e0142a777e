package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.RecipeChange;

/** A comparison for the console, the gravest first. */
public final class CompareText {
  private static final int MOST = 8;

  private final CompareWords words;

  public CompareText(String currency) {
    this.words = new CompareWords(currency, MOST);
  }

  /** Plain text; lines end in {@code \n}. */
  public String text(Comparison comparison) {
    StringBuilder out = new StringBuilder();
    comparison.notices().forEach(notice -> out.append(notice).append('\n'));
    for (RecipeChange change : comparison.changes()) {
      out.append(change.named()).append("  ").append(change.how().words()).append('\n');
      words.of(change).forEach(line -> out.append("  ").append(line).append('\n'));
    }
    return out.append(tally(comparison)).append('\n').toString();
  }

  /** One line for the end of a run. */
  public static String tally(Comparison comparison) {
    int count = comparison.changes().size();
    if (count == 0) {
      return "no feed changes";
    }
    long broken =
        comparison.changes().stream()
            .flatMap(one -> one.effect().stream())
            .mapToLong(effect -> effect.broken().size())
            .sum();
    long untold =
        comparison.changes().stream()
            .flatMap(one -> one.effect().stream())
            .mapToLong(effect -> effect.untold().size())
            .sum();
    long labels =
        comparison.changes().stream()
            .filter(one -> one.effect().filter(effect -> effect.breaksLabel()).isPresent())
            .count();
    return (count == 1 ? "1 feed changes" : count + " feeds change")
        + ", "
        + (broken == 1 ? "1 limit is newly broken" : broken + " limits are newly broken")
        + (untold == 0 ? "" : ", " + untold + " cannot be judged any more")
        + (labels == 0
            ? ""
            : labels == 1 ? ", 1 label holds no longer" : ", " + labels + " labels hold no longer");
  }
}
