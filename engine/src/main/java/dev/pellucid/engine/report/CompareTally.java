package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.FindingsMoved;
import dev.pellucid.engine.compare.PremixChange;
import dev.pellucid.engine.compare.PremixChange.How;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.Slight;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;

/**
 * A comparison in one line. What the check says otherwise stands first, so that a change that it
 * refuses never reads as harmless.
 */
final class CompareTally {
  private CompareTally() {}

  static String of(Comparison comparison) {
    StringBuilder out = new StringBuilder(findings(comparison));
    List<RecipeChange> changes = comparison.changes();
    out.append("; ");
    out.append(
        changes.isEmpty()
            ? "no feed changes"
            : Plural.of(changes.size(), "feed changes", "feeds change"));
    out.append(some(premixes(comparison).size(), "premix changes", "premixes change"));
    long broken = changes.stream().mapToLong(it -> it.effectOrNone().broken().size()).sum();
    out.append(some(broken, "limit is newly broken", "limits are newly broken"));
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
    long waived = changes.stream().filter(CompareWords::passesByWaiver).count();
    out.append(some(waived, "feed passes only by a waiver", "feeds pass only by a waiver"));
    String note = comparison.causesNote();
    return out.append(note.isEmpty() ? "" : "; " + note).toString();
  }

  /** {@code 2 errors and 1 warning are new, 1 error is gone, 3 errors stay}. */
  private static String findings(Comparison comparison) {
    String fresh = counted(comparison::fresh, " is new", " are new");
    String gone = counted(comparison::gone, " is gone", " are gone");
    String unsought =
        counted(
            comparison::unsought, " is not looked for any more", " are not looked for any more");
    StringBuilder out = new StringBuilder(fresh.isEmpty() ? "no finding is new" : fresh);
    out.append(gone.isEmpty() ? "" : ", " + gone);
    out.append(unsought.isEmpty() ? "" : ", " + unsought);
    if (fresh.isEmpty() && gone.isEmpty() && unsought.isEmpty()) {
      out.append(" and none is gone");
    }
    long stay = comparison.errors() - comparison.fresh(Severity.ERROR);
    return out.append(some(stay, "error stays", "errors stay")).toString();
  }

  /** What of one feed, premix or file is new and gone, without a word where nothing is. */
  static String of(FindingsMoved findings, boolean unsought) {
    String fresh = counted(findings::fresh, " is new", " are new");
    String gone =
        unsought
            ? counted(findings::gone, " is not looked for any more", " are not looked for any more")
            : counted(findings::gone, " is gone", " are gone");
    return fresh + (fresh.isEmpty() || gone.isEmpty() ? "" : ", ") + gone;
  }

  /** In a column of its own: {@code 2 errors, 1 note}. */
  static String cell(ToIntFunction<Severity> counts) {
    return String.join(", ", each(counts));
  }

  private static String counted(ToIntFunction<Severity> counts, String one, String more) {
    List<String> each = each(counts);
    if (each.isEmpty()) {
      return "";
    }
    int all = 0;
    for (Severity severity : Severity.values()) {
      all += counts.applyAsInt(severity);
    }
    String last = each.get(each.size() - 1);
    String words =
        each.size() == 1
            ? last
            : String.join(", ", each.subList(0, each.size() - 1)) + " and " + last;
    return words + (all == 1 ? one : more);
  }

  private static List<String> each(ToIntFunction<Severity> counts) {
    List<String> each = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      int count = counts.applyAsInt(severity);
      if (count > 0) {
        each.add(Plural.of(count, severity.word()));
      }
    }
    return each;
  }

  /** Feeds that a person is spared; empty where there are none. */
  private static String spared(Comparison comparison) {
    long slight = comparison.changes().stream().filter(Slight::is).count();
    return slight == 0
        ? ""
        : Plural.of(slight, "feed moves", "feeds move")
            + " by less than a thousandth of each figure and of its room, and "
            + (slight == 1 ? "is" : "are")
            + " told in compare.json alone";
  }

  /** Premixes that are another, and not only made in another amount. */
  static List<PremixChange> premixes(Comparison comparison) {
    return comparison.premixes().stream().filter(one -> one.how() != How.BY_ORDER).toList();
  }

  /** The others, in one sentence; empty where there are none. */
  private static String ordered(Comparison comparison) {
    List<String> ordered = new ArrayList<>();
    for (PremixChange one : comparison.premixes()) {
      if (one.how() == How.BY_ORDER) {
        ordered.add(one.code() + one.batches().map(kg -> " " + CompareFindings.kg(kg)).orElse(""));
      }
    }
    return ordered.isEmpty()
        ? ""
        : "sheets to print again of premixes, since feeds take them otherwise: "
            + String.join(", ", ordered);
  }

  /** What a person is told of in a sentence alone, a sentence each. */
  static List<String> foot(Comparison comparison) {
    return Stream.of(ordered(comparison), spared(comparison))
        .filter(words -> !words.isEmpty())
        .toList();
  }

  /** Those that are told to a person. */
  static List<RecipeChange> told(Comparison comparison) {
    return comparison.changes().stream().filter(one -> !Slight.is(one)).toList();
  }

  /** Whether all such feeds were there before; of a new one nothing was otherwise. */
  private static boolean before(List<RecipeChange> changes, Predicate<RecipeChange> such) {
    return changes.stream().filter(such).noneMatch(RecipeChange::isNew);
  }

  private static String some(long number, String one, String more) {
    return number == 0 ? "" : ", " + Plural.of(number, one, more);
  }
}
