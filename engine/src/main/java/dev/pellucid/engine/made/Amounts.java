package dev.pellucid.engine.made;

import dev.pellucid.engine.made.Ledger.Page;
import dev.pellucid.engine.made.Ledger.Taken;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How many kg of a number are in a batch, as weighed in at its first weighing: of a batch that was
 * taken in part, that part of what it holds, water and losses apart.
 *
 * <p>Records that are right hold no circle. Where batches name each other as lots all the same, no
 * kg is told of what passes between them.
 */
final class Amounts {
  private final Ledger ledger;
  private final Map<String, List<Page>> takers = new HashMap<>();
  private final Map<String, Set<String>> holders = new HashMap<>();
  private final Map<String, Map<String, Kilograms>> known = new HashMap<>();

  Amounts(Ledger ledger) {
    this.ledger = ledger;
    for (Page page : ledger.pages()) {
      for (Taken taken : page.taken()) {
        List<Page> of = takers.computeIfAbsent(taken.key(), none -> new ArrayList<>());
        if (!of.contains(page)) {
          of.add(page);
        }
      }
    }
  }

  /** The batches that name a number. */
  List<Page> takers(String key) {
    return takers.getOrDefault(key, List.of());
  }

  /** The batches that hold a number, through any others; the number itself only in a circle. */
  Set<String> holders(String key) {
    Set<String> told = holders.get(key);
    if (told == null) {
      told = new LinkedHashSet<>();
      Deque<String> next = new ArrayDeque<>(List.of(key));
      while (!next.isEmpty()) {
        for (Page page : takers(next.remove())) {
          if (told.add(page.key())) {
            next.add(page.key());
          }
        }
      }
      holders.put(key, told);
    }
    return told;
  }

  /** Whether a batch holds itself, if the records are right. */
  boolean isInCircle(String key) {
    return holders(key).contains(key);
  }

  /** kg of a number in a batch. */
  private Kilograms in(String key, Page page) {
    Map<String, Kilograms> ofKey = known.computeIfAbsent(key, none -> new HashMap<>());
    Kilograms told = ofKey.get(page.key());
    if (told == null) {
      told = Kilograms.NONE;
      for (Taken taken : page.taken()) {
        told = told.plus(taken.key().equals(key) ? taken.kg() : through(key, taken, page));
      }
      ofKey.put(page.key(), told);
    }
    return told;
  }

  /** kg of a number that come into a batch with another batch that it takes. */
  Kilograms through(String key, Taken taken, Page page) {
    if (!holders(key).contains(taken.key())) {
      return Kilograms.NONE;
    }
    boolean circle = isInCircle(taken.key()) && holders(page.key()).contains(taken.key());
    if (circle) {
      return Kilograms.NOT_TOLD;
    }
    Page from = ledger.page(taken.key()).orElseThrow();
    boolean told = taken.kg().whole() && from.made().isPresent();
    return in(key, from)
        .part(
            told
                ? OptionalDouble.of(taken.kg().told() / from.made().getAsDouble())
                : OptionalDouble.empty());
  }
}
