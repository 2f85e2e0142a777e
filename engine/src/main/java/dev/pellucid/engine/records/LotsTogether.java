package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * What one lot tells against what the others of the store do: a line that only this one lacks, a
 * quantity whose point has slipped. Where there are few others nothing is said.
 *
 * <p>Quantities are compared with other deliveries of the same ingredient; else by how much feed a
 * delivery lasts for, by what batches ask of it. A store buys for weeks, not for a day of one thing
 * and a year of another. What is taken in small shares is left out.
 */
final class LotsTogether {
  static final Code QUANTITY = new Code("lot-quantity-off");
  static final Code UNDATED = new Code("lot-without-best-before");

  private static final int FEWEST = 3;
  private static final double MOST = 0.75;

  /** Quantities so far from the others are looked at, and so near they are alike; no source. */
  private static final double FAR = 4;

  private static final double NEAR = 3;

  /** What is taken in less than this is bought by the sack, whatever is made of it. */
  private static final double SMALL = 0.01;

  /** So many days nobody need have looked. */
  private static final int DAYS = 2;

  private static final List<String> AGEING = List.of("crude-protein", "crude-fat", "starch");

  private final FeedTables tables;
  private final LocalDate day;
  private final Map<String, Double> shares = new HashMap<>();
  private final Set<String> named = new HashSet<>();

  /** Whether what each batch takes is known; else how long a delivery lasts is not. */
  private final boolean whole;

  LotsTogether(FeedTables tables, List<Use> uses, LocalDate day) {
    this.tables = tables;
    this.day = day;
    Map<String, Integer> count = new HashMap<>();
    for (Use use : uses) {
      named.add(use.lot());
      Lot lot = tables.lots().get(use.lot());
      if (lot != null) {
        shares.merge(lot.ingredient(), use.share(), Double::sum);
        count.merge(lot.ingredient(), 1, Integer::sum);
      }
    }
    count.forEach((ingredient, times) -> shares.computeIfPresent(ingredient, (i, s) -> s / times));
    this.whole = isWhole(tables, named);
  }

  private static boolean isWhole(FeedTables tables, Set<String> named) {
    return tables.batches().values().stream()
        .flatMap(record -> record.entries().stream())
        .filter(entry -> !entry.written().isBlank())
        .allMatch(entry -> named.contains(entry.lot()) && fits(tables, entry));
  }

  /** Whether a line names no lot of something else. */
  private static boolean fits(FeedTables tables, BatchRecord.Entry entry) {
    Lot lot = tables.lots().get(entry.lot());
    return lot == null
        || lot.ingredient().equals(entry.line())
        || !tables.ingredients().containsKey(entry.line());
  }

  static List<Code> codes() {
    return List.of(QUANTITY, UNDATED);
  }

  /** Whether others than this one are inspected as a rule. */
  static boolean areInspected(FeedTables tables, Lot lot) {
    int others = 0;
    int inspected = 0;
    for (Lot other : tables.lots().values()) {
      if (!other.number().equals(lot.number())) {
        others++;
        inspected += other.isLookedAt() ? 1 : 0;
      }
    }
    return inspected >= FEWEST && inspected >= MOST * others;
  }

  void look(Consumer<Finding> out) {
    for (Lot lot : tables.lots().values()) {
      boolean old = lot.received().plusDays(DAYS).isBefore(day) || named.contains(lot.number());
      if (lot.states().isEmpty() && old && areInspected(tables, lot)) {
        out.accept(LotNotInspected.atLot(lot));
      }
      if (lot.bestBefore().isEmpty() && areDated(lot)) {
        out.accept(undated(lot));
      }
      quantity(lot).ifPresent(out);
    }
  }

  /** Whether its ingredient ages, and all others that do tell their last good day. */
  private boolean areDated(Lot lot) {
    int others = 0;
    int dated = 0;
    boolean same = false;
    for (Lot other : tables.lots().values()) {
      if (!other.number().equals(lot.number())) {
        others += ages(other) ? 1 : 0;
        dated += ages(other) && other.bestBefore().isPresent() ? 1 : 0;
        same |= other.ingredient().equals(lot.ingredient()) && other.bestBefore().isPresent();
      }
    }
    return same || (ages(lot) && dated >= FEWEST && dated >= MOST * others);
  }

  private boolean ages(Lot lot) {
    Ingredient library = tables.ingredients().get(lot.ingredient());
    if (library != null && library.additive().isPresent()) {
      return true;
    }
    for (String nutrient : AGEING) {
      Optional<Content> told =
          Optional.ofNullable(library).flatMap(one -> LotContents.told(one, nutrient));
      if (told.isPresent() && told.get().high() > 0) {
        return true;
      }
    }
    return false;
  }

  private static Finding undated(Lot lot) {
    return Finding.warning(
            UNDATED,
            lot.aged(),
            "lot "
                + lot.number()
                + " of "
                + lot.ingredient()
                + " has no best-before, the others have one")
        .helping("copy the last good day from its sack or its papers")
        .helping("without it nobody is told when it is too old, nor which lot to take first");
  }

  private Optional<Finding> quantity(Lot lot) {
    List<Double> same = new ArrayList<>();
    List<Double> others = new ArrayList<>();
    Double share = shares.get(lot.ingredient());
    for (Lot other : tables.lots().values()) {
      if (other.number().equals(lot.number())) {
        continue;
      }
      if (other.ingredient().equals(lot.ingredient())) {
        same.add(other.kg());
      }
      Double its = shares.get(other.ingredient());
      if (share != null && share > SMALL && its != null && its > SMALL) {
        others.add(other.kg() / its * share);
      }
    }
    for (double kg : same) {
      if (isNear(lot.kg(), kg)) {
        return Optional.empty();
      }
    }
    boolean ofSame = same.size() >= FEWEST;
    if (!ofSame && (!whole || others.size() < FEWEST)) {
      return Optional.empty();
    }
    double usual = middle(ofSame ? same : others);
    if (lot.kg() < usual * FAR && lot.kg() > usual / FAR) {
      return Optional.empty();
    }
    Optional<Double> meant = TenTimes.moved(lot.kg(), usual / NEAR, usual * NEAR);
    return meant.map(kg -> off(lot, ofSame, usual, kg));
  }

  private static boolean isNear(double kg, double other) {
    return kg < other * NEAR && kg > other / NEAR;
  }

  private static double middle(List<Double> figures) {
    Collections.sort(figures);
    return figures.get(figures.size() / 2);
  }

  private static Finding off(Lot lot, boolean ofSame, double usual, double meant) {
    String kg = Figures.plain(lot.kg(), Unit.KG);
    return Finding.warning(
            QUANTITY,
            lot.weighed(),
            "lot "
                + lot.number()
                + " is "
                + kg
                + " of "
                + lot.ingredient()
                + (ofSame
                    ? ", other deliveries of it are about "
                    : ", as the others are bought it would be about ")
                + Figures.plain(Math.rint(usual), Unit.KG))
        .helping(Meant.question(Figures.plain(meant, Unit.KG)))
        .helping("if so much came, leave it: the next delivery like it ends this warning");
  }
}
