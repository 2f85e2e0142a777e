package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.Trace.Reason;
import dev.pellucid.engine.resolve.Material;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Who took what, from the batch records alone: for each batch the numbers that it names with their
 * kg, and the lines of which nobody can say what they were weighed from.
 *
 * <p>Numbers are held by their letters, capitals or not, and a number that only a record tells is
 * one too: a lot that no file of {@code lots/} can be read for is not lost.
 */
final class Ledger {
  private static final double CLOSE = 1e-12;

  /**
   * What a batch takes of a number.
   *
   * @param key the number
   */
  record Taken(String key, String line, Kilograms kg) {}

  /**
   * A line that may be of any lot of its kind.
   *
   * @param kind an ingredient, or the code of a premix or recipe
   * @param names the number that is named there, where one is and it cannot be right
   */
  record Open(String kind, String line, Reason reason, String names, OptionalDouble kg) {}

  /**
   * One record.
   *
   * @param key its number
   * @param made kg that other batches can be weighed from; absent where not all of it is told
   */
  record Page(
      String key, BatchRecord record, List<Taken> taken, List<Open> open, OptionalDouble made) {
    Page {
      taken = List.copyOf(taken);
      open = List.copyOf(open);
    }
  }

  private final FeedTables tables;
  private final Map<String, List<String>> lines;
  private final Function<BatchRecord, Optional<BatchTarget>> orders;
  private final Map<String, String> formerly = new HashMap<>();
  private final Map<String, Lot> lots = new HashMap<>();
  private final SortedMap<String, String> numbers = new TreeMap<>();
  private final Map<String, Page> pages = new LinkedHashMap<>();
  private final Map<String, List<Page>> open = new HashMap<>();

  /** By number, the kinds of the lines that name it. */
  private final Map<String, Set<String>> named = new HashMap<>();

  /**
   * @param lines the names of the lines of each recipe and premix, by its code
   * @param orders what a batch that is still planned is to be made of, where it can be reckoned
   */
  Ledger(
      FeedTables tables,
      Map<String, List<String>> lines,
      Function<BatchRecord, Optional<BatchTarget>> orders) {
    this.tables = tables;
    this.lines = lines;
    this.orders = orders;
    for (Ingredient ingredient : tables.ingredients().values()) {
      ingredient.formerly().forEach(name -> formerly.put(name, ingredient.name()));
    }
    for (Lot lot : tables.lots().values()) {
      lots.put(key(lot.number()), lot);
      numbers.put(key(lot.number()), lot.number());
    }
    tables.batches().keySet().forEach(number -> numbers.put(key(number), number));
    List<BatchRecord> records = new ArrayList<>(tables.batches().values());
    records.sort(
        Comparator.comparing(BatchRecord::day)
            .thenComparing(BatchRecord::code)
            .thenComparing(BatchRecord::serial));
    records.stream().map(this::page).forEach(page -> pages.put(page.key(), page));
    for (Page page : pages.values()) {
      page.open().stream()
          .map(Open::kind)
          .distinct()
          .forEach(kind -> open.computeIfAbsent(kind, none -> new ArrayList<>()).add(page));
    }
  }

  static String key(String number) {
    return number.strip().toLowerCase(Locale.ROOT);
  }

  /** In the order of their days. */
  List<Page> pages() {
    return List.copyOf(pages.values());
  }

  /** Those with a line of a kind that may be of any lot. */
  List<Page> open(String kind) {
    return open.getOrDefault(kind, List.of());
  }

  Optional<Page> page(String key) {
    return Optional.ofNullable(pages.get(key));
  }

  Optional<Lot> lot(String key) {
    return Optional.ofNullable(lots.get(key));
  }

  List<Lot> lots() {
    return List.copyOf(tables.lots().values());
  }

  /** Every number that a lot, a batch or a line of a record has, as it is written. */
  List<String> numbers() {
    return List.copyOf(numbers.values());
  }

  boolean knows(String key) {
    return numbers.containsKey(key);
  }

  /** A number as the folder writes it. */
  String written(String key) {
    return numbers.getOrDefault(key, key);
  }

  private Page page(BatchRecord record) {
    List<Taken> taken = new ArrayList<>();
    List<Open> open = new ArrayList<>();
    Optional<BatchTarget> order = record.isMade() ? Optional.empty() : orders.apply(record);
    for (Entry entry : record.entries()) {
      OptionalDouble kg = kg(record, entry, order);
      String kind = kind(entry.line());
      if (entry.written().isBlank()) {
        open.add(new Open(kind, entry.line(), Reason.NOT_TOLD, "", kg));
        continue;
      }
      String key = key(entry.written());
      numbers.putIfAbsent(key, entry.written().strip());
      taken.add(new Taken(key, entry.line(), Kilograms.of(kg)));
      named.computeIfAbsent(key, none -> new TreeSet<>()).add(kind);
      slip(key, kind, record)
          .ifPresent(why -> open.add(new Open(kind, entry.line(), why, entry.written(), kg)));
    }
    leftOut(record)
        .forEach(
            line ->
                open.add(new Open(kind(line), line, Reason.LEFT_OUT, "", OptionalDouble.empty())));
    record
        .flushed()
        .ifPresent(
            it ->
                open.add(
                    new Open(
                        kind(it.with()),
                        it.with(),
                        Reason.FLUSHED,
                        "",
                        OptionalDouble.of(it.kg()))));
    return new Page(key(record.number()), record, taken, open, made(record));
  }

  /** What is wrong with a number, so that the line may be of another lot. */
  private Optional<Reason> slip(String key, String kind, BatchRecord record) {
    Lot lot = lots.get(key);
    BatchRecord batch = tables.batches().get(written(key));
    if (lot == null && batch == null) {
      return Optional.of(Reason.NO_SUCH_LOT);
    }
    boolean fits =
        (lot != null && lot.ingredient().equals(kind))
            || (batch != null && batch.code().equals(kind) && !batch.equals(record));
    return fits ? Optional.empty() : Optional.of(Reason.LOT_OF_ANOTHER);
  }

  /** What was weighed; while nothing is, an equal part of what the line asks for. */
  private static OptionalDouble kg(BatchRecord record, Entry entry, Optional<BatchTarget> order) {
    if (entry.kg().isPresent() || record.isMade()) {
      return entry.kg();
    }
    return order
        .flatMap(it -> it.named(entry.line()))
        .map(ask -> OptionalDouble.of(MadeBatch.kg(record, entry, ask)))
        .orElse(OptionalDouble.empty());
  }

  private List<String> leftOut(BatchRecord record) {
    List<String> told = record.entries().stream().map(entry -> kind(entry.line())).toList();
    return lines.getOrDefault(record.code(), List.of()).stream()
        .filter(line -> !told.contains(kind(line)))
        .toList();
  }

  /** What reached the bags, or all that was weighed; as planned while nothing is weighed. */
  private OptionalDouble made(BatchRecord record) {
    if (!record.isMade()) {
      return OptionalDouble.of(record.kg());
    }
    double weighed = record.entries().stream().mapToDouble(entry -> entry.kg().orElse(0)).sum();
    boolean all =
        leftOut(record).isEmpty()
            && record.entries().stream().allMatch(entry -> entry.kg().isPresent());
    OptionalDouble made = all ? OptionalDouble.of(weighed) : OptionalDouble.empty();
    return record
        .bagged()
        .map(BatchRecord.Located::thing)
        .map(OptionalDouble::of)
        .orElse(made)
        .stream()
        .filter(kg -> kg > CLOSE)
        .findFirst();
  }

  /** What the lots of a line are of. */
  private String kind(String line) {
    String name =
        line.startsWith(Material.Reworked.REWORK)
            ? line.substring(Material.Reworked.REWORK.length())
            : line;
    return formerly.getOrDefault(name.strip(), name.strip());
  }

  /** The kinds that a number is of: its own, and those of the lines that name it. */
  List<String> kinds(String key) {
    List<String> kinds = new ArrayList<>();
    lot(key).ifPresent(lot -> kinds.add(lot.ingredient()));
    page(key).ifPresent(page -> kinds.add(page.record().code()));
    if (kinds.isEmpty()) {
      kinds.addAll(named.getOrDefault(key, Set.of()));
    }
    return kinds.stream().distinct().sorted().toList();
  }

  /** The day from which a number can be in a batch; the beginning of time where none is told. */
  LocalDate since(String key) {
    return Stream.concat(
            lot(key).map(Lot::received).stream(), page(key).map(it -> it.record().day()).stream())
        .min(Comparator.naturalOrder())
        .orElse(LocalDate.MIN);
  }
}
