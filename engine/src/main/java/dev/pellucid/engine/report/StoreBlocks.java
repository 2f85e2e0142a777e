package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.FromStore;
import dev.pellucid.engine.plan.FromStore.Taken;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;

/** What a sheet says of the lots that it names. */
final class StoreBlocks {
  private static final String LOTS =
      "Lots are those named for this batch, else those of the store that expire first. Where"
          + " another is taken, write its number over it.";
  private static final String BINS =
      "Of a bin with several lots nobody knows which comes out: write the bin.";

  private StoreBlocks() {}

  static List<Block> of(BatchPlan plan) {
    FromStore store = plan.fromStore();
    List<Block> blocks = new ArrayList<>();
    List<String> warnings = new ArrayList<>();
    store.lacking().forEach(one -> warnings.add(lacking(one)));
    store.toBeMade().forEach(one -> warnings.add(toBeMade(one)));
    if (!warnings.isEmpty()) {
      blocks.add(new Warnings(warnings));
    }
    if (!store.lots().isEmpty()) {
      blocks.add(new Words(String.join(" ", words(plan, store))));
    }
    return blocks;
  }

  private static List<String> words(BatchPlan plan, FromStore store) {
    List<String> words = new ArrayList<>();
    words.add(plan.rebalanced().isPresent() ? RebalancedBlocks.LOTS : LOTS);
    if (store.afterPlanned() > 0) {
      words.add(afterPlanned(store.afterPlanned()));
    }
    store.splits().forEach(split -> words.add(split(split)));
    if (store.lots().values().stream().flatMap(List::stream).anyMatch(Taken::isMixed)) {
      words.add(BINS);
    }
    return words;
  }

  /** Each is reckoned by itself after the planned ones, so two may name the same lot. */
  private static String afterPlanned(int planned) {
    return "What "
        + Plural.of(planned, "planned batch takes", "planned batches take")
        + " is put aside; another sheet without a number may name the same lots.";
  }

  private static String toBeMade(String number) {
    return number + " is planned and not made yet: make it first.";
  }

  private static String lacking(FromStore.Lacking lacking) {
    String passedOver =
        lacking.passedOver().isEmpty()
            ? ""
            : " Not taken: " + String.join("; ", lacking.passedOver()) + ".";
    return "The store lacks "
        + Figures.plain(lacking.kg(), Unit.KG)
        + " of "
        + lacking.title()
        + ": no more of it is there that is passed for it, dry and good on this day."
        + passedOver;
  }

  private static String split(FromStore.Split split) {
    StringBuilder words = new StringBuilder(split.title() + ": ");
    int last = split.taken().size() - 1;
    for (Taken taken : split.taken().subList(0, last)) {
      words
          .append(Figures.plain(taken.kg(), Unit.KG))
          .append(" of ")
          .append(taken.isMixed() ? "" : "lot ")
          .append(taken.words())
          .append(", then ");
    }
    return words.append(split.taken().get(last).words()).append('.').toString();
  }
}
