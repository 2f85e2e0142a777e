package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.engine.records.FirstExpiredFirstOut.Pick;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.measure.Closeness;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Goes once through all planned batches and takes from the store what each weighs out. First what
 * their records name is put aside; then, day by day, premixes before what holds them, each takes
 * the lots that expire first of what is left. A premix that lacks is made, of ingredients that are
 * taken from the store in turn. Sheets, the purchase list and new batches all follow from this one
 * walk.
 */
public final class MaterialRequirements {
  private final FeedTables tables;
  private final LocalDate today;
  private final Stock stock;
  private final Coming coming;
  private final Supply supply;
  private final Map<String, Map<String, FirstExpiredFirstOut>> taken = new TreeMap<>();

  /**
   * What is to be made, and of what.
   *
   * @param number of the batch; of a quantity that no record plans, what it is called
   * @param record by which it is planned, where one is
   */
  public record Planned(
      String number, LocalDate day, BatchTarget order, Optional<BatchRecord> record) {
    /** A planned batch. */
    public static Planned of(BatchRecord record, BatchTarget order) {
      return new Planned(record.number(), record.day(), order, Optional.of(record));
    }

    GoesInto goesInto(LocalDate today) {
      return GoesInto.of(order, day, today);
    }

    private List<Entry> entries() {
      return record.map(BatchRecord::entries).orElse(List.of());
    }
  }

  /**
   * What comes of the walk.
   *
   * @param taken what each batch takes, by its number and the name of the line
   * @param spared kg of each ingredient that premixes which are there, or planned, bring into each
   *     batch, by its number
   * @param left what is left after all of them
   */
  public record Ahead(
      PurchaseList list,
      Map<String, Map<String, FirstExpiredFirstOut>> taken,
      Map<String, SortedMap<String, Double>> spared,
      Stock left) {
    /** What a planned batch takes, by the name of the line. */
    public Map<String, FirstExpiredFirstOut> of(String number) {
      return taken.getOrDefault(number, Map.of());
    }
  }

  /** All that is weighed out of one thing, whatever its lines, and what the record names for it. */
  private record Ask(Material material, double kg, List<Entry> named) {
    Ask plus(Ask other) {
      return new Ask(material, kg + other.kg(), named);
    }
  }

  private MaterialRequirements(
      FeedTables tables,
      Map<String, ResolvedPremix> premixes,
      LocalDate today,
      Stock stock,
      Coming coming) {
    this.tables = tables;
    this.today = today;
    this.stock = stock;
    this.coming = coming;
    this.supply = new Supply(tables, premixes, today, stock, coming);
  }

  /**
   * The walk over some planned batches.
   *
   * @param stock after all batches; those that are only planned are reckoned anew here
   */
  public static Ahead of(
      List<Planned> planned,
      FeedTables tables,
      Map<String, ResolvedPremix> premixes,
      Stock stock,
      LocalDate today) {
    return of(planned, List.of(), tables, premixes, stock, today);
  }

  /**
   * The same where some take before others, whatever their days are.
   *
   * @param first those that take first, and all batches of premixes
   */
  public static Ahead of(
      List<Planned> first,
      List<Planned> then,
      FeedTables tables,
      Map<String, ResolvedPremix> premixes,
      Stock stock,
      LocalDate today) {
    List<Planned> sooner = inOrder(first, premixes);
    List<BatchRecord> ofPremixes =
        sooner.stream()
            .flatMap(one -> one.record().stream())
            .filter(record -> premixes.containsKey(record.code()))
            .toList();
    Coming coming = new Coming(ofPremixes);
    return new MaterialRequirements(tables, premixes, today, stock.ofMade(), coming)
        .ahead(sooner, inOrder(then, premixes));
  }

  private static List<Planned> inOrder(
      List<Planned> planned, Map<String, ResolvedPremix> premixes) {
    List<Planned> inOrder = new ArrayList<>(planned);
    inOrder.sort(new InTurn(premixes));
    return inOrder;
  }

  private Ahead ahead(List<Planned> first, List<Planned> then) {
    take(first);
    take(then);
    List<Planned> all = new ArrayList<>(first);
    all.addAll(then);
    List<String> numbers = all.stream().map(Planned::number).toList();
    PastDate pastDate = new PastDate(tables, stock, all, taken, today);
    return new Ahead(
        new PurchaseList(numbers, supply.goods(), supply.premixes(), pastDate.lots()),
        taken,
        supply.spared(),
        stock);
  }

  private void take(List<Planned> inOrder) {
    inOrder.forEach(one -> asks(one).forEach(ask -> putAside(one, ask)));
    inOrder.forEach(one -> asks(one).forEach(ask -> take(one, ask)));
  }

  private static List<Ask> asks(Planned planned) {
    Map<String, Ask> asks = new LinkedHashMap<>();
    for (TargetWeight ask : planned.order().asks()) {
      List<Entry> named =
          planned.entries().stream()
              .filter(entry -> ask.material().isCalled(entry.line()))
              .filter(entry -> !entry.lot().isEmpty() || Bins.isFromBin(entry))
              .toList();
      asks.merge(ask.material().name(), new Ask(ask.material(), ask.kg(), named), Ask::plus);
    }
    return List.copyOf(asks.values());
  }

  private void putAside(Planned planned, Ask ask) {
    if (ask.named().isEmpty()) {
      return;
    }
    List<Pick> picks = new ArrayList<>();
    double each = ask.kg() / ask.named().size();
    double there = 0;
    for (Entry entry : ask.named()) {
      Pick pick = named(entry, each, planned.day());
      picks.add(pick);
      there += pick.kg();
    }
    double lacks = ask.kg() - there > Closeness.to(ask.kg()) ? ask.kg() - there : 0;
    took(planned, ask, new FirstExpiredFirstOut(picks, lacks, List.of()));
  }

  /** Takes what is there of what a record names. */
  private Pick named(Entry entry, double wanted, LocalDate day) {
    if (coming.has(entry.lot())) {
      return new Pick(entry.lot(), coming.take(entry.lot(), wanted, day));
    }
    Optional<BatchRecord> batch = Optional.ofNullable(tables.batches().get(entry.lot()));
    Pick pick =
        batch.isPresent()
            ? new Pick(entry.lot(), Math.min(wanted, stock.left(batch.get())))
            : ofLots(entry, wanted, new Bins(tables).lots(entry, day));
    stock.take(pick);
    return pick;
  }

  private Pick ofLots(Entry entry, double wanted, List<Lot> lots) {
    double left = lots.stream().mapToDouble(stock::left).sum();
    String number = lots.size() == 1 ? lots.get(0).number() : entry.bin();
    return new Pick(
        number, entry.bin(), lots.stream().map(Lot::number).toList(), Math.min(wanted, left));
  }

  private void take(Planned planned, Ask ask) {
    GoesInto into = planned.goesInto(today);
    FirstExpiredFirstOut named = chosen(planned).get(ask.material().name());
    if (named == null) {
      supply
          .take(ask.material(), ask.kg(), into, planned.number())
          .ifPresent(choice -> took(planned, ask, choice));
    } else {
      supply.need(ask.material(), ask.kg(), named.shortfall(), into, planned.number());
    }
  }

  private void took(Planned planned, Ask ask, FirstExpiredFirstOut choice) {
    chosen(planned).put(ask.material().name(), choice);
  }

  private Map<String, FirstExpiredFirstOut> chosen(Planned planned) {
    return taken.computeIfAbsent(planned.number(), none -> new LinkedHashMap<>());
  }
}
