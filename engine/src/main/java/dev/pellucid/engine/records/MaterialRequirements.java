package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.engine.records.FirstExpiredFirstOut.Pick;
import dev.pellucid.engine.records.PurchaseList.Good;
import dev.pellucid.engine.records.PurchaseList.ToMake;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.measure.Closeness;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Goes through the planned batches day by day and takes from the store what each weighs out: the
 * lots that it names, else those that expire first. A premix that lacks is made, of ingredients
 * that are taken from the store in turn.
 */
public final class MaterialRequirements {
  private final FeedTables tables;
  private final Map<String, ResolvedPremix> premixes;
  private final Stock stock;
  private final Map<String, Double> coming = new TreeMap<>();
  private final Map<String, Need> goods = new TreeMap<>();
  private final Map<String, Need> toMake = new TreeMap<>();

  /** A planned batch and what it is to be made of. */
  public record Planned(BatchRecord record, BatchTarget order) {}

  /** What is needed of one thing so far. */
  private static final class Need {
    private final String title;
    private final OptionalDouble perKg;
    private double needed;
    private double lacking;
    private LocalDate from = LocalDate.MAX;
    private LocalDate lacksFrom = LocalDate.MAX;

    Need(String title, OptionalDouble perKg) {
      this.title = title;
      this.perKg = perKg;
    }

    void add(double kg, double lacks, LocalDate day) {
      needed += kg;
      from = from.isBefore(day) ? from : day;
      if (lacks > Closeness.to(kg)) {
        lacking += lacks;
        lacksFrom = lacksFrom.isBefore(day) ? lacksFrom : day;
      }
    }

    LocalDate day() {
      return lacking > 0 ? lacksFrom : from;
    }
  }

  private MaterialRequirements(
      FeedTables tables, Map<String, ResolvedPremix> premixes, Stock stock) {
    this.tables = tables;
    this.premixes = premixes;
    this.stock = stock;
  }

  /**
   * The list for some planned batches.
   *
   * @param stock after all batches; those that are only planned are reckoned anew here
   */
  public static PurchaseList of(
      List<Planned> planned, FeedTables tables, Map<String, ResolvedPremix> premixes, Stock stock) {
    return new MaterialRequirements(tables, premixes, stock.ofMade()).list(planned);
  }

  private PurchaseList list(List<Planned> planned) {
    List<Planned> inOrder = new ArrayList<>(planned);
    inOrder.sort(
        Comparator.comparing((Planned one) -> one.record().day())
            .thenComparing(one -> one.record().number()));
    for (Planned one : inOrder) {
      if (premixes.containsKey(one.record().code())) {
        coming.merge(one.record().code(), one.record().kg(), Double::sum);
      }
    }
    inOrder.forEach(this::take);
    return new PurchaseList(
        inOrder.stream().map(one -> one.record().number()).toList(), goods(), premixesToMake());
  }

  private void take(Planned planned) {
    for (TargetWeight ask : planned.order().asks()) {
      List<String> named =
          planned.record().entries().stream()
              .filter(entry -> planned.order().named(entry.line()).filter(ask::equals).isPresent())
              .map(BatchRecord.Entry::lot)
              .filter(lot -> !lot.isEmpty())
              .toList();
      need(ask.material(), ask.kg(), planned.record().day(), named);
    }
  }

  /** Rework is there or is not; nobody buys it. */
  private void need(Material material, double kg, LocalDate day, List<String> named) {
    Runnable need =
        material.byKind(
            single -> () -> buy(single, kg, day, named),
            premixed -> () -> take(premixed.premix(), kg, day, named),
            reworked -> () -> {});
    need.run();
  }

  private void buy(Material.Single single, double kg, LocalDate day, List<String> named) {
    Ingredient ingredient = single.ingredient();
    double lacks =
        named.isEmpty()
            ? taken(kg, FirstExpiredFirstOut.of(ingredient, kg, day, tables, stock))
            : takenOf(kg, named);
    goods
        .computeIfAbsent(ingredient.name(), n -> new Need(ingredient.title(), perKg(single)))
        .add(kg, lacks, day);
  }

  private void take(ResolvedPremix premix, double kg, LocalDate day, List<String> named) {
    double lacks =
        named.isEmpty()
            ? taken(kg, FirstExpiredFirstOut.of(premix, kg, day, tables, stock))
            : takenOf(kg, named);
    make(premix, kg, lacks, day);
  }

  private static OptionalDouble perKg(Material.Single single) {
    return single.price().stream().mapToDouble(Price::perKg).findFirst();
  }

  /** What lacks of a premix comes from batches that are planned of it, else it is to be made. */
  private void make(ResolvedPremix premix, double kg, double lacks, LocalDate day) {
    double comes = Math.min(lacks, coming.getOrDefault(premix.code(), 0.0));
    coming.merge(premix.code(), -comes, Double::sum);
    double rest = lacks - comes;
    toMake
        .computeIfAbsent(premix.code(), code -> new Need(premix.title(), OptionalDouble.empty()))
        .add(kg, rest, day);
    if (rest > Closeness.to(kg)) {
      for (ResolvedPremix.Part part : premix.parts()) {
        double of = (part.share().part() + part.onTop().part()) * rest;
        need(part.material(), of, day, List.of());
      }
    }
  }

  /** Takes what was chosen; gives what lacks. */
  private double taken(double kg, Optional<FirstExpiredFirstOut> choice) {
    choice.ifPresent(lots -> lots.picks().forEach(stock::take));
    return choice.map(FirstExpiredFirstOut::shortfall).orElse(kg);
  }

  private double takenOf(double kg, List<String> named) {
    double wanted = kg;
    for (String number : named) {
      Lot lot = tables.lots().get(number);
      BatchRecord batch = tables.batches().get(number);
      double left = lot != null ? stock.left(lot) : batch != null ? stock.left(batch) : 0;
      double takes = Math.min(wanted, left);
      stock.take(new Pick(number, takes));
      wanted -= takes;
    }
    return wanted;
  }

  private List<Good> goods() {
    return goods.values().stream()
        .sorted(
            Comparator.comparing((Need need) -> need.lacking == 0)
                .thenComparing(Need::day)
                .thenComparing(need -> need.title))
        .map(need -> new Good(need.title, need.needed, need.lacking, need.day(), need.perKg))
        .toList();
  }

  private List<ToMake> premixesToMake() {
    List<ToMake> list = new ArrayList<>();
    toMake.forEach(
        (code, need) -> {
          if (need.lacking > 0) {
            list.add(new ToMake(need.title, code, need.lacking, need.day()));
          }
        });
    return list;
  }
}
