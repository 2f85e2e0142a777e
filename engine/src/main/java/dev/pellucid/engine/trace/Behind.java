package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.engine.trace.LineOrder.Turn;
import dev.pellucid.engine.trace.Links.Link;
import dev.pellucid.engine.trace.Page.Drawn;
import dev.pellucid.engine.trace.Page.Open;
import dev.pellucid.engine.trace.Page.Taken;
import dev.pellucid.engine.trace.Recall.Kind;
import dev.pellucid.engine.trace.Recall.Step;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Every number that is in one batch or may be, by the same ways that {@link Reach} goes onward:
 * here each is gone against its direction. What the way further on asks of a number goes with it:
 * once a line was gone along, no other line is; and along the line only what was in the mix is left
 * behind.
 */
final class Behind {
  /** What the rest of the way asks. */
  enum Asks {
    NOTHING,
    /** That it was in the mix, and came along no line. */
    MIX,
    /** That it came along no line. */
    NO_LINE
  }

  private record Stop(String key, Asks asks) {}

  private final Ledger ledger;
  private final LineOrder order;
  private final Links links;
  private final String batch;
  private final Set<Stop> seen = new LinkedHashSet<>();
  private final Deque<Stop> next = new ArrayDeque<>();
  private final Map<String, Integer> frontiers = new HashMap<>();
  private final Map<String, List<String>> passedOver = new HashMap<>();
  private final Set<String> turns = new HashSet<>();

  Behind(Ledger ledger, LineOrder order, String batch) {
    this.ledger = ledger;
    this.order = order;
    this.batch = batch;
    this.links = new Links(ledger, order, one -> true, one -> true);
    put(batch, Asks.NOTHING);
    while (!next.isEmpty()) {
      Stop stop = next.remove();
      ledger.page(stop.key()).ifPresent(page -> lead(page, stop.asks()));
    }
  }

  /** All of them, without the batch itself. */
  Set<String> numbers() {
    Set<String> numbers = new LinkedHashSet<>();
    seen.stream().map(Stop::key).filter(key -> !key.equals(batch)).forEach(numbers::add);
    return numbers;
  }

  /** How they came in, in the order of the days. */
  List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (Page page : ledger.pages()) {
      for (Link link : links(page)) {
        steps.addAll(links.steps(link, page));
      }
    }
    return steps.stream().distinct().toList();
  }

  private List<Link> links(Page page) {
    boolean any = has(page, Asks.NOTHING);
    boolean noLine = has(page, Asks.NO_LINE);
    if (!any && !noLine && !has(page, Asks.MIX)) {
      return List.of();
    }
    return links.into(page).stream()
        .filter(link -> any || !isAlongLine(link))
        .filter(link -> any || noLine || link.kind() != Kind.PART_BAG)
        .toList();
  }

  private boolean has(Page page, Asks asks) {
    return seen.contains(new Stop(page.key(), asks));
  }

  private static boolean isAlongLine(Link link) {
    return link.kind() == Kind.NEXT_ON_LINE
        || link.kind() == Kind.ORDER_NOT_TOLD
        || (link.kind() == Kind.FLUSH && !link.certain());
  }

  private void put(String key, Asks asks) {
    Stop stop = new Stop(key, asks);
    if (seen.add(stop)) {
      next.add(stop);
    }
  }

  private static Asks weighed(Asks asks) {
    return asks == Asks.NOTHING ? Asks.NOTHING : Asks.NO_LINE;
  }

  private void lead(Page page, Asks asks) {
    for (Taken taken : page.taken()) {
      if (!taken.isInBagsOnly() || asks != Asks.MIX) {
        put(taken.key(), weighed(asks));
      }
    }
    for (Drawn drawn : page.drawn()) {
      if (!drawn.flush() || asks == Asks.NOTHING) {
        Asks further = drawn.flush() ? Asks.MIX : weighed(asks);
        ledger.mayBe(drawn).forEach(lot -> put(lot, further));
      }
    }
    for (Open open : page.open()) {
      if (!open.flush() || asks == Asks.NOTHING) {
        open(open.kind(), page, asks, open.flush() ? Asks.MIX : weighed(asks));
      }
    }
    if (asks == Asks.NOTHING) {
      line(page);
      for (BatchRecord flushed : ledger.put().flushesIn(page.key())) {
        ledger.page(ByLetters.number(flushed.number())).ifPresent(this::line);
      }
    }
  }

  /**
   * Those of a kind are asked in the order in which they came, and none twice for the same. Where
   * it must have been in the mix a batch would ask less of itself, and must not: it waits for
   * another one to ask for it.
   */
  private void open(String kind, Page page, Asks asks, Asks further) {
    List<String> all = ledger.ofKind(kind);
    String asked = asks + " " + further + " " + kind;
    List<String> waiting = passedOver.computeIfAbsent(asked, none -> new ArrayList<>());
    waiting.removeIf(one -> asked(one, page, further));
    int at = frontiers.getOrDefault(asked, 0);
    while (at < all.size() && !ledger.since(all.get(at)).isAfter(page.day())) {
      if (!asked(all.get(at), page, further)) {
        waiting.add(all.get(at));
      }
      at++;
    }
    frontiers.put(asked, at);
  }

  private boolean asked(String key, Page page, Asks further) {
    boolean asked = !key.equals(page.key()) && !ledger.since(key).isAfter(page.day());
    if (asked) {
      put(key, further);
    }
    return asked;
  }

  private void line(Page page) {
    LineOrder.before(page).ifPresent(before -> put(before, Asks.MIX));
    for (Turn turn : order.mayBeAfter(page)) {
      if (turns.add(turn.id() + " " + page.key())) {
        turn.last().stream()
            .filter(one -> order.isPossible(one, page))
            .forEach(one -> put(one.key(), Asks.MIX));
      }
    }
  }
}
