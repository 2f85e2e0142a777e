package dev.pellucid.engine.records;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.records.FirstExpiredFirstOut.Pick;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.measure.Closeness;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Where what batches weigh out comes from: lots of the store, batches of premixes that are made or
 * planned; the rest is bought, or made of ingredients in turn.
 */
final class Supply {
  private final FeedTables tables;
  private final Map<String, ResolvedPremix> premixes;
  private final LocalDate today;
  private final Stock stock;
  private final Coming coming;
  private final Map<String, Need> goods = new TreeMap<>();
  private final Map<String, Material.Single> singles = new TreeMap<>();
  private final Map<String, Need> toMake = new TreeMap<>();
  private final Map<String, SortedMap<String, Double>> spared = new TreeMap<>();

  Supply(
      FeedTables tables,
      Map<String, ResolvedPremix> premixes,
      LocalDate today,
      Stock stock,
      Coming coming) {
    this.tables = tables;
    this.premixes = premixes;
    this.today = today;
    this.stock = stock;
    this.coming = coming;
  }

  /**
   * Takes what is to be taken first, and writes down what is needed; absent where the folder keeps
   * none of it.
   *
   * @param batch for which it is needed
   */
  Optional<FirstExpiredFirstOut> take(Material material, double kg, GoesInto into, String batch) {
    Optional<FirstExpiredFirstOut> choice = choose(material, kg, into);
    need(material, kg, choice.map(FirstExpiredFirstOut::shortfall).orElse(kg), into, batch);
    return choice;
  }

  private Optional<FirstExpiredFirstOut> choose(Material material, double kg, GoesInto into) {
    return material.byKind(
        single ->
            FirstExpiredFirstOut.of(single.ingredient(), kg, into, tables, stock).map(this::take),
        premixed -> ofPremix(premixed.premix(), kg, into).map(this::take),
        reworked -> Optional.empty());
  }

  /** Of batches that are made, then of those that are planned by that day. */
  private Optional<FirstExpiredFirstOut> ofPremix(ResolvedPremix premix, double kg, GoesInto into) {
    Optional<FirstExpiredFirstOut> made = FirstExpiredFirstOut.of(premix, kg, into, tables, stock);
    List<Pick> planned = coming.there(premix, into.day());
    if (made.isEmpty() && planned.isEmpty()) {
      return Optional.empty();
    }
    List<Pick> there = new ArrayList<>();
    made.ifPresent(choice -> there.addAll(choice.picks()));
    there.addAll(planned);
    List<String> passedOver = made.map(FirstExpiredFirstOut::passedOver).orElse(List.of());
    return Optional.of(FirstExpiredFirstOut.of(kg, there, passedOver));
  }

  private FirstExpiredFirstOut take(FirstExpiredFirstOut choice) {
    choice.picks().stream().filter(pick -> !coming.has(pick.number())).forEach(stock::take);
    choice.picks().stream().filter(pick -> coming.has(pick.number())).forEach(coming::take);
    return choice;
  }

  /**
   * Writes down what is needed. Rework is there or is not; nobody buys it.
   *
   * @param lacks what of it the store does not give
   * @param batch for which it is needed
   */
  void need(Material material, double kg, double lacks, GoesInto into, String batch) {
    Runnable need =
        material.byKind(
            single -> () -> buy(single, kg, lacks, into, batch),
            premixed -> () -> make(premixed.premix(), kg, lacks, into, batch),
            reworked -> () -> {});
    need.run();
  }

  private void buy(Material.Single single, double kg, double lacks, GoesInto into, String batch) {
    String name = single.ingredient().name();
    singles.put(name, single);
    goods.computeIfAbsent(name, none -> new Need()).add(kg, lacks, into.day(), batch);
  }

  /** What lacks of a premix comes of batches planned too late, else it is to be made in time. */
  private void make(ResolvedPremix premix, double kg, double lacks, GoesInto into, String batch) {
    double rest = lacks - coming.late(premix, lacks, into.day());
    spare(premix, kg - rest, spared.computeIfAbsent(batch, none -> new TreeMap<>()));
    toMake.computeIfAbsent(premix.code(), none -> new Need()).add(kg, rest, into.day(), batch);
    if (rest <= Closeness.to(kg)) {
      return;
    }
    GoesInto made = GoesInto.of(premix, rest, into.day(), today);
    for (ResolvedPremix.Part part : premix.parts()) {
      take(part.material(), part.weighed() * rest, made, batch);
    }
  }

  /** What a premix that is there, or planned, need not be made of for a batch. */
  private static void spare(ResolvedPremix premix, double kg, SortedMap<String, Double> spared) {
    for (ResolvedPremix.Part part : premix.parts()) {
      double of = part.weighed() * kg;
      Runnable spare =
          part.material()
              .byKind(
                  single -> () -> spared.merge(single.ingredient().name(), of, Double::sum),
                  premixed -> () -> spare(premixed.premix(), of, spared),
                  reworked -> () -> {});
      spare.run();
    }
  }

  /** kg of each ingredient that premixes spare each batch, by its number. */
  Map<String, SortedMap<String, Double>> spared() {
    return spared;
  }

  /** In the order in which they are to be ordered. */
  List<PurchaseList.Good> goods() {
    List<PurchaseList.Good> list = new ArrayList<>();
    goods.forEach(
        (name, need) ->
            Optional.ofNullable(singles.get(name)).ifPresent(it -> list.add(good(it, need))));
    list.sort(PurchaseList.ORDER);
    return list;
  }

  private PurchaseList.Good good(Material.Single single, Need need) {
    Ingredient ingredient = single.ingredient();
    OptionalDouble perKg = single.price().stream().mapToDouble(Price::perKg).findFirst();
    return new PurchaseList.Good(
        ingredient.name(),
        ingredient.title(),
        need.needed(),
        need.lacking(),
        need.day(),
        need.batch(),
        perKg,
        tables.ordering(ingredient.name(), today));
  }

  /** Those that are not planned, then those that are planned too late. */
  List<PurchaseList.ToMake> premixes() {
    List<PurchaseList.ToMake> list = new ArrayList<>();
    toMake.forEach(
        (code, need) -> {
          if (need.lacking() > 0) {
            list.add(toMake(code, need.lacking(), need.day(), Optional.empty()));
          }
        });
    for (Coming.Late late : coming.late()) {
      String number = late.batch().number();
      list.add(toMake(late.batch().code(), late.kg(), late.needed(), Optional.of(number)));
    }
    return list;
  }

  private PurchaseList.ToMake toMake(
      String code, double kg, LocalDate from, Optional<String> planned) {
    ResolvedPremix premix = premixes.get(code);
    String title = premix == null ? code : premix.title();
    return new PurchaseList.ToMake(title, code, kg, from, planned);
  }
}
