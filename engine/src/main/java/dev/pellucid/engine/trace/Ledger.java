package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Bin;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget;
import dev.pellucid.engine.records.Bins;
import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.engine.records.PutInto;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.trace.Page.Drawn;
import dev.pellucid.engine.trace.Page.Open;
import dev.pellucid.engine.trace.Page.Taken;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Who took what, from the batch records alone: for each batch the numbers that it names with their
 * kg, what may have come from a bin, and the lines of which nobody can say what they were weighed
 * from.
 *
 * <p>Numbers are held by their letters, capitals or not, and a number that only a record tells is
 * one too: a lot that no file of {@code lots/} can be read for is not lost.
 */
final class Ledger implements Pages.Names {
  private static final int REWORK = Material.Reworked.REWORK.length();

  private final FeedTables tables;
  private final Recipes recipes;
  private final Bins bins;
  private final PutInto put;
  private final DrawnFrom books;

  /** By its letters, what the folder calls an ingredient, a premix or a recipe. */
  private final Map<String, String> known = new HashMap<>();

  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, BatchRecord> batches = new HashMap<>();

  /** By code, the day of the first batch. */
  private final Map<String, LocalDate> recorded = new HashMap<>();

  private final SortedMap<String, String> numbers = new TreeMap<>();
  private final Map<String, Page> pages = new LinkedHashMap<>();
  private final Map<String, List<Page>> open = new HashMap<>();
  private final Map<String, Map<String, Page>> drawn = new HashMap<>();
  private final Map<String, List<String>> ofKind = new HashMap<>();
  private final Map<String, LocalDate> since = new HashMap<>();
  private final Map<String, List<Lot>> ofIngredient = new HashMap<>();
  private final Map<String, List<Page>> ofCode = new HashMap<>();
  private final List<Page> inOrder;

  /** By number, the kinds of the lines that name it. */
  private final Map<String, Set<String>> named = new HashMap<>();

  /**
   * @param orders what a batch that is still planned is to be made of, where it can be reckoned
   */
  Ledger(FeedTables tables, Recipes recipes, Function<BatchRecord, Optional<BatchTarget>> orders) {
    this.tables = tables;
    this.recipes = recipes;
    this.bins = new Bins(tables);
    known();
    tables.lots().values().forEach(lot -> lots.put(number(lot.number()), lot));
    tables.batches().values().forEach(batch -> batches.put(number(batch.number()), batch));
    for (BatchRecord batch : batches.values()) {
      recorded.merge(batch.code(), batch.day(), (one, two) -> one.isBefore(two) ? one : two);
    }
    this.put = new PutInto(tables.batches().values());
    this.books = new DrawnFrom(tables.batches().values(), tables.lots().values(), bins, this::kind);
    for (BatchRecord record : inOrder()) {
      Optional<BatchTarget> order = record.isMade() ? Optional.empty() : orders.apply(record);
      add(Pages.of(this, put, record, order));
    }
    sorted();
    this.inOrder = List.copyOf(pages.values());
    for (Page page : inOrder) {
      ofCode.computeIfAbsent(page.record().code(), none -> new ArrayList<>()).add(page);
    }
    for (Lot lot : tables.lots().values()) {
      ofIngredient.computeIfAbsent(lot.ingredient(), none -> new ArrayList<>()).add(lot);
    }
  }

  private void known() {
    for (Ingredient ingredient : tables.ingredients().values()) {
      ingredient.formerly().forEach(name -> known.put(ByLetters.number(name), ingredient.name()));
    }
    tables
        .lots()
        .values()
        .forEach(lot -> known.put(ByLetters.number(lot.ingredient()), lot.ingredient()));
    tables.ingredients().keySet().forEach(name -> known.put(ByLetters.number(name), name));
    tables.batches().values().forEach(it -> known.put(ByLetters.number(it.code()), it.code()));
  }

  private List<BatchRecord> inOrder() {
    List<BatchRecord> records = new ArrayList<>(tables.batches().values());
    records.sort(
        Comparator.comparing(BatchRecord::day)
            .thenComparing(BatchRecord::code)
            .thenComparing(BatchRecord::serial));
    return records;
  }

  /** A number is known by its letters, and written as it was first. */
  private String number(String written) {
    String key = ByLetters.number(written);
    numbers.putIfAbsent(key, written.strip());
    return key;
  }

  private void add(Page page) {
    pages.put(page.key(), page);
    for (BatchRecord.Entry entry : page.record().entries()) {
      if (!entry.written().isBlank()) {
        named
            .computeIfAbsent(number(entry.written()), none -> new TreeSet<>())
            .add(kind(entry.line()));
      }
    }
    for (Taken taken : page.taken()) {
      numbers.putIfAbsent(taken.key(), taken.key());
    }
    for (String kind : new TreeSet<>(page.open().stream().map(Open::kind).toList())) {
      open.computeIfAbsent(kind, none -> new ArrayList<>()).add(page);
    }
    for (Drawn one : page.drawn()) {
      drawn("lot " + one.named(), page);
      one.bins().forEach(bin -> drawn("bin " + bin, page));
    }
  }

  private void drawn(String from, Page page) {
    drawn.computeIfAbsent(from, none -> new LinkedHashMap<>()).put(page.key(), page);
  }

  private void sorted() {
    for (String key : numbers.keySet()) {
      since.put(key, from(key));
      kinds(key).forEach(kind -> ofKind.computeIfAbsent(kind, none -> new ArrayList<>()).add(key));
    }
    ofKind.values().forEach(keys -> keys.sort(Comparator.comparing(this::since)));
  }

  /** In the order of their days. */
  List<Page> pages() {
    return inOrder;
  }

  /** The batches of a recipe or premix, in the order of their days. */
  List<Page> pages(String code) {
    return ofCode.getOrDefault(code, List.of());
  }

  /** Those with a line of a kind that may be of any lot, in the order of their days. */
  List<Page> open(String kind) {
    return open.getOrDefault(kind, List.of());
  }

  /** Those with something that may be of a lot since the lot is named or lay in a bin. */
  Collection<Page> drawn(String key) {
    Map<String, Page> pages = new LinkedHashMap<>(drawn.getOrDefault("lot " + key, Map.of()));
    lot(key)
        .flatMap(Lot::bin)
        .ifPresent(bin -> pages.putAll(drawn.getOrDefault("bin " + Bin.key(bin), Map.of())));
    return pages.values();
  }

  /** Whether what was drawn may be of a lot. */
  boolean mayBe(Drawn drawn, String lot) {
    return drawn.named().equals(lot)
        || lot(lot).filter(it -> isInOne(drawn.bins(), it, drawn.day())).isPresent();
  }

  private boolean isInOne(List<String> of, Lot lot, LocalDate day) {
    return of.stream().anyMatch(bin -> bins.mayHold(bin, lot, day));
  }

  /** Whether what was drawn may be of more than one lot. */
  boolean isShared(Drawn drawn) {
    return mayBe(drawn).size() > 1;
  }

  /** The keys of all lots that something drawn may be of. */
  Collection<String> mayBe(Drawn drawn) {
    if (drawn.named().isEmpty() && drawn.bins().size() == 1) {
      return bins.lots(drawn.bins().get(0), drawn.day());
    }
    Set<String> keys = new LinkedHashSet<>();
    if (!drawn.named().isEmpty()) {
      keys.add(drawn.named());
    }
    drawn.bins().forEach(bin -> keys.addAll(bins.lots(bin, drawn.day())));
    return keys;
  }

  /** The keys of all numbers of a kind, those that were there first before others. */
  List<String> ofKind(String kind) {
    return ofKind.getOrDefault(kind, List.of());
  }

  Optional<Page> page(String key) {
    return Optional.ofNullable(pages.get(key));
  }

  @Override
  public Optional<Lot> lot(String key) {
    return Optional.ofNullable(lots.get(key));
  }

  @Override
  public Optional<BatchRecord> batch(String key) {
    return Optional.ofNullable(batches.get(key));
  }

  @Override
  public Bins bins() {
    return bins;
  }

  /** The lots of an ingredient, in the order of their numbers. */
  List<Lot> lots(String ingredient) {
    return ofIngredient.getOrDefault(ingredient, List.of());
  }

  PutInto put() {
    return put;
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

  @Override
  public List<String> leftOut(BatchRecord record) {
    List<String> told = record.entries().stream().map(entry -> named(entry.line())).toList();
    return recipes.lines(record).stream().filter(line -> !told.contains(named(line))).toList();
  }

  /** A line as it is meant: rework of a feed is not the feed. */
  private String named(String line) {
    return (isRework(line) ? Material.Reworked.REWORK : "") + kind(line);
  }

  @Override
  public List<String> madeOf(String kind) {
    return tables.ingredients().containsKey(kind) ? List.of() : recipes.lines(kind);
  }

  @Override
  public boolean isRecorded(String kind, LocalDate day) {
    LocalDate first = recorded.get(kind);
    return first != null && !first.isAfter(day);
  }

  @Override
  public DrawnFrom books() {
    return books;
  }

  /**
   * What a line is of, whatever its capitals; by its letters where the folder has no such thing.
   */
  @Override
  public String kind(String line) {
    String key = ByLetters.number(isRework(line) ? line.strip().substring(REWORK) : line);
    return known.getOrDefault(key, key);
  }

  static boolean isRework(String line) {
    return ByLetters.number(line).startsWith(Material.Reworked.REWORK);
  }

  /** Whether a kind is one of an ingredient, or of what there is a record of. */
  boolean isKnown(String kind) {
    return known.containsKey(ByLetters.number(kind));
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
    return since.getOrDefault(key, LocalDate.MIN);
  }

  private LocalDate from(String key) {
    return Stream.concat(lot(key).map(Lot::received).stream(), page(key).map(Page::day).stream())
        .min(Comparator.naturalOrder())
        .orElse(LocalDate.MIN);
  }
}
