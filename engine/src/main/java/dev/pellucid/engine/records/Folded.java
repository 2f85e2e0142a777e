package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What follows from one figure that is far off is told with it: limits that are broken by a weight
 * of 140 kg for 14 kg are no findings of their own, for all of them are fixed by one stroke. Where
 * the figure stands in another record or at a lot, they are one finding of this record. None of
 * them is milder than what it stands for.
 */
final class Folded {
  private static final Set<String> FOLLOWING =
      Set.of("made-outside-limits", "made-not-reckoned", "yield-off-plan", "lot-too-moist");

  private static final String LEGAL = "the legal maximum";
  private static final int NAMED = 3;

  private Folded() {}

  /** Whether it stands where something shows, and not where it is fixed. */
  static boolean isConsequence(Code code) {
    return FOLLOWING.contains(code.text()) || code.equals(StoreBooks.OVERDRAWN);
  }

  static void tell(MadeBatch batch, List<Finding> said, Consumer<Finding> out) {
    List<Finding> following = new ArrayList<>();
    int legal = 0;
    for (Finding one : said) {
      if (FOLLOWING.contains(one.code().text())) {
        // What the law asks is named first, for not all of them are.
        following.add(one.headline().contains(LEGAL) ? legal++ : following.size(), one);
      }
    }
    if (following.isEmpty()) {
      said.forEach(out);
      return;
    }
    Finding cause = cause(batch, said);
    if (cause != null) {
      for (Finding one : said) {
        if (!following.contains(one)) {
          out.accept(one.equals(cause) ? with(cause, following) : one);
        }
      }
      return;
    }
    Optional<Elsewhere> elsewhere = following.size() > 1 ? Elsewhere.of(batch) : Optional.empty();
    if (elsewhere.isEmpty()) {
      said.forEach(out);
      return;
    }
    for (Finding one : said) {
      if (!following.contains(one)) {
        out.accept(one);
      }
    }
    out.accept(together(elsewhere.get(), following));
  }

  private static @Nullable Finding cause(MadeBatch batch, List<Finding> said) {
    List<Span> gross = WeightOffTarget.gross(batch);
    Optional<Span> untimely = DryingOffChart.slip(batch);
    for (Finding one : said) {
      boolean weight = one.code().equals(WeightOffTarget.CODE) && gross.contains(one.span());
      boolean time =
          one.code().equals(DryingOffChart.CODE) && untimely.filter(one.span()::equals).isPresent();
      if (weight || time) {
        return one;
      }
    }
    return null;
  }

  private static Finding with(Finding cause, List<Finding> following) {
    List<String> notes = new ArrayList<>(cause.notes());
    for (Finding one : following.subList(0, Math.min(NAMED, following.size()))) {
      notes.add("with it, " + one.headline());
    }
    if (following.size() > NAMED) {
      notes.add("and " + Plural.of(following.size() - NAMED, "thing", "things") + " more");
    }
    List<String> helps = new ArrayList<>(cause.helps());
    for (String help : following.get(0).helps()) {
      helps.add("if it is no slip: " + help);
    }
    return new Finding(
        cause.code(),
        gravest(cause.severity(), following),
        cause.headline(),
        cause.span(),
        cause.label(),
        cause.related(),
        notes,
        helps,
        cause.edits(),
        cause.about());
  }

  private static Finding together(Elsewhere elsewhere, List<Finding> following) {
    Finding first = following.get(0);
    for (Finding one : following) {
      first = one.severity().compareTo(first.severity()) < 0 ? one : first;
    }
    Finding all =
        Finding.of(
                first.code(),
                gravest(first.severity(), following),
                elsewhere.place(),
                first.headline()
                    + ", and "
                    + Plural.of(following.size() - 1, "more thing comes", "more things come")
                    + " of "
                    + elsewhere.words())
            .seeing("look there first", elsewhere.written())
            .about(first.about());
    for (Finding one : following.subList(0, Math.min(NAMED + 1, following.size()))) {
      all = one.equals(first) ? all : all.noting(one.headline());
    }
    return all.helping("fix that where it is a slip").helping(first.helps().get(0));
  }

  private static Severity gravest(Severity own, List<Finding> following) {
    Severity gravest = own;
    for (Finding one : following) {
      gravest = one.severity().compareTo(gravest) < 0 ? one.severity() : gravest;
    }
    return gravest;
  }

  /** A lot, or a batch of a premix, that is itself far off. */
  private record Elsewhere(Span place, String words, Span written) {
    static Optional<Elsewhere> of(MadeBatch batch) {
      for (Used used : batch.used()) {
        Optional<Lot> lot = batch.lot(used.entry());
        if (lot.isPresent()) {
          Optional<Span> off = UnlikeLibrary.gross(batch.tables(), lot.get());
          if (off.isPresent()) {
            String words = "what lot " + lot.get().number() + " holds";
            return Optional.of(new Elsewhere(used.entry().lotPlace(), words, off.get()));
          }
        }
        Optional<BatchRecord> made = batch.batch(used.entry());
        if (made.isPresent()) {
          List<Span> gross = ofPremix(batch, used, made.get());
          if (!gross.isEmpty()) {
            String words = "what was weighed for " + made.get().number();
            return Optional.of(new Elsewhere(used.entry().lotPlace(), words, gross.get(0)));
          }
        }
      }
      return Optional.empty();
    }

    private static List<Span> ofPremix(MadeBatch batch, Used used, BatchRecord made) {
      Optional<ResolvedPremix> premix =
          used.ask()
              .material()
              .byKind(
                  single -> Optional.empty(),
                  premixed -> Optional.of(premixed.premix()),
                  reworked -> Optional.empty());
      return premix.isEmpty()
          ? List.of()
          : WeightOffTarget.gross(
              new MadeBatch(
                  made,
                  BatchTarget.of(premix.get(), made.kg()),
                  batch.tables(),
                  Optional.empty(),
                  batch.judgement(),
                  batch.overMaxima(),
                  batch.put(),
                  batch.day()));
    }
  }
}
