package dev.pellucid.engine.trace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A made-up mill with all that can lead a lot from one place to another: premixes in premixes,
 * rework, bins that are topped up, flushes and fines that are put into batches, part bags that are
 * filled up, batches that follow each other on the lines of two plants; and with deliveries,
 * returns, disposals, corrections, counts and samples. Some lots are not told, some wrong, some
 * come later than what they are in; some batches were made and tell no weight; names of bins and of
 * lines are written now so and now so, and some lines name nothing at all.
 */
final class RandomMill {
  static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
  private static final List<String> PARTIES =
      List.of("Withybeck", "Lower Pond", "Hall Farm", "withybeck");

  /**
   * {@code what} is a key of the files; {@code bags} and {@code party} may be none; kg of a
   * correction that adds are below nothing.
   */
  record Move(String what, LocalDate day, int bags, double loose, String party) {}

  /** A lot; {@code bin} may be empty. */
  record Delivery(
      String number, String kind, LocalDate day, double kg, String bin, List<Move> moves) {}

  /** A line of a record; all but its name may be empty. */
  record Line(String name, String lot, String bin, String kg) {
    String kind() {
      String small = name.toLowerCase(Locale.ROOT);
      return small.startsWith("rework ") ? small.substring(7) : small;
    }

    boolean isRework() {
      return name.toLowerCase(Locale.ROOT).startsWith("rework ");
    }
  }

  /** A flush before a batch; {@code kg} is 0 where there was none. */
  record Flush(double kg, String with, String lot, String to) {}

  /** Bags; {@code of} is 0 where none is told. */
  record Bags(int full, double of, double rest, String begunWith, double begunKg) {
    double kg() {
      return full * of + rest;
    }
  }

  /** A record. */
  record Batch(
      String number,
      String code,
      LocalDate day,
      int size,
      List<Line> lines,
      String after,
      Flush flush,
      double water,
      double fines,
      String finesTo,
      Bags bags,
      List<Double> samples,
      List<Move> moves,
      boolean closed) {
    boolean isMade() {
      boolean weighed = lines.stream().anyMatch(line -> !line.kg().isEmpty());
      return closed
          || weighed
          || bags.of() > 0
          || water > 0
          || fines > 0
          || !samples.isEmpty()
          || !moves.isEmpty();
    }
  }

  private final Random random;
  final Map<String, List<String>> recipes = new LinkedHashMap<>();
  final Map<String, String> plants = new TreeMap<>();
  final Map<String, List<LocalDate>> emptied = new TreeMap<>();
  final List<Delivery> lots = new ArrayList<>();
  final List<Batch> batches = new ArrayList<>();
  final LocalDate today;
  final TreeSet<String> premixes = new TreeSet<>();
  private final List<String> numbered = new ArrayList<>();

  RandomMill(long seed) {
    this.random = new Random(seed);
    this.today = FIRST.plusDays(random.nextInt(20));
    List<String> usable = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(4); i++) {
      usable.add("meal-" + (char) ('a' + i));
    }
    deliveries(List.copyOf(usable));
    for (int i = 0; i < random.nextInt(4); i++) {
      recipe("P-" + i, some(usable, 1 + random.nextInt(3)));
      premixes.add("P-" + i);
      usable.add("P-" + i);
    }
    int feeds = 1 + random.nextInt(3);
    for (int i = 0; i < feeds; i++) {
      List<String> lines = some(usable, 1 + random.nextInt(4));
      if (random.nextInt(2) == 0) {
        lines.add("rework F-" + random.nextInt(feeds));
      }
      recipe("F-" + i, lines);
    }
    for (String code : recipes.keySet()) {
      for (int i = 1; i <= 1 + random.nextInt(4); i++) {
        numbered.add(code + "-" + day() + "-" + i);
      }
    }
    numbered.forEach(number -> batches.add(batch(number)));
  }

  private boolean oneIn(int times) {
    return random.nextInt(times) == 0;
  }

  private double kg(int most) {
    return (1 + random.nextInt(most * 10)) / 10.0;
  }

  private LocalDate day() {
    return FIRST.plusDays(random.nextInt(14));
  }

  /** One of three bins, written in one of several ways. */
  private String bin() {
    String bin = "B" + random.nextInt(3);
    return switch (random.nextInt(6)) {
      case 0 -> bin.toLowerCase(Locale.ROOT);
      case 1 -> bin.charAt(0) + "  " + bin.charAt(1);
      case 2 -> bin.charAt(0) + "-" + bin.charAt(1);
      default -> bin;
    };
  }

  private static String capitals(String name) {
    return name.toUpperCase(Locale.ROOT);
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private List<String> some(List<String> of, int most) {
    TreeSet<String> picked = new TreeSet<>();
    for (int i = 0; i < most; i++) {
      picked.add(one(of));
    }
    return new ArrayList<>(picked);
  }

  private void recipe(String code, List<String> lines) {
    recipes.put(code, lines);
    plants.put(code, oneIn(3) ? "annex" : "shed");
  }

  private void deliveries(List<String> kinds) {
    for (String kind : kinds) {
      for (int i = 0; i < random.nextInt(4); i++) {
        String bin = oneIn(2) ? bin() : "";
        List<Move> moves = new ArrayList<>();
        for (String what : List.of("returned", "disposed", "corrections", "counted")) {
          if (oneIn(3)) {
            double kg = oneIn(2) ? kg(60) : kg(900);
            boolean more = what.equals("corrections") && oneIn(2);
            moves.add(new Move(what, day(), 0, more ? -kg : kg, ""));
          }
        }
        lots.add(
            new Delivery(
                "L" + lots.size() + "-" + random.nextInt(99), kind, day(), kg(900), bin, moves));
      }
    }
    for (int i = 0; i < 4; i++) {
      emptied.computeIfAbsent(bin(), none -> new ArrayList<>()).add(day());
    }
  }

  static LocalDate dayOf(String batch) {
    return LocalDate.parse(batch.substring(4, 14));
  }

  private Batch batch(String number) {
    boolean planned = oneIn(8);
    String code = number.substring(0, 3);
    List<Line> lines = new ArrayList<>();
    for (String name : recipes.getOrDefault(code, List.of())) {
      for (int i = 0; !oneIn(10) && i <= random.nextInt(2); i++) {
        lines.add(line(name, number, planned));
      }
    }
    if (oneIn(20)) {
      lines.add(line("mael-" + random.nextInt(9), number, planned));
    }
    boolean made = oneIn(3) || lines.stream().anyMatch(line -> !line.kg().isEmpty());
    Bags bags = made && !oneIn(3) ? bags(number) : new Bags(0, 0, 0, "", 0);
    List<Double> samples = new ArrayList<>();
    for (int i = 0; i < random.nextInt(3); i++) {
      samples.add(kg(2));
    }
    boolean sieved = made && oneIn(2);
    return new Batch(
        number,
        code,
        dayOf(number),
        10 + random.nextInt(90),
        lines,
        oneIn(3) ? earlier(number) : "",
        oneIn(3) ? flush(number) : new Flush(0, "", "", ""),
        made && oneIn(4) ? kg(20) : 0,
        sieved ? kg(9) : 0,
        sieved ? to() : "",
        bags,
        made ? samples : List.of(),
        bags.of() > 0 ? moves() : List.of(),
        oneIn(6));
  }

  private List<Move> moves() {
    List<Move> moves = new ArrayList<>();
    for (int i = 0; i < random.nextInt(6); i++) {
      String what = one(List.of("delivered", "delivered", "returned", "disposed", "counted"));
      boolean party = what.equals("delivered") || what.equals("returned");
      int bags = random.nextInt(4);
      double loose = bags == 0 || oneIn(3) ? kg(20) : 0;
      moves.add(new Move(what, day(), bags, loose, party ? one(PARTIES) : ""));
    }
    return moves;
  }

  private Bags bags(String number) {
    String begun = oneIn(2) ? earlier(number) : "";
    double kg = begun.isEmpty() ? 0 : kg(6);
    return new Bags(1 + random.nextInt(6), 10 + random.nextInt(20), kg(9), begun, kg);
  }

  /** Another batch that is not of a later day. */
  private String earlier(String number) {
    List<String> there =
        numbered.stream()
            .filter(one -> !one.equals(number) && !dayOf(one).isAfter(dayOf(number)))
            .toList();
    return there.isEmpty() ? "" : one(there);
  }

  private Flush flush(String number) {
    Delivery of = lots.isEmpty() ? null : one(lots);
    if (of == null) {
      return new Flush(0, "", "", "");
    }
    return new Flush(kg(30), of.kind(), oneIn(2) ? of.number() : "", oneIn(4) ? number : to());
  }

  /** A batch, or words. */
  private String to() {
    return oneIn(3) ? "the pigs" : one(numbered);
  }

  private Line line(String name, String batch, boolean planned) {
    String kg = planned || oneIn(12) ? "" : String.valueOf(kg(400));
    String lot = oneIn(4) ? "" : lotFor(name, batch);
    boolean bin = lot.isEmpty() ? oneIn(2) : oneIn(8);
    return new Line(oneIn(8) ? capitals(name) : name, lot, bin ? bin() : "", kg);
  }

  /** Mostly one of the right kind that was there; now and then a wrong one, or a later one. */
  private String lotFor(String name, String batch) {
    String kind = new Line(name, "", "", "").kind();
    int dice = random.nextInt(16);
    List<String> there = new ArrayList<>();
    for (Delivery lot : lots) {
      boolean late = lot.day().isAfter(dayOf(batch));
      if (dice == 0 || (lot.kind().equals(kind) && (dice < 3 || !late))) {
        there.add(lot.number());
      }
    }
    for (String one : numbered) {
      boolean late = dayOf(one).isAfter(dayOf(batch));
      if (one.toLowerCase(Locale.ROOT).startsWith(kind) && (dice < 3 || !late)) {
        there.add(one);
      }
    }
    if (there.isEmpty()) {
      return "";
    }
    String number = one(there);
    return dice == 8 ? number.toLowerCase(Locale.ROOT) : number;
  }

  /** Every number there is. */
  List<String> numbers() {
    List<String> numbers = new ArrayList<>(numbered);
    lots.forEach(lot -> numbers.add(lot.number()));
    return numbers;
  }

  // As files.

  void write(Path folder) throws IOException {
    for (char one = 'a'; one < 'g'; one++) {
      text(folder.resolve("ingredients/meal-" + one + ".yaml"), "name: Meal " + one + "\n");
    }
    if (!lots.isEmpty()) {
      StringBuilder store = new StringBuilder("lots:\n");
      lots.forEach(lot -> store.append(text(lot)));
      store.append("bins:\n");
      emptied.forEach(
          (bin, days) ->
              days.forEach(
                  day -> store.append("  - {bin: %s, emptied: %s}\n".formatted(bin, day))));
      text(folder.resolve("lots/all.yaml"), store.toString());
    }
    for (Batch batch : batches) {
      text(folder.resolve("batches/" + batch.number() + ".yaml"), text(batch));
    }
  }

  private static String text(Delivery lot) {
    StringBuilder text = new StringBuilder();
    text.append("  - number: %s\n    ingredient: %s\n".formatted(lot.number(), lot.kind()));
    text.append("    received: %s\n    quantity: %s kg\n".formatted(lot.day(), lot.kg()));
    text.append(lot.bin().isEmpty() ? "" : "    bin: " + lot.bin() + "\n");
    for (Move move : lot.moves()) {
      String corrected = move.loose() < 0 ? "more" : "less";
      String key = move.what().equals("corrections") ? corrected : "weight";
      String because = move.what().equals("counted") ? "" : ", because: so";
      text.append(
          "    %s: [{day: %s, by: store, %s: %s kg%s}]\n"
              .formatted(move.what(), move.day(), key, Math.abs(move.loose()), because));
    }
    return text.toString();
  }

  private static String text(Batch batch) {
    StringBuilder text = new StringBuilder("size: " + batch.size() + " kg\n");
    text.append(batch.closed() ? "closed: yes\n" : "");
    text.append(batch.after().isEmpty() ? "" : "after: " + batch.after() + "\n");
    Flush flush = batch.flush();
    if (flush.kg() > 0) {
      String lot = flush.lot().isEmpty() ? "" : ", lot: " + flush.lot();
      text.append(
          "flushed: {quantity: %s kg, with: %s%s, to: %s}\n"
              .formatted(flush.kg(), flush.with(), lot, flush.to()));
    }
    text.append(batch.lines().isEmpty() ? "" : "weighed:\n");
    for (Line line : batch.lines()) {
      text.append("  - {line: ").append(line.name());
      text.append(line.lot().isEmpty() ? "" : ", lot: " + line.lot());
      text.append(line.bin().isEmpty() ? "" : ", bin: " + line.bin());
      text.append(line.kg().isEmpty() ? "" : ", weight: " + line.kg() + " kg").append("}\n");
    }
    if (batch.water() > 0) {
      text.append("water: %s kg\n".formatted(batch.water()));
    }
    if (batch.fines() > 0) {
      text.append("fines: {weight: %s kg, to: %s}\n".formatted(batch.fines(), batch.finesTo()));
    }
    Bags bags = batch.bags();
    if (bags.of() > 0) {
      String begun =
          bags.begunWith().isEmpty()
              ? ""
              : ", begun-with: {batch: %s, weight: %s kg}"
                  .formatted(bags.begunWith(), bags.begunKg());
      text.append(
          "bags: {full: %s, of: %s kg, rest: %s kg%s}\n"
              .formatted(bags.full(), bags.of(), bags.rest(), begun));
    }
    if (!batch.samples().isEmpty()) {
      text.append("samples:\n");
      batch
          .samples()
          .forEach(kg -> text.append("  - {weight: %s kg, place: shelf 4}\n".formatted(kg)));
    }
    moves(batch, text);
    return text.toString();
  }

  private static void moves(Batch batch, StringBuilder text) {
    for (String what : List.of("delivered", "returned", "disposed", "counted")) {
      List<Move> moves = batch.moves().stream().filter(one -> one.what().equals(what)).toList();
      text.append(moves.isEmpty() ? "" : what + ":\n");
      for (Move move : moves) {
        text.append("  - {day: ").append(move.day()).append(", by: store");
        text.append(what.equals("delivered") ? ", to: " + move.party() : "");
        text.append(what.equals("returned") ? ", from: " + move.party() : "");
        text.append(move.bags() > 0 ? ", bags: " + move.bags() : "");
        text.append(move.loose() > 0 ? ", weight: " + move.loose() + " kg" : "");
        boolean because = what.equals("returned") || what.equals("disposed");
        text.append(because ? ", because: wet}\n" : "}\n");
      }
    }
  }

  private static void text(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
