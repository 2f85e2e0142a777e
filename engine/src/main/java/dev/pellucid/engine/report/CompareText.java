package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.text.Plural;
import java.util.List;
import java.util.function.Predicate;

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

  private static final String ONLY =
      "; of all rules only limits were compared, run check for the others";

  /**
   * One line for all: it never tells that no limit is newly broken without telling that other rules
   * were not looked at.
   */
  public static String tally(Comparison comparison) {
    List<RecipeChange> changes = comparison.changes();
    if (changes.isEmpty()) {
      return "no feed changes" + ONLY;
    }
    StringBuilder out = new StringBuilder();
    out.append(Plural.of(changes.size(), "feed changes", "feeds change"));
    long broken = changes.stream().mapToLong(it -> it.effectOrNone().broken().size()).sum();
    out.append(", ").append(Plural.of(broken, "limit is newly broken", "limits are newly broken"));
    long untold = changes.stream().mapToLong(it -> it.effectOrNone().untold().size()).sum();
    String anyMore =
        before(changes, it -> !it.effectOrNone().untold().isEmpty()) ? " any more" : "";
    out.append(untold == 0 ? "" : ", " + untold + " cannot be judged" + anyMore);
    long labels = changes.stream().filter(it -> it.effectOrNone().breaksLabel()).count();
    out.append(
        before(changes, it -> it.effectOrNone().breaksLabel())
            ? some(labels, "label holds no longer", "labels hold no longer")
            : some(labels, "label does not hold", "labels do not hold"));
    long lost = changes.stream().filter(RecipeChange::isLost).count();
    out.append(some(lost, "feed cannot be computed", "feeds cannot be computed"));
    String note = comparison.causesNote();
    return out.append(ONLY).append(note.isEmpty() ? "" : "; " + note).toString();
  }

  /** Whether all such feeds were there before; of a new one nothing was otherwise. */
  private static boolean before(List<RecipeChange> changes, Predicate<RecipeChange> such) {
    return changes.stream().filter(such).noneMatch(RecipeChange::isNew);
  }

  private static String some(long number, String one, String more) {
    return number == 0 ? "" : ", " + Plural.of(number, one, more);
  }
}
