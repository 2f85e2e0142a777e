package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.trace.Links.Link;
import dev.pellucid.engine.trace.Reach.How;
import dev.pellucid.engine.trace.Recall.Kind;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.Trace.Doubt;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Where one number is, and where it may be. */
final class Found {
  private final String key;
  private final Ledger ledger;
  private final Descent descent;
  private final Amounts amounts;
  private final Reach reach;
  private final Links links;
  private final Map<String, List<Link>> into = new HashMap<>();
  private final Map<String, Kilograms> mixed = new HashMap<>();
  private final Map<String, Kilograms> bagged = new HashMap<>();

  Found(Ledger ledger, Descent descent, LineOrder order, String key) {
    this.key = key;
    this.ledger = ledger;
    this.descent = descent;
    this.amounts = Amounts.of(descent, key);
    this.reach = new Reach(ledger, descent, order, key, amounts);
    this.links = new Links(ledger, order, reach::has, reach::isInMix);
  }

  String key() {
    return key;
  }

  Amounts amounts() {
    return amounts;
  }

  boolean holds(Page page) {
    return amounts.isIn(page.key());
  }

  /** Whether a batch may hold it, and not only what was left behind on the line. */
  boolean may(Page page) {
    return isFound(page) && reach.how(page.key()) != How.BY_LINE;
  }

  /** Whether a batch may hold it by what was left behind on the line alone. */
  boolean mayOnLine(Page page) {
    return isFound(page) && reach.how(page.key()) == How.BY_LINE;
  }

  private boolean isFound(Page page) {
    return !holds(page) && !page.key().equals(key) && reach.has(page.key());
  }

  /** Whether it may be left behind on the line by a batch. */
  boolean isInMix(Page page) {
    return reach.isInMix(page.key());
  }

  /** Whether a batch holds it, may hold it, or is it. */
  boolean concerns(Page page) {
    return reach.has(page.key());
  }

  List<Doubt> doubts(Page page) {
    return into(page).stream().map(link -> links.doubt(link, page)).distinct().toList();
  }

  List<Step> steps(Page page) {
    return into(page).stream()
        .flatMap(link -> links.steps(link, page).stream())
        .distinct()
        .toList();
  }

  private List<Link> into(Page page) {
    return into.computeIfAbsent(page.key(), none -> links.into(page));
  }

  /** kg that can be in a batch at most, as far as records tell. */
  Kilograms most(Page page) {
    if (mixed.isEmpty()) {
      reckon();
    }
    return mixed(page.key()).plus(bagged(page.key()));
  }

  private Kilograms mixed(String batch) {
    return mixed.getOrDefault(batch, Kilograms.NONE);
  }

  private Kilograms bagged(String batch) {
    return bagged.getOrDefault(batch, Kilograms.NONE);
  }

  /** Each batch after those that it surely took of. */
  private void reckon() {
    for (int place = 0; place < descent.size(); place++) {
      ledger.page(descent.key(place)).filter(this::concerns).ifPresent(this::reckon);
    }
  }

  private void reckon(Page page) {
    Kilograms mix = Kilograms.NONE;
    Kilograms bags = Kilograms.NONE;
    for (Link link : into(page)) {
      if (link.kind() == Kind.PART_BAG) {
        bags = bags.plus(most(link, page));
      } else {
        mix = mix.plus(most(link, page));
      }
    }
    mixed.put(page.key(), mix);
    bagged.put(page.key(), bags);
  }

  private Kilograms most(Link link, Page page) {
    if (link.of().equals(List.of(key)) && link.more() == 0) {
      return link.kg();
    }
    return link.certain() ? through(link, page) : Kilograms.NOT_TOLD;
  }

  private Kilograms through(Link link, Page page) {
    String from = link.of().get(0);
    int place = descent.place(from).orElseThrow();
    if (descent.areTogether(place, descent.of(page))) {
      return Kilograms.NOT_TOLD;
    }
    Page source = descent.page(place);
    Kilograms ofMix = mixed(from).part(Amounts.part(link.kg(), source.made()));
    return ofMix.plus(bagged(from).part(bag(link.kg(), source)));
  }

  /** How much of a part bag that was filled up can be in so many kg. */
  private static OptionalDouble bag(Kilograms kg, Page source) {
    double begun =
        source
            .record()
            .bags()
            .flatMap(BatchRecord.Bags::begunWith)
            .map(BatchRecord.BegunWith::kg)
            .orElse(0.0);
    return OptionalDouble.of(kg.whole() && begun > 0 ? Math.min(1, kg.told() / begun) : 1);
  }
}
