package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Flushed;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.engine.trace.LineOrder.Turn;
import dev.pellucid.engine.trace.Page.Drawn;
import dev.pellucid.engine.trace.Page.Open;
import dev.pellucid.engine.trace.Page.Taken;
import dev.pellucid.engine.trace.Recall.Kind;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.Trace.Doubt;
import dev.pellucid.engine.trace.Trace.Reason;
import dev.pellucid.measure.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The ways into one batch by which numbers of a set came, or may have come. Where very many may
 * have come in by one line, the earliest are named and the others counted.
 */
final class Links {
  /** So many are named of those that one line may be of. */
  static final int NAMED = 5;

  private final Ledger ledger;
  private final LineOrder order;
  private final Predicate<String> among;
  private final Predicate<String> leaves;
  private final Map<String, List<String>> ofKind = new HashMap<>();
  private final Map<Integer, Set<String>> ofTurn = new HashMap<>();

  /**
   * One way in.
   *
   * @param of keys of what came in, or may have
   * @param more how many more may have
   * @param certain whether the records prove it
   */
  record Link(
      Kind kind,
      Reason reason,
      String line,
      String names,
      List<String> of,
      int more,
      Kilograms kg,
      boolean certain) {
    Link {
      of = List.copyOf(of);
    }
  }

  /**
   * @param among whether a number is of the set
   * @param leaves whether a batch of the set may leave something of it behind on the line
   */
  Links(Ledger ledger, LineOrder order, Predicate<String> among, Predicate<String> leaves) {
    this.ledger = ledger;
    this.order = order;
    this.among = among;
    this.leaves = leaves;
  }

  /** Every way into a batch. */
  List<Link> into(Page page) {
    List<Link> links = new ArrayList<>();
    for (Taken taken : page.taken()) {
      if (among.test(taken.key())) {
        links.add(taken(taken));
      }
    }
    page.drawn().forEach(drawn -> add(links, drawn(drawn)));
    page.open().forEach(open -> add(links, open(page, open)));
    line(page, links);
    for (BatchRecord next : ledger.put().flushesIn(page.key())) {
      ledger.page(ByLetters.number(next.number())).ifPresent(it -> flushInto(it, page, links));
    }
    return links;
  }

  private static void add(List<Link> links, Link link) {
    if (!link.of().isEmpty()) {
      links.add(link);
    }
  }

  private static Link taken(Taken taken) {
    return new Link(
        taken.kind(),
        reason(taken.kind()),
        taken.line(),
        taken.bin(),
        List.of(taken.key()),
        0,
        taken.kg(),
        true);
  }

  private static Reason reason(Kind kind) {
    return switch (kind) {
      case FINES -> Reason.FINES;
      case PART_BAG -> Reason.PART_BAG;
      case FLUSH -> Reason.FLUSH_INTO;
      case WEIGHED, PREMIX, REWORK, NEXT_ON_LINE, SAME_BIN, LOT_NOT_TOLD, ORDER_NOT_TOLD ->
          Reason.TAKEN;
    };
  }

  private Link drawn(Drawn drawn) {
    Predicate<String> may = drawn.flush() ? leaves : among;
    List<String> of = ledger.mayBe(drawn).stream().filter(may).toList();
    Reason reason = drawn.reason(of.size() == 1 ? of.get(0) : "");
    String bin = drawn.bins().stream().findFirst().map(ledger.bins()::written).orElse("");
    return new Link(
        drawn.flush() ? Kind.NEXT_ON_LINE : Kind.SAME_BIN,
        reason,
        drawn.line(),
        bin,
        first(of),
        more(of),
        Kilograms.of(drawn.flush() ? OptionalDouble.empty() : drawn.kg()),
        false);
  }

  private Link open(Page page, Open open) {
    List<String> all =
        ofKind.computeIfAbsent(
            (open.flush() ? "flushed " : "of ") + open.kind(),
            none -> ledger.ofKind(open.kind()).stream().filter(may(open)).toList());
    int there = there(all, page.day());
    List<String> of =
        all.subList(0, there).stream().filter(one -> !one.equals(page.key())).limit(NAMED).toList();
    boolean itself = may(open).test(page.key()) && page.record().code().equals(open.kind());
    return new Link(
        open.flush() ? Kind.NEXT_ON_LINE : Kind.LOT_NOT_TOLD,
        open.reason(),
        open.line(),
        open.names(),
        of,
        there - (itself ? 1 : 0) - of.size(),
        Kilograms.of(open.flush() ? OptionalDouble.empty() : open.kg()),
        false);
  }

  /** How many were there on a day; they stand in the order in which they came. */
  private int there(List<String> keys, LocalDate day) {
    int low = 0;
    int high = keys.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (ledger.since(keys.get(middle)).isAfter(day)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private Predicate<String> may(Open open) {
    return open.flush() ? leaves : among;
  }

  private void line(Page page, List<Link> links) {
    String flush = page.record().flushed().map(Links::words).orElse("");
    add(links, left(Kind.NEXT_ON_LINE, Reason.NEXT_ON_LINE, flush, told(page)));
    add(links, left(Kind.ORDER_NOT_TOLD, Reason.ORDER_NOT_TOLD, flush, untold(page)));
  }

  private static String words(Flushed flush) {
    return Figures.plain(flush.kg(), Unit.KG) + " of " + flush.with();
  }

  private Few told(Page page) {
    return new Few(LineOrder.before(page).filter(leaves).stream().toList(), 0);
  }

  /** The first of many, and how many more there are. */
  private record Few(List<String> of, int more) {
    Few plus(Few others) {
      List<String> all = Stream.concat(of.stream(), others.of.stream()).toList();
      List<String> first = all.subList(0, Math.min(NAMED, all.size()));
      return new Few(first, more + others.more + all.size() - first.size());
    }
  }

  private Few untold(Page page) {
    Few few = new Few(List.of(), 0);
    for (Turn turn : order.mayBeAfter(page)) {
      few = few.plus(untold(page, turn));
    }
    return few;
  }

  private Few untold(Page page, Turn turn) {
    Set<String> all = ofTurn.computeIfAbsent(turn.id(), none -> last(turn));
    Set<String> not = new HashSet<>(Set.of(page.key()));
    LineOrder.before(page).ifPresent(not::add);
    order.next(page.key()).stream()
        .filter(next -> !order.isPossible(next, page))
        .forEach(next -> not.add(next.key()));
    List<String> of = all.stream().filter(one -> !not.contains(one)).limit(NAMED).toList();
    int none = (int) not.stream().filter(all::contains).count();
    return new Few(of, all.size() - none - of.size());
  }

  private Set<String> last(Turn turn) {
    Set<String> last = new LinkedHashSet<>();
    turn.last().stream().map(Page::key).filter(leaves).forEach(last::add);
    return last;
  }

  /** What a flush before another batch took along goes into the one that it was put into. */
  private void flushInto(Page flushed, Page page, List<Link> links) {
    Few before = told(flushed).plus(untold(flushed));
    String flush = flushed.record().flushed().map(Links::words).orElse("");
    // A batch is not said to have come out of itself.
    List<String> of = before.of().stream().filter(one -> !one.equals(page.key())).toList();
    add(links, left(Kind.FLUSH, Reason.FLUSH_INTO, flush, new Few(of, before.more())));
  }

  private static Link left(Kind kind, Reason reason, String names, Few from) {
    return new Link(kind, reason, "", names, from.of(), from.more(), Kilograms.NOT_TOLD, false);
  }

  private static List<String> first(List<String> of) {
    return of.subList(0, Math.min(NAMED, of.size()));
  }

  private static int more(List<String> of) {
    return Math.max(0, of.size() - NAMED);
  }

  /** A way in as a reason. */
  Doubt doubt(Link link, Page into) {
    return new Doubt(
        link.line(),
        link.reason(),
        link.names(),
        link.of().stream().map(ledger::written).toList(),
        link.more(),
        cleaned(link, into));
  }

  /**
   * A line that was cleaned before all of them were made was not cleaned between; one that is to be
   * cleaned is not clean yet.
   */
  private String cleaned(Link link, Page into) {
    boolean onLine = link.kind() == Kind.NEXT_ON_LINE || link.kind() == Kind.ORDER_NOT_TOLD;
    return into.record()
        .cleaned()
        .filter(it -> onLine && !order.isToCome(it.day()))
        .filter(it -> link.of().stream().noneMatch(of -> ledger.since(of).isAfter(it.day())))
        .map(it -> "on " + it.day() + " by " + it.by())
        .orElse("");
  }

  /** A way in as steps, one for each number that is named. */
  List<Step> steps(Link link, Page into) {
    boolean bin = link.kind() == Kind.SAME_BIN || link.certain();
    return link.of().stream()
        .map(
            from ->
                new Step(
                    ledger.written(from),
                    into.number(),
                    link.kind(),
                    link.line(),
                    bin ? link.names() : "",
                    link.kg(),
                    link.certain()))
        .toList();
  }
}
