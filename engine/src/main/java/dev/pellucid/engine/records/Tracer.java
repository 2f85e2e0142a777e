package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.Ledger.Open;
import dev.pellucid.engine.records.Ledger.Page;
import dev.pellucid.engine.records.Ledger.Taken;
import dev.pellucid.engine.records.Trace.Back;
import dev.pellucid.engine.records.Trace.Batch;
import dev.pellucid.engine.records.Trace.Doubt;
import dev.pellucid.engine.records.Trace.Holding;
import dev.pellucid.engine.records.Trace.LotOf;
import dev.pellucid.engine.records.Trace.Maybe;
import dev.pellucid.engine.records.Trace.Onward;
import dev.pellucid.engine.records.Trace.Reason;
import dev.pellucid.engine.records.Trace.Thing;
import dev.pellucid.engine.records.Trace.Unknown;
import dev.pellucid.engine.records.Trace.Way;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Which lots and batches are in which batches, through premixes and rework of any depth, and in
 * which they may be: a line whose lot is not told may be of every lot of its kind that was there on
 * the day. What may hold a number is told apart from what holds it, and never left out.
 */
public final class Tracer {
  private final FeedTables tables;
  private final Ledger ledger;
  private final Descent descent;

  /**
   * @param lines the names of the lines of each recipe and premix, by its code
   * @param orders what a batch that is still planned is to be made of, where it can be reckoned
   */
  public Tracer(
      FeedTables tables,
      Map<String, List<String>> lines,
      Function<BatchRecord, Optional<BatchTarget>> orders) {
    this.tables = tables;
    this.ledger = new Ledger(tables, lines, orders);
    this.descent = new Descent(ledger.pages());
  }

  /** Whether any lot, batch or line of a record has the number, capitals or not. */
  public boolean knows(String number) {
    return ledger.knows(Ledger.key(number));
  }

  /** Whether there is a record of such a batch. */
  public boolean isBatch(String number) {
    return ledger.page(Ledger.key(number)).isPresent();
  }

  /** Every number that a lot, a batch or a line of a record has. */
  public List<String> numbers() {
    return ledger.numbers();
  }

  /** The numbers of all batches, in the order of their days. */
  public List<String> batches() {
    return ledger.pages().stream().map(page -> page.record().number()).toList();
  }

  /** From a lot or a batch to every batch that holds it, or may. */
  public Onward onward(String number) {
    String key = Ledger.key(number);
    Amounts amounts = Amounts.of(descent, key);
    Set<String> holds = amounts.holders();
    Map<String, Set<Doubt>> may = doubts(key, holds);
    List<Holding> held = new ArrayList<>();
    List<Maybe> maybe = new ArrayList<>();
    List<String> earlier = new ArrayList<>();
    List<String> kinds = ledger.kinds(key);
    for (Page page : ledger.pages()) {
      if (holds.contains(page.key())) {
        held.add(holding(key, page, amounts));
      } else if (may.containsKey(page.key())) {
        maybe.add(new Maybe(batch(page), List.copyOf(may.get(page.key()))));
      } else if (!page.key().equals(key)
          && page.open().stream().anyMatch(open -> kinds.contains(open.kind()))) {
        earlier.add(page.record().number());
      }
    }
    return new Onward(thing(key), held, maybe, List.of(), earlier, circle(holds));
  }

  /** From a batch to every lot in it, down to the raw materials. */
  public Back back(String number) {
    String key = Ledger.key(number);
    Page asked = ledger.page(key).orElseThrow(() -> new IllegalArgumentException(number));
    Set<String> in = new LinkedHashSet<>(Set.of(key));
    Deque<String> next = new ArrayDeque<>(in);
    while (!next.isEmpty()) {
      for (Taken taken : taken(next.remove())) {
        if (in.add(taken.key())) {
          next.add(taken.key());
        }
      }
    }
    List<Unknown> unknown = new ArrayList<>();
    for (String one : in) {
      ledger.page(one).ifPresent(page -> page.open().forEach(it -> unknown.add(open(page, it))));
    }
    List<Holding> holds =
        in.stream()
            .filter(one -> !one.equals(key))
            .map(one -> Map.entry(rank(one), one))
            .sorted(Map.Entry.comparingByKey())
            .map(Map.Entry::getValue)
            .map(one -> holding(one, asked, Amounts.in(descent, one, asked)))
            .toList();
    return new Back(thing(key), holds, unknown, circle(in));
  }

  /** Batches after what they are made of: lots of ingredients come last, by name and number. */
  private String rank(String key) {
    return ledger.page(key).isPresent()
        ? "0" + key
        : "1" + String.join(",", ledger.kinds(key)) + " " + key;
  }

  private List<Taken> taken(String key) {
    return ledger.page(key).map(Page::taken).orElse(List.of());
  }

  private Holding holding(String key, Page page, Amounts amounts) {
    Map<String, Kilograms> ways = new LinkedHashMap<>();
    page.taken().stream()
        .filter(taken -> taken.key().equals(key))
        .forEach(taken -> ways.merge("", taken.kg(), Kilograms::plus));
    Map<String, Kilograms> through = new TreeMap<>();
    for (Taken taken : page.taken()) {
      if (!taken.key().equals(key) && amounts.isIn(taken.key())) {
        through.merge(taken.key(), amounts.through(taken, page), Kilograms::plus);
      }
    }
    ways.putAll(through);
    Kilograms all = ways.values().stream().reduce(Kilograms.NONE, Kilograms::plus);
    List<Way> told = new ArrayList<>();
    ways.forEach(
        (by, kg) ->
            told.add(
                new Way(by.isEmpty() ? Optional.empty() : Optional.of(ledger.written(by)), kg)));
    return new Holding(thing(key), batch(page), all, told);
  }

  /** By batch, why it may hold a number; what does hold it is not among them. */
  private Map<String, Set<Doubt>> doubts(String key, Set<String> holds) {
    Map<String, Set<Doubt>> may = new LinkedHashMap<>();
    Deque<String> next = new ArrayDeque<>();
    next.add(key);
    next.addAll(holds);
    Set<String> seen = new LinkedHashSet<>(next);
    while (!next.isEmpty()) {
      String from = next.remove();
      boolean certain = from.equals(key) || holds.contains(from);
      Map<String, Set<Doubt>> found = new LinkedHashMap<>();
      if (!certain) {
        descent.takers(from).forEach(page -> add(found, page, taking(page, from)));
      }
      ledger
          .kinds(from)
          .forEach(
              kind -> ledger.open(kind).forEach(page -> add(found, page, guess(page, kind, from))));
      found
          .keySet()
          .removeIf(page -> holds.contains(page) || page.equals(key) || page.equals(from));
      found.forEach(
          (page, doubts) -> {
            may.computeIfAbsent(page, none -> new LinkedHashSet<>()).addAll(doubts);
            if (seen.add(page)) {
              next.add(page);
            }
          });
    }
    return may;
  }

  private static void add(Map<String, Set<Doubt>> found, Page page, List<Doubt> doubts) {
    if (!doubts.isEmpty()) {
      found.computeIfAbsent(page.key(), none -> new LinkedHashSet<>()).addAll(doubts);
    }
  }

  private List<Doubt> taking(Page page, String from) {
    return page.taken().stream()
        .filter(taken -> taken.key().equals(from))
        .map(taken -> new Doubt(taken.line(), Reason.TAKEN, "", List.of(ledger.written(from)), 0))
        .toList();
  }

  private List<Doubt> guess(Page page, String kind, String from) {
    if (page.record().day().isBefore(ledger.since(from))) {
      return List.of();
    }
    return page.open().stream()
        .filter(open -> open.kind().equals(kind))
        .map(it -> new Doubt(it.line(), it.reason(), it.names(), List.of(ledger.written(from)), 0))
        .toList();
  }

  private Unknown open(Page page, Open open) {
    List<String> of = new ArrayList<>();
    ledger.lots().stream()
        .filter(lot -> lot.ingredient().equals(open.kind()))
        .filter(lot -> !lot.received().isAfter(page.record().day()))
        .forEach(lot -> of.add(lot.number()));
    ledger.pages().stream()
        .map(Page::record)
        .filter(one -> one.code().equals(open.kind()) && !one.equals(page.record()))
        .filter(one -> !one.day().isAfter(page.record().day()))
        .forEach(one -> of.add(one.number()));
    return new Unknown(
        page.record().number(), open.line(), open.reason(), open.names(), open.kg(), of);
  }

  private List<String> circle(Set<String> among) {
    return new TreeSet<>(among)
        .stream().filter(one -> descent.isInCircle(one)).map(ledger::written).toList();
  }

  private Thing thing(String key) {
    return new Thing(
        ledger.written(key), ledger.lot(key).map(this::lot), ledger.page(key).map(Tracer::batch));
  }

  private LotOf lot(Lot lot) {
    return new LotOf(
        lot.ingredient(),
        Optional.ofNullable(tables.ingredients().get(lot.ingredient()))
            .map(Ingredient::title)
            .orElse(lot.ingredient()),
        lot.received(),
        lot.kg(),
        lot.bestBefore(),
        lot.lastState().map(it -> it.state().name().toLowerCase(Locale.ROOT).replace('_', '-')),
        lot.supplier(),
        lot.remark());
  }

  private static Batch batch(Page page) {
    BatchRecord record = page.record();
    String became =
        record
            .release()
            .map(it -> it.decision().name().toLowerCase(Locale.ROOT))
            .orElse(record.isMade() ? "open" : "planned");
    return new Batch(record.number(), record.code(), record.day(), became, record.closed());
  }
}
