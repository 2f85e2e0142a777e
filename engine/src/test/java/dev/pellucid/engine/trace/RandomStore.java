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
import java.util.Set;
import java.util.TreeSet;

/**
 * A made-up store: lots, premixes of premixes, feeds with rework, and batch records with and
 * without their lots told. It is written to a folder, and it answers by itself what a trace of that
 * folder must find, by going over all records again and again until nothing more is found.
 */
final class RandomStore {
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

  /** A delivery; its kind is an ingredient. */
  record LotOf(String number, String kind, LocalDate day) {}

  /** What a record says of a line; {@code lot} and {@code kg} may be empty. */
  record Entry(String line, String lot, String kg) {
    String kind() {
      return line.startsWith("rework ") ? line.substring(7) : line;
    }
  }

  /** A record; {@code bagged} may be empty. */
  record Sheet(
      String number, String code, LocalDate day, int size, List<Entry> entries, String bagged) {
    boolean made() {
      return entries.stream().anyMatch(entry -> !entry.kg().isEmpty());
    }
  }

  private final Random random;
  private final Map<String, List<String>> recipes = new LinkedHashMap<>();
  private final Set<String> premixes = new TreeSet<>();
  final List<LotOf> lots = new ArrayList<>();
  final List<Sheet> records = new ArrayList<>();

  RandomStore(long seed) {
    this.random = new Random(seed);
    List<String> ingredients = new ArrayList<>();
    for (int i = 0; i < 3 + random.nextInt(4); i++) {
      ingredients.add("meal-" + (char) ('a' + i));
    }
    for (String ingredient : ingredients) {
      for (int i = 0; i < random.nextInt(4); i++) {
        lots.add(new LotOf("L" + lots.size() + "-" + random.nextInt(99), ingredient, day()));
      }
    }
    List<String> usable = new ArrayList<>(ingredients);
    for (int i = 0; i < random.nextInt(4); i++) {
      recipes.put("P-" + i, some(usable, 1 + random.nextInt(3)));
      premixes.add("P-" + i);
      usable.add("P-" + i);
    }
    int feeds = 1 + random.nextInt(3);
    for (int i = 0; i < feeds; i++) {
      List<String> lines = some(usable, 1 + random.nextInt(4));
      if (random.nextInt(3) == 0) {
        lines.add("rework F-" + random.nextInt(feeds));
      }
      recipes.put("F-" + i, lines);
    }
    number();
    List<Sheet> blank = List.copyOf(records);
    records.replaceAll(record -> filled(record, blank));
  }

  private List<String> lines(Sheet record) {
    return recipes.getOrDefault(record.code(), List.of());
  }

  private LocalDate day() {
    return FIRST.plusDays(random.nextInt(40));
  }

  private List<String> some(List<String> of, int most) {
    Set<String> picked = new TreeSet<>();
    for (int i = 0; i < most; i++) {
      picked.add(of.get(random.nextInt(of.size())));
    }
    return new ArrayList<>(picked);
  }

  private void number() {
    for (String code : recipes.keySet()) {
      for (int i = 1; i <= 1 + random.nextInt(3); i++) {
        LocalDate day = day();
        records.add(
            new Sheet(
                code + "-" + day + "-" + i, code, day, 10 + random.nextInt(90), List.of(), ""));
      }
    }
  }

  private Sheet filled(Sheet record, List<Sheet> all) {
    boolean planned = random.nextInt(8) == 0;
    List<Entry> entries = new ArrayList<>();
    for (String line : lines(record)) {
      if (random.nextInt(9) == 0) {
        continue;
      }
      for (int i = 0; i <= random.nextInt(2); i++) {
        boolean told = random.nextInt(12) > 0;
        String kg = planned || !told ? "" : (1 + random.nextInt(400)) + "." + random.nextInt(10);
        entries.add(new Entry(line, lotFor(line, record, all), kg));
      }
    }
    boolean bagged = !planned && random.nextInt(2) == 0;
    String kg = bagged ? String.valueOf(1 + random.nextInt(500)) : "";
    return new Sheet(record.number(), record.code(), record.day(), record.size(), entries, kg);
  }

  /** Mostly one of the right kind that was there; now and then none, a wrong one, a later one. */
  private String lotFor(String line, Sheet in, List<Sheet> all) {
    String kind = new Entry(line, "", "").kind();
    int dice = random.nextInt(20);
    List<String> there = new ArrayList<>();
    for (LotOf lot : lots) {
      if (dice == 0 || (lot.kind().equals(kind) && (dice < 3 || !lot.day().isAfter(in.day())))) {
        there.add(lot.number());
      }
    }
    for (Sheet one : all) {
      if (one.code().equals(kind) && (dice < 3 || !one.day().isAfter(in.day()))) {
        there.add(one.number());
      }
    }
    if (there.isEmpty() || (dice > 3 && dice < 8)) {
      return "";
    }
    String number = there.get(random.nextInt(there.size()));
    return dice == 8 ? number.toLowerCase(Locale.ROOT) : number;
  }

  /** Every number there is. */
  List<String> numbers() {
    List<String> numbers = new ArrayList<>();
    lots.forEach(lot -> numbers.add(lot.number()));
    records.forEach(record -> numbers.add(record.number()));
    return numbers;
  }

  Sheet record(String number) {
    return records.stream()
        .filter(one -> one.number().equalsIgnoreCase(number))
        .findFirst()
        .orElseThrow();
  }

  boolean isBatch(String number) {
    return records.stream().anyMatch(one -> one.number().equalsIgnoreCase(number));
  }

  // What must be found.

  Set<String> holders(String number) {
    Set<String> found = new TreeSet<>();
    int before = -1;
    while (found.size() > before) {
      before = found.size();
      for (Sheet record : records) {
        for (Entry entry : record.entries()) {
          if (entry.lot().equalsIgnoreCase(number)
              || found.stream().anyMatch(entry.lot()::equalsIgnoreCase)) {
            found.add(record.number());
          }
        }
      }
    }
    return found;
  }

  /** Those that may hold a number, without those that do. */
  Set<String> perhaps(String number) {
    Set<String> holders = holders(number);
    Set<String> found = new TreeSet<>();
    int before = -1;
    while (found.size() > before) {
      before = found.size();
      Set<String> from = new TreeSet<>(found);
      from.addAll(holders);
      from.add(number);
      for (Sheet record : records) {
        for (String one : from) {
          if (couldTake(record, one) || (found.contains(one) && names(record, one))) {
            found.add(record.number());
          }
        }
      }
      found.removeAll(holders);
      found.remove(number);
    }
    return found;
  }

  private static boolean names(Sheet record, String number) {
    return record.entries().stream().anyMatch(entry -> entry.lot().equalsIgnoreCase(number));
  }

  /** A line of the right kind whose lot is not told, or is told wrong, on a day late enough. */
  private boolean couldTake(Sheet record, String number) {
    return !record.number().equals(number)
        && !record.day().isBefore(dayOf(number))
        && (openKinds(record).contains(kindOf(number))
            || unrecorded(record).contains(kindOf(number)));
  }

  /** What premixes are made of of which the batch is not told; rework where none is recorded. */
  private Set<String> unrecorded(Sheet record) {
    Set<String> of = new TreeSet<>();
    List<String> open = new ArrayList<>();
    for (String line : lines(record)) {
      if (record.entries().stream().noneMatch(entry -> entry.line().equals(line))) {
        open.add(line);
      }
    }
    record.entries().stream()
        .filter(entry -> isOpen(entry, record))
        .forEach(entry -> open.add(entry.line()));
    for (String line : open) {
      String kind = new Entry(line, "", "").kind();
      boolean recorded =
          records.stream()
              .anyMatch(one -> one.code().equals(kind) && !one.day().isAfter(record.day()));
      if (!line.startsWith("rework ") || !recorded) {
        madeOf(kind, of);
      }
    }
    return of;
  }

  private void madeOf(String code, Set<String> of) {
    for (String line : recipes.getOrDefault(code, List.of())) {
      String kind = new Entry(line, "", "").kind();
      if (of.add(kind)) {
        madeOf(kind, of);
      }
    }
  }

  private boolean isOpen(Entry entry, Sheet record) {
    return entry.lot().isEmpty()
        || entry.lot().equalsIgnoreCase(record.number())
        || !kindOf(entry.lot()).equals(entry.kind())
        || dayOf(entry.lot()).isAfter(record.day());
  }

  Set<String> openKinds(Sheet record) {
    Set<String> open = new TreeSet<>();
    for (String line : lines(record)) {
      if (record.entries().stream().noneMatch(entry -> entry.line().equals(line))) {
        open.add(new Entry(line, "", "").kind());
      }
    }
    for (Entry entry : record.entries()) {
      if (isOpen(entry, record)) {
        open.add(entry.kind());
      }
    }
    return open;
  }

  private String kindOf(String number) {
    for (LotOf lot : lots) {
      if (lot.number().equalsIgnoreCase(number)) {
        return lot.kind();
      }
    }
    return records.stream()
        .filter(one -> one.number().equalsIgnoreCase(number))
        .findFirst()
        .orElseThrow()
        .code();
  }

  private LocalDate dayOf(String number) {
    for (LotOf lot : lots) {
      if (lot.number().equalsIgnoreCase(number)) {
        return lot.day();
      }
    }
    return record(number).day();
  }

  /** kg over every single path; not a number where a path tells not all, or runs in a circle. */
  double kg(String number, Sheet in, List<String> above) {
    double kg = 0;
    for (Entry entry : in.entries()) {
      double weighed = entry.kg().isEmpty() ? Double.NaN : Double.parseDouble(entry.kg());
      if (entry.lot().equalsIgnoreCase(number)) {
        kg += weighed;
      } else if (holders(number).stream().anyMatch(entry.lot()::equalsIgnoreCase)) {
        List<String> deeper = new ArrayList<>(above);
        deeper.add(in.number());
        Sheet from =
            records.stream()
                .filter(one -> one.number().equalsIgnoreCase(entry.lot()))
                .findFirst()
                .orElseThrow();
        boolean circle = deeper.contains(from.number());
        kg += circle ? Double.NaN : kg(number, from, deeper) * weighed / made(from);
      }
    }
    return kg;
  }

  private double made(Sheet record) {
    if (!record.made()) {
      return record.size();
    }
    if (!record.bagged().isEmpty()) {
      return Double.parseDouble(record.bagged());
    }
    Set<String> told = new TreeSet<>();
    record.entries().forEach(entry -> told.add(entry.kind()));
    boolean all =
        lines(record).stream().allMatch(line -> told.contains(new Entry(line, "", "").kind()));
    return all
        ? record.entries().stream()
            .mapToDouble(it -> it.kg().isEmpty() ? Double.NaN : Double.parseDouble(it.kg()))
            .sum()
        : Double.NaN;
  }

  /** Writes it as a folder that the toolkit reads. */
  void write(Path folder) throws IOException {
    StringBuilder store = new StringBuilder("lots:\n");
    for (LotOf lot : lots) {
      store.append(
          """
            - {number: %s, ingredient: %s, received: %s, quantity: 5000 kg}
          """
              .formatted(lot.number(), lot.kind(), lot.day()));
    }
    if (!lots.isEmpty()) {
      text(folder.resolve("lots/all.yaml"), store.toString());
    }
    for (char one = 'a'; one < 'g'; one++) {
      text(folder.resolve("ingredients/meal-" + one + ".yaml"), "name: Meal " + one + "\n");
    }
    for (Map.Entry<String, List<String>> recipe : recipes.entrySet()) {
      String code = recipe.getKey();
      boolean premix = premixes.contains(code);
      StringBuilder text = new StringBuilder((premix ? "premix " : "recipe ") + code + "\n\nmix\n");
      recipe.getValue().forEach(line -> text.append("  ").append(line).append("   10 %\n"));
      text(folder.resolve(code + (premix ? ".premix" : ".recipe")), text.toString());
    }
    for (Sheet record : records) {
      text(folder.resolve("batches/" + record.number() + ".yaml"), text(record));
    }
  }

  private static String text(Sheet record) {
    StringBuilder text = new StringBuilder("size: " + record.size() + " kg\n");
    if (!record.entries().isEmpty()) {
      text.append("weighed:\n");
    }
    for (Entry entry : record.entries()) {
      text.append("  - {line: ").append(entry.line());
      text.append(entry.lot().isEmpty() ? "" : ", lot: " + entry.lot());
      text.append(entry.kg().isEmpty() ? "" : ", weight: " + entry.kg() + " kg").append("}\n");
    }
    if (!record.bagged().isEmpty()) {
      text.append("bags: {full: 1, of: ").append(record.bagged()).append(" kg}\n");
    }
    return text.toString();
  }

  private static void text(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
