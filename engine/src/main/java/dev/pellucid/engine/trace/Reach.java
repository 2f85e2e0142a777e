package dev.pellucid.engine.trace;

import dev.pellucid.engine.trace.LineOrder.Turn;
import dev.pellucid.engine.trace.Page.Drawn;
import dev.pellucid.engine.trace.Page.Open;
import dev.pellucid.engine.trace.Page.Taken;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far a number may have come from where it surely is, through any ways.
 *
 * <p>How it is in a batch tells where it can go from there. In the mix it may be left behind on the
 * line; in a part bag that the batch filled up it was never on the line. What was left behind on
 * the line goes on with the batch that took it up, but is not left behind a second time. Each batch
 * has the way that leads furthest; a batch comes up again only where a better way to it is found,
 * so that the work grows with the records and not with their pairs.
 */
final class Reach {
  /** From what leads furthest to what leads nowhere. */
  enum How {
    IN_MIX,
    IN_BAGS,
    /** With a flush, or of what a flush left behind. */
    BY_FLUSH,
    /** Left behind by the batch before. */
    BY_LINE,
    NOT;

    boolean isBetter(How other) {
      return compareTo(other) < 0;
    }

    /** How it is in what is weighed from it. */
    How weighed() {
      return this == IN_BAGS ? IN_MIX : this;
    }

    /** How it is in the bags that are begun with a part bag of it. */
    How partBag() {
      return this == IN_MIX ? IN_BAGS : this;
    }
  }

  private final Ledger ledger;
  private final Descent descent;
  private final LineOrder order;
  private final Map<String, How> how = new HashMap<>();
  private final Deque<String> next = new ArrayDeque<>();
  private final Map<String, Integer> frontiers = new HashMap<>();
  private final Map<Integer, List<Page>> waiting = new HashMap<>();

  Reach(Ledger ledger, Descent descent, LineOrder order, String key, Amounts sure) {
    this.ledger = ledger;
    this.descent = descent;
    this.order = order;
    put(key, How.IN_MIX);
    sure.inBags().forEach(one -> put(one, How.IN_BAGS));
    sure.inMix().forEach(one -> put(one, How.IN_MIX));
    while (!next.isEmpty()) {
      String from = next.remove();
      lead(from, how(from));
    }
  }

  /** How a number may be in a batch, or surely is. */
  How how(String key) {
    return how.getOrDefault(key, How.NOT);
  }

  boolean has(String key) {
    return how(key) != How.NOT;
  }

  /** Whether it may be left behind on the line. */
  boolean isInMix(String key) {
    return how(key) == How.IN_MIX;
  }

  private void put(String key, How found) {
    if (found.isBetter(how(key))) {
      how.put(key, found);
      next.add(key);
    }
  }

  private void lead(String from, How way) {
    for (Page page : descent.takers(from)) {
      for (Taken taken : page.taken()) {
        if (taken.key().equals(from)) {
          put(page.key(), taken.isInBagsOnly() ? way.partBag() : way.weighed());
        }
      }
    }
    ledger.drawn(from).forEach(page -> drawn(page, from, way));
    ledger.kinds(from).forEach(kind -> open(kind, from, way));
    if (way == How.IN_MIX) {
      ledger.page(from).ifPresent(this::line);
    }
  }

  private void drawn(Page page, String from, How way) {
    for (Drawn drawn : page.drawn()) {
      if (ledger.mayBe(drawn, from)) {
        put(page.key(), after(way, drawn.flush()));
      }
    }
  }

  private static How after(How way, boolean flush) {
    if (!flush) {
      return way.weighed();
    }
    return way == How.IN_MIX ? How.BY_FLUSH : How.NOT;
  }

  /**
   * Lines are asked in the order of days from behind, and none twice for the same way. Only what is
   * in the bags alone changes its way by that, so that a batch must not be asked for itself.
   */
  private void open(String kind, String from, How way) {
    List<Page> pages = ledger.open(kind);
    String asked = way + " " + kind;
    int at = way == How.IN_BAGS ? pages.size() : frontiers.getOrDefault(asked, pages.size());
    while (at > 0 && !pages.get(at - 1).day().isBefore(ledger.since(from))) {
      at--;
      open(pages.get(at), kind, from, way);
    }
    frontiers.put(asked, at);
  }

  private void open(Page page, String kind, String from, How way) {
    for (Open open : page.open()) {
      if (open.kind().equals(kind) && !page.key().equals(from)) {
        put(page.key(), after(way, open.flush()));
      }
    }
  }

  /** What it leaves behind goes into the next batch, and into what a flush between was put into. */
  private void line(Page page) {
    next(order.next(page.key()));
    for (Turn turn : order.mayBeBefore(page)) {
      List<Page> left = waiting.computeIfAbsent(turn.id(), none -> new ArrayList<>(turn.first()));
      next(left.stream().filter(one -> order.isPossible(page, one)).toList());
      left.removeIf(one -> order.isPossible(page, one));
    }
  }

  private void next(Collection<Page> pages) {
    for (Page page : pages) {
      put(page.key(), How.BY_LINE);
      Optional<String> into = ledger.put().flush(page.record());
      into.ifPresent(to -> put(to, How.BY_FLUSH));
    }
  }
}
