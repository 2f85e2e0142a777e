package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.FileChange;
import dev.pellucid.engine.compare.FindingsMoved;
import dev.pellucid.engine.compare.Found;
import dev.pellucid.engine.compare.PremixChange;
import dev.pellucid.engine.compare.PremixChange.SupplyMoved;
import dev.pellucid.engine.compare.PremixState.Supply;
import dev.pellucid.engine.compare.Printed;
import dev.pellucid.engine.compare.RecipeChange.WeightMoved;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the check and the papers say otherwise, in sentences, and what became of a premix. */
final class CompareFindings {
  private static final int MONEY_DECIMALS = 4;
  private static final int MASS_DECIMALS = 3;

  private CompareFindings() {}

  /**
   * A line for each, the new ones first.
   *
   * @param unsought whether those that are gone are only not looked for any more
   */
  static List<String> lines(FindingsMoved findings, boolean unsought) {
    List<String> lines = new ArrayList<>();
    findings.fresh().forEach(one -> lines.add(fresh(one)));
    String gone = unsought ? "not looked for any more: " : "gone: ";
    findings.gone().forEach(one -> lines.add(gone + one.severity().word() + " " + words(one)));
    return lines;
  }

  private static String fresh(Found one) {
    String word = one.severity().word();
    return one.severity() == Severity.ERROR
        ? "NEW " + word.toUpperCase(Locale.ROOT) + " " + words(one)
        : "new " + word + " " + words(one);
  }

  private static String words(Found one) {
    return one.headline() + " [" + one.code() + "], line " + one.line();
  }

  /** {@code prices/2026-11.yaml: 1 warning is new}. */
  static String file(FileChange file) {
    return file.path() + ": " + CompareTally.of(file.findings(), false);
  }

  /** Which papers are to be printed anew; of the label those parts that are no figures of it. */
  static List<String> papers(Printed.Moved printed, List<String> reprint) {
    List<String> sheet = new ArrayList<>();
    List<String> label = new ArrayList<>(reprint);
    for (String part : printed.parts()) {
      (part.startsWith("label: ") ? label : sheet).add(part.substring(part.indexOf(' ') + 1));
    }
    for (String fact : printed.facts()) {
      if (fact.startsWith("label")) {
        label.add(fact.startsWith("label: ") ? heading(fact) : "whom it is for");
      }
    }
    List<String> lines = new ArrayList<>();
    if (!sheet.isEmpty()) {
      lines.add("sheet to print again: " + String.join(", ", sheet));
    }
    if (!label.isEmpty()) {
      lines.add("label to print again: " + String.join(", ", label));
    }
    return lines;
  }

  private static String heading(String fact) {
    return fact.substring("label: ".length());
  }

  /** All that is told of a premix. */
  static List<String> premix(PremixChange change, String currency, int most) {
    List<String> lines = new ArrayList<>(lines(change.findings(), false));
    lines.addAll(premixDetails(change, currency, most));
    return lines;
  }

  /** The same without findings. */
  static List<String> premixDetails(PremixChange change, String currency, int most) {
    List<String> lines = new ArrayList<>();
    cost(change, currency, lines);
    some(change.text(), most, lines, "lines of text");
    change.batches().ifPresent(batch -> lines.add("made at once: " + kg(batch)));
    some(change.supplies().stream().map(CompareFindings::supply).toList(), most, lines, "supplies");
    some(
        change.weights().stream().map(one -> one.line() + " " + kg(one)).toList(),
        most,
        lines,
        "weights");
    lines.addAll(change.printed().facts());
    lines.addAll(papers(change.printed(), List.of()));
    if (!change.because().isEmpty()) {
      lines.add("because of " + String.join(", ", change.because()));
    }
    return lines;
  }

  /** A premix in one line. */
  static String premixInOne(PremixChange change, String currency) {
    List<String> parts = new ArrayList<>();
    String findings = CompareTally.of(change.findings(), false);
    if (!findings.isEmpty()) {
      parts.add(findings);
    }
    cost(change, currency, parts);
    if (!change.weights().isEmpty()) {
      parts.add(change.weights().size() + " of its weights change");
    }
    if (!change.printed().isNone()) {
      parts.add("sheet to print again");
    }
    return change.code()
        + "  premix, "
        + change.how().words()
        + (parts.isEmpty() ? "" : ": " + String.join("; ", parts));
  }

  private static void cost(PremixChange change, String currency, List<String> lines) {
    if (change.costMoves() && change.costBefore().isPresent() && change.costAfter().isPresent()) {
      Figures.Pair money =
          Figures.apart(
              change.costBefore().getAsDouble(), change.costAfter().getAsDouble(), MONEY_DECIMALS);
      lines.add("cost " + money.value() + " -> " + money.other() + " " + currency + "/kg");
    } else if (change.costMoves()) {
      lines.add(
          change.costAfter().isPresent() ? costOf(change, currency) : "its cost is not given");
    }
  }

  private static String costOf(PremixChange change, String currency) {
    return "cost " + CompareMoney.money(change.costAfter().orElse(0)) + " " + currency + "/kg";
  }

  static String kg(WeightMoved one) {
    Figures.Pair kg = Figures.apart(one.before(), one.after(), MASS_DECIMALS);
    return kg.value() + " -> " + kg.other() + " kg";
  }

  /**
   * {@code supply of Vitamin C: 100 -> 120 mg/kg}, or what the premix holds for the same supply.
   */
  private static String supply(SupplyMoved one) {
    String what = one.asked() ? "supply of " : "holds of ";
    String words = what + one.nutrient() + (one.asked() ? " to a kg of feed: " : ": ");
    if (one.before().isEmpty() || one.after().isEmpty()) {
      return words
          + one.before().map(CompareFindings::asked).orElse("none")
          + " -> "
          + one.after().map(CompareFindings::asked).orElse("none");
    }
    Supply then = one.before().get();
    Supply now = one.after().get();
    if (!then.unit().equals(now.unit())) {
      return words + asked(then) + " -> " + asked(now);
    }
    double before = one.asked() ? then.asked() : then.fresh();
    double after = one.asked() ? now.asked() : now.fresh();
    int decimals = Figures.decimals(Math.max(before, after));
    Figures.Pair figures = Figures.apart(before, after, decimals);
    return words + figures.value() + " -> " + figures.other() + " " + now.unit();
  }

  private static String asked(Supply supply) {
    return Figures.plain(supply.asked()) + " " + supply.unit();
  }

  static void some(List<String> all, int most, List<String> lines, String what) {
    all.stream().limit(most).forEach(lines::add);
    if (all.size() > most) {
      lines.add("and " + (all.size() - most) + " more of the " + what);
    }
  }
}
