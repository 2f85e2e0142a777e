package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget;
import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.engine.trace.Page.Drawn;
import dev.pellucid.engine.trace.Page.Open;
import dev.pellucid.engine.trace.Page.Taken;
import dev.pellucid.engine.trace.Recall.Origins;
import dev.pellucid.engine.trace.Trace.Back;
import dev.pellucid.engine.trace.Trace.Holding;
import dev.pellucid.engine.trace.Trace.Maybe;
import dev.pellucid.engine.trace.Trace.Onward;
import dev.pellucid.engine.trace.Trace.Reason;
import dev.pellucid.engine.trace.Trace.Unknown;
import dev.pellucid.engine.trace.Trace.Way;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Which lots and batches are in which batches, through premixes, rework, fines, flushes and part
 * bags of any depth, and in which they may be: a line whose lot is not told may be of every lot of
 * its kind that was there on the day, what came from a bin of every lot that could be in it, and
 * what was left behind on the line is in the next batch. What may hold a number is told apart from
 * what holds it, and never left out.
 */
public final class Tracer {
  private final Ledger ledger;
  private final Descent descent;
  private final LineOrder order;
  private final Things things;
  private final Books books;
  private final LocalDate today;

  /**
   * @param orders what a batch that is still planned is to be made of, where it can be reckoned
   * @param today how things stand then counts, and what is to come is told; a batch that is planned
   *     for an earlier day may have been made, or not
   */
  public Tracer(
      FeedTables tables,
      Recipes recipes,
      Plants plants,
      Function<BatchRecord, Optional<BatchTarget>> orders,
      LocalDate today) {
    this.ledger = new Ledger(tables, recipes, orders);
    this.descent = new Descent(ledger.pages());
    this.order = new LineOrder(ledger.pages(), plants, today);
    this.things = new Things(tables, ledger, descent, today);
    this.books = new Books(ledger, descent, today);
    this.today = today;
  }

  /** Whether any lot, batch or line of a record has the number, capitals or not. */
  public boolean knows(String number) {
    return ledger.knows(ByLetters.number(number));
  }

  /** Whether there is a record of such a batch. */
  public boolean isBatch(String number) {
    return ledger.page(ByLetters.number(number)).isPresent();
  }

  /** Every number that a lot, a batch or a line of a record has. */
  public List<String> numbers() {
    return ledger.numbers();
  }

  /** The numbers of all batches, in the order of their days. */
  public List<String> batches() {
    return ledger.pages().stream().map(Page::number).toList();
  }

  /** From a lot or a batch to every batch that holds it, or may. */
  public Onward onward(String number) {
    String key = ByLetters.number(number);
    Found found = new Found(ledger, descent, order, key);
    List<Holding> held =
        ledger.pages().stream()
            .filter(found::holds)
            .map(page -> holding(key, page, found.amounts()))
            .toList();
    return new Onward(
        things.thing(key),
        held,
        maybe(found, found::may),
        maybe(found, found::mayOnLine),
        earlier(found),
        things.circle(found.amounts().holders()));
  }

  private List<Maybe> maybe(Found found, Predicate<Page> may) {
    return ledger.pages().stream()
        .filter(may)
        .map(page -> new Maybe(things.batch(page), found.doubts(page)))
        .toList();
  }

  /** Batches with a line of its kind, its lot not told, that were made before it was there. */
  private List<String> earlier(Found found) {
    List<String> kinds = ledger.kinds(found.key());
    return ledger.pages().stream()
        .filter(page -> !found.holds(page) && !found.concerns(page))
        .filter(page -> page.open().stream().anyMatch(open -> kinds.contains(open.kind())))
        .map(Page::number)
        .toList();
  }

  /** All that a recall of a lot or batch has to tell. */
  public Recall.Answer recall(String number) {
    Found found = new Found(ledger, descent, order, ByLetters.number(number));
    return new Recalling(ledger, order, things, books, found, earlier(found), today).answer();
  }

  /**
   * Lines whose lot is not told, of what neither the records nor the data know: they may be of any
   * lot.
   *
   * @param known whether the folder has such a premix or recipe
   */
  public List<Unknown> ofNothing(Predicate<String> known) {
    List<Unknown> lines = new ArrayList<>();
    for (Page page : ledger.pages()) {
      for (Open open : page.open()) {
        if (!ledger.isKnown(open.kind()) && !known.test(open.kind())) {
          lines.add(open(page, open));
        }
      }
    }
    return lines;
  }

  /** From a batch to every lot in it, down to the raw materials. */
  public Back back(String number) {
    String key = ByLetters.number(number);
    Page asked = asked(number);
    Set<String> in = in(key);
    List<Unknown> unknown = new ArrayList<>();
    for (String one : in) {
      ledger.page(one).ifPresent(page -> unknown(page, unknown));
    }
    List<Holding> holds =
        in.stream()
            .filter(one -> !one.equals(key))
            .map(one -> Map.entry(rank(one), one))
            .sorted(Map.Entry.comparingByKey())
            .map(Map.Entry::getValue)
            .map(one -> holding(one, asked, Amounts.in(descent, one, asked)))
            .toList();
    return new Back(things.thing(key), holds, unknown, things.circle(in));
  }

  /** From a batch to every lot and batch that is in it or may be, and how each came there. */
  public Origins origins(String number) {
    Back back = back(number);
    Behind behind = new Behind(ledger, order, asked(number).key());
    Set<String> may = behind.numbers();
    may.removeAll(in(ByLetters.number(number)));
    return new Origins(back, may.stream().map(things::thing).toList(), behind.steps());
  }

  private Page asked(String number) {
    return ledger
        .page(ByLetters.number(number))
        .orElseThrow(() -> new IllegalArgumentException(number));
  }

  /**
   * A batch, and all that it surely holds: what a batch in it has from another's part bag was in
   * its bags alone.
   */
  private Set<String> in(String key) {
    Set<String> in = new LinkedHashSet<>(Set.of(key));
    Deque<String> next = new ArrayDeque<>(in);
    while (!next.isEmpty()) {
      String from = next.remove();
      for (Taken taken : taken(from)) {
        if ((from.equals(key) || !taken.isInBagsOnly()) && in.add(taken.key())) {
          next.add(taken.key());
        }
      }
    }
    return in;
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
      if (!taken.key().equals(key) && amounts.inMix().contains(taken.key())) {
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
    return new Holding(things.thing(key), things.batch(page), all, told);
  }

  private void unknown(Page page, List<Unknown> out) {
    page.open().stream()
        .map(open -> open(page, open))
        .filter(one -> one.reason() != Reason.NO_RECORD || !one.of().isEmpty())
        .forEach(out::add);
    for (Drawn drawn : page.drawn()) {
      List<String> of = ledger.mayBe(drawn).stream().map(ledger::written).toList();
      String bin = drawn.bins().stream().findFirst().map(ledger.bins()::written).orElse("");
      out.add(
          new Unknown(
              page.number(), drawn.line(), drawn.reason(drawn.named()), bin, drawn.kg(), of));
    }
  }

  private Unknown open(Page page, Open open) {
    List<String> of = new ArrayList<>();
    for (Lot lot : ledger.lots(open.kind())) {
      if (!lot.received().isAfter(page.day())) {
        of.add(lot.number());
      }
    }
    for (Page one : ledger.pages(open.kind())) {
      if (one.day().isAfter(page.day())) {
        break;
      }
      if (!one.key().equals(page.key())) {
        of.add(one.number());
      }
    }
    return new Unknown(page.number(), open.line(), open.reason(), open.names(), open.kg(), of);
  }
}
