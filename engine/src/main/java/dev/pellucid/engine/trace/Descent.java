package dev.pellucid.engine.trace;

import dev.pellucid.engine.records.Circles;
import dev.pellucid.engine.trace.Page.Taken;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The numbers that records name and have, each in a place after all that it was made of; only where
 * batches take each other in a circle no order can hold, and these stand together.
 */
final class Descent {
  private final List<String> keys = new ArrayList<>();
  private final Map<String, Integer> places = new HashMap<>();
  private final List<Optional<Page>> pages = new ArrayList<>();
  private final int[][] taken;
  private final int[][] takers;
  private final int[] circle;
  private final boolean[] inCircle;

  Descent(Collection<Page> records) {
    Map<String, Page> byKey = new HashMap<>();
    Map<String, Integer> numbers = new HashMap<>();
    for (Page page : records) {
      byKey.put(page.key(), page);
      numbers.putIfAbsent(page.key(), numbers.size());
      page.taken().forEach(one -> numbers.putIfAbsent(one.key(), numbers.size()));
    }
    String[] named = new String[numbers.size()];
    int[][] leads = new int[numbers.size()][0];
    numbers.forEach((key, number) -> named[number] = key);
    byKey.forEach((key, page) -> leads[place(numbers, key)] = taken(page, numbers));
    Circles circles = new Circles(leads);
    this.circle = new int[named.length];
    for (int number : circles.order()) {
      circle[keys.size()] = circles.group(number);
      places.put(named[number], keys.size());
      keys.add(named[number]);
      pages.add(Optional.ofNullable(byKey.get(named[number])));
    }
    this.taken = new int[named.length][0];
    for (int place = 0; place < taken.length; place++) {
      taken[place] = pages.get(place).map(page -> taken(page, places)).orElse(new int[0]);
    }
    this.takers = takers(records);
    this.inCircle = inCircle();
  }

  private static int place(Map<String, Integer> of, String key) {
    Integer place = of.get(key);
    if (place == null) {
      throw new IllegalArgumentException("no record names " + key);
    }
    return place;
  }

  private static int[] taken(Page page, Map<String, Integer> places) {
    return page.taken().stream().map(Taken::key).mapToInt(key -> place(places, key)).toArray();
  }

  /** By place, the places of the batches that name it, in the order of their days. */
  private int[][] takers(Collection<Page> records) {
    int[] counts = new int[keys.size()];
    int[][] takers = new int[keys.size()][0];
    for (Page page : records) {
      int taker = of(page);
      for (int one : Arrays.stream(taken[taker]).distinct().toArray()) {
        if (counts[one] == takers[one].length) {
          takers[one] = Arrays.copyOf(takers[one], 1 + 2 * counts[one]);
        }
        takers[one][counts[one]] = taker;
        counts[one]++;
      }
    }
    for (int place = 0; place < takers.length; place++) {
      takers[place] = Arrays.copyOf(takers[place], counts[place]);
    }
    return takers;
  }

  private boolean[] inCircle() {
    boolean[] in = new boolean[circle.length];
    for (int place = 0; place < in.length; place++) {
      for (int one : taken[place]) {
        in[place] |= circle[one] == circle[place];
      }
    }
    return in;
  }

  int size() {
    return keys.size();
  }

  /** The place of a number; absent where no record names it or is of it. */
  OptionalInt place(String key) {
    Integer place = places.get(key);
    return place == null ? OptionalInt.empty() : OptionalInt.of(place);
  }

  String key(int place) {
    return keys.get(place);
  }

  /** The place of a batch. */
  int of(Page page) {
    return place(places, page.key());
  }

  /** The record of a batch. */
  Page page(int batch) {
    return pages.get(batch).orElseThrow();
  }

  /** The places of what a batch takes, one for each {@link Page#taken()}. */
  int[] taken(int place) {
    return taken[place];
  }

  /** The batches that name a number, in the order of their days. */
  List<Page> takers(String key) {
    OptionalInt place = place(key);
    return place.isPresent()
        ? Arrays.stream(takers[place.getAsInt()]).mapToObj(this::page).toList()
        : List.of();
  }

  /** The places of the batches that name a number. */
  int[] takers(int place) {
    return takers[place];
  }

  /** Whether a batch holds itself, if the records are right. */
  boolean isInCircle(String key) {
    return place(key).stream().anyMatch(place -> inCircle[place]);
  }

  /** Whether two are one, or are in a circle together. */
  boolean areTogether(int one, int other) {
    return circle[one] == circle[other];
  }

  /** Whether one stands where a way from it to the other can be. */
  boolean isBeforeOrWith(int one, int other) {
    return circle[one] <= circle[other];
  }
}
