package dev.pellucid.engine.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A made-up store: lots with states, bins, returns and corrections, premixes of premixes, batches
 * that were made and batches that are planned. It says itself as YAML, and knows nothing of how a
 * store is reckoned.
 */
final class MadeUpStore {
  static final LocalDate FIRST = LocalDate.of(2026, 11, 1);
  static final int TODAY = 24;
  static final List<String> MEALS = List.of("maize", "soybean-meal", "fish-meal", "limestone");

  /** A state from a day on; {@code only} may be empty, {@code most} is 0 for none. */
  record Told(int day, String state, List<String> only, double most) {}

  /** A delivery; {@code until} is 0 where it does not age, {@code bin} may be empty. */
  record Came(
      String number,
      String meal,
      int day,
      int until,
      double kg,
      String bin,
      List<Told> told,
      double back,
      double thrown,
      double put) {}

  /** What a batch names; one of lot and bin, or neither; kg is 0 while it is planned. */
  record Named(String line, String lot, String bin, double kg) {}

  /** A batch. */
  record Batch(String code, int day, int serial, double kg, boolean made, List<Named> named) {
    String number() {
      return code + "-" + date(day) + "-" + serial;
    }
  }

  final List<Came> lots = new ArrayList<>();
  final Map<String, TreeSet<Integer>> emptied = new TreeMap<>();

  /** By code, the share of each part in percent; of feeds and premixes. */
  final Map<String, Map<String, Integer>> parts = new TreeMap<>();

  final List<Batch> batches = new ArrayList<>();
  final Map<String, Integer> packs = new TreeMap<>();

  private final Random random;

  static LocalDate date(int day) {
    return FIRST.plusDays(day);
  }

  static boolean isPremix(String code) {
    return code.startsWith("P");
  }

  MadeUpStore(long seed) {
    this.random = new Random(seed);
    parts.put("P-0", mixed(MEALS));
    parts.put("P-1", mixed(List.of("maize", "limestone", "P-0")));
    List<String> all = new ArrayList<>(MEALS);
    all.addAll(List.of("P-0", "P-1"));
    for (int i = 0; i < 3; i++) {
      parts.put("F-" + i, mixed(all));
    }
    MEALS.forEach(this::deliver);
    for (int i = 0; i < 4 + random.nextInt(6); i++) {
      batch(true, random.nextInt(TODAY + 1), 1 + i);
    }
    for (int i = 0; i < 2 + random.nextInt(6); i++) {
      batch(false, TODAY - 2 + random.nextInt(20), 20 + i);
    }
    MEALS.forEach(meal -> packs.put(meal, new int[] {5, 25, 40}[random.nextInt(3)]));
  }

  private Map<String, Integer> mixed(List<String> of) {
    Map<String, Integer> mixed = new TreeMap<>();
    int left = 100;
    for (int i = 0; i < of.size() - 1; i++) {
      int share = random.nextInt(3) == 0 ? 0 : random.nextInt(left / 2 + 1);
      if (share > 0) {
        mixed.put(of.get(i), share);
        left -= share;
      }
    }
    mixed.put(of.get(of.size() - 1), left);
    return mixed;
  }

  private void deliver(String meal) {
    for (int i = 0; i < random.nextInt(6); i++) {
      int day = random.nextInt(32);
      double kg = 5 + random.nextInt(60);
      boolean moved = random.nextInt(4) == 0;
      lots.add(
          new Came(
              meal.substring(0, 2).toUpperCase(Locale.ROOT) + "-" + i,
              meal,
              day,
              random.nextInt(5) == 0 ? 0 : day + 1 + random.nextInt(40),
              kg,
              random.nextInt(2) == 0 ? "B-" + meal + random.nextInt(2) : "",
              states(day),
              moved ? 1 + random.nextInt(4) : 0,
              moved ? random.nextInt(3) : 0,
              moved ? random.nextInt(7) - 3 : 0));
    }
    for (int i = 0; i < random.nextInt(3); i++) {
      emptied
          .computeIfAbsent("B-" + meal + random.nextInt(2), none -> new TreeSet<>())
          .add(random.nextInt(40));
    }
  }

  private List<Told> states(int from) {
    List<Told> told = new ArrayList<>();
    int day = from;
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      int dice = random.nextInt(10);
      List<String> only = new ArrayList<>();
      parts.keySet().stream().filter(code -> random.nextInt(3) == 0).forEach(only::add);
      if (dice < 5) {
        told.add(new Told(day, "passed", List.of(), 0));
      } else if (dice < 7) {
        double most = only.isEmpty() || random.nextBoolean() ? 5 + random.nextInt(20) : 0;
        told.add(new Told(day, "passed-for", only, most));
      } else {
        String state = List.of("waiting", "on-hold", "failed").get(random.nextInt(3));
        told.add(new Told(day, state, List.of(), 0));
      }
      day += 1 + random.nextInt(12);
    }
    return told;
  }

  private void batch(boolean made, int day, int serial) {
    List<String> codes = new ArrayList<>(parts.keySet());
    String code = codes.get(random.nextInt(codes.size()));
    double kg = 10 + random.nextInt(50);
    List<Named> named = new ArrayList<>();
    parts
        .getOrDefault(code, Map.of())
        .forEach(
            (line, share) -> {
              int times = made ? 1 + random.nextInt(2) : random.nextInt(4) == 0 ? 1 : 0;
              for (int i = 0; i < times; i++) {
                named.add(named(line, made ? (1 + random.nextInt(60)) / 4.0 : 0, day));
              }
            });
    if (made || !named.isEmpty() || random.nextBoolean()) {
      batches.add(new Batch(code, day, serial, kg, made, named));
    }
  }

  private Named named(String line, double kg, int day) {
    List<Named> there = new ArrayList<>();
    lots.stream()
        .filter(lot -> lot.meal().equals(line) && lot.day() <= day)
        .forEach(
            lot -> {
              there.add(new Named(line, lot.number(), "", kg));
              if (!lot.bin().isEmpty()) {
                there.add(new Named(line, "", lot.bin(), kg));
              }
            });
    batches.stream()
        .filter(batch -> batch.code().equals(line) && batch.day() <= day)
        .forEach(batch -> there.add(new Named(line, batch.number(), "", kg)));
    return there.isEmpty() || (kg > 0 && random.nextInt(8) == 0)
        ? new Named(line, "", "", kg)
        : there.get(random.nextInt(there.size()));
  }

  String lotsText() {
    StringBuilder text = new StringBuilder("lots:\n");
    for (Came lot : lots) {
      text.append(
          "  - number: %s\n    ingredient: %s\n    received: %s\n    quantity: %s kg\n"
              .formatted(lot.number(), lot.meal(), date(lot.day()), lot.kg()));
      text.append(lot.until() == 0 ? "" : "    best-before: " + date(lot.until()) + "\n");
      text.append(lot.bin().isEmpty() ? "" : "    bin: " + lot.bin() + "\n");
      text.append("    states:\n");
      lot.told().forEach(told -> text.append(state(told)));
      text.append(moved("returned", "weight", lot.back(), lot.day()));
      text.append(moved("disposed", "weight", lot.thrown(), lot.day()));
      text.append(moved("corrections", lot.put() < 0 ? "less" : "more", lot.put(), lot.day()));
    }
    if (!emptied.isEmpty()) {
      text.append("bins:\n");
    }
    emptied.forEach(
        (bin, days) ->
            days.forEach(
                day -> text.append("  - {bin: %s, emptied: %s}\n".formatted(bin, date(day)))));
    return text.toString();
  }

  private static String state(Told told) {
    return "      - {day: %s, by: gate, state: %s%s%s%s}\n"
        .formatted(
            date(told.day()),
            told.state(),
            told.only().isEmpty() ? "" : ", only-for: " + told.only(),
            told.most() == 0 ? "" : ", at-most: " + told.most() + " %",
            List.of("on-hold", "failed").contains(told.state()) ? ", because: smell" : "");
  }

  private static String moved(String key, String amount, double kg, int day) {
    return kg == 0
        ? ""
        : "    %s: [{day: %s, by: store, %s: %s kg, because: torn}]\n"
            .formatted(key, date(day), amount, Math.abs(kg));
  }

  String text(Batch batch) {
    StringBuilder text = new StringBuilder("size: " + batch.kg() + " kg\n");
    text.append(batch.named().isEmpty() ? "" : "weighed:\n");
    for (Named one : batch.named()) {
      text.append("  - {line: " + one.line());
      text.append(one.lot().isEmpty() ? "" : ", lot: " + one.lot());
      text.append(one.bin().isEmpty() ? "" : ", bin: " + one.bin());
      text.append(batch.made() ? ", weight: " + one.kg() + " kg}\n" : "}\n");
    }
    return text.toString();
  }

  String orderingText() {
    StringBuilder text =
        new StringBuilder(
            "from: 2026-11-02\nsource: pantry\nprices:\n  maize: 0.25 EUR/kg\nordering:\n");
    packs.forEach(
        (meal, kg) -> text.append("  %s: {pack: %d kg, lead-time: 5 d}\n".formatted(meal, kg)));
    return text.toString();
  }
}
