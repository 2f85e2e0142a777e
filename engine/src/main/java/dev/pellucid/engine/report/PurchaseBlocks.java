package dev.pellucid.engine.report;

import dev.pellucid.engine.data.Ordering;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.PurchaseList;
import dev.pellucid.engine.records.PurchaseList.Good;
import dev.pellucid.engine.records.PurchaseList.ToMake;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.text.Plural;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What is to be ordered and what is to be made first, with what comes too late. */
final class PurchaseBlocks {
  private final LocalDate day;
  private final String currency;
  private final PurchaseList list;

  /**
   * @param day on which the order goes out
   */
  PurchaseBlocks(LocalDate day, String currency, PurchaseList list) {
    this.day = day;
    this.currency = currency;
    this.list = list;
  }

  /** What to do: what comes too late, what is to be ordered, what is to be made first. */
  void toDo(List<Block> blocks) {
    List<String> late = late();
    if (!late.isEmpty()) {
      blocks.add(new Warnings(late));
    }
    toOrder(blocks);
    if (!list.premixes().isEmpty()) {
      blocks.add(new Heading("Premixes to make first", false));
      blocks.add(premixes());
    }
  }

  /** How it was reckoned; nothing where nothing is needed. */
  void needed(List<Block> blocks) {
    if (!list.goods().isEmpty()) {
      blocks.add(new Heading("What is needed", false));
      blocks.add(needed());
    }
  }

  /** What an order of today brings too late. */
  private List<String> late() {
    List<String> late = new ArrayList<>();
    for (Good good : list.goods()) {
      if (good.isLate(day)) {
        late.add(
            "Too late: "
                + good.title()
                + " was to be ordered by "
                + good.orderBy().orElseThrow()
                + ". Ordered today it comes on "
                + good.comes(day).orElseThrow()
                + ", and "
                + good.firstFor()
                + " lacks it on "
                + good.from()
                + ": ask for an earlier day, or put the batch off.");
      }
    }
    return late;
  }

  /** For each who sells, so that one call orders it; what nobody is told to sell goes last. */
  private void toOrder(List<Block> blocks) {
    Map<String, List<Good>> bySupplier = new LinkedHashMap<>();
    for (Good good : list.goods()) {
      if (good.lacking() > 0) {
        String from = good.ordering().flatMap(Ordering::supplier).orElse("");
        bySupplier.computeIfAbsent(from, none -> new ArrayList<>()).add(good);
      }
    }
    List<Good> untold = bySupplier.remove("");
    if (untold != null) {
      bySupplier.put("", untold);
    }
    bySupplier.forEach(
        (from, goods) -> {
          blocks.add(new Heading(from.isEmpty() ? "To order" : "To order from " + from, false));
          blocks.add(orders(goods));
        });
    if (bySupplier.isEmpty()) {
      blocks.add(new Heading("To order", false));
      blocks.add(new Words("Nothing: the store has it all."));
    } else {
      blocks.add(new Words(together(bySupplier.values())));
    }
  }

  private String together(Collection<List<Good>> goods) {
    List<Good> all = goods.stream().flatMap(List::stream).toList();
    double sum = all.stream().mapToDouble(Good::money).sum();
    long unpriced = all.stream().filter(good -> good.perKg().isEmpty()).count();
    return "Together about "
        + Figures.fixed(sum, 2)
        + " "
        + currency
        + (unpriced == 0
            ? "."
            : ", without " + Plural.of(unpriced, "ingredient") + " of no price.");
  }

  private Table orders(List<Good> goods) {
    List<List<String>> rows = new ArrayList<>();
    for (Good good : goods) {
      rows.add(
          List.of(
              good.title(),
              good.orderBy().map(LocalDate::toString).orElse(""),
              good.from().toString(),
              packs(good),
              good.packs().isPresent() ? kg(good.over()) : "",
              good.perKg().isPresent() ? Figures.fixed(good.money(), 2) : "",
              ""));
    }
    return new Table(
        List.of(
            new Column("Ingredient", Holds.WORDS),
            new Column("Order by", Holds.NAME),
            new Column("Lacks on", Holds.NAME),
            new Column("Order", Holds.FIGURES),
            new Column("Over kg", Holds.FIGURES),
            new Column("About " + currency, Holds.FIGURES),
            new Column("Ordered", Holds.ROOM)),
        rows,
        false);
  }

  /** {@code 4 of 25 kg at 43.75}; where no pack is told, {@code 40.000 kg at 1.15}. */
  private static String packs(Good good) {
    return good.packs().isPresent()
        ? good.packs().getAsLong()
            + " of "
            + Figures.plain(good.pack().orElseThrow())
            + " kg"
            + at(good.perPack())
        : upToGram(good.ordered()) + " kg" + at(good.perKg());
  }

  private static String at(OptionalDouble price) {
    return price.isPresent() ? " at " + Figures.fixed(price.getAsDouble(), 2) : ", price untold";
  }

  private Table premixes() {
    return new Table(
        List.of(
            new Column("Premix", Holds.WORDS),
            new Column("By", Holds.NAME),
            new Column("To make kg", Holds.FIGURES),
            new Column("Planned", Holds.WORDS)),
        list.premixes().stream()
            .map(
                one ->
                    List.of(
                        one.title() + " (" + one.code() + ")",
                        one.from().toString(),
                        upToGram(one.kg()),
                        planned(one)))
            .toList(),
        false);
  }

  private static String planned(ToMake one) {
    return one.planned().map(number -> "too late: " + number).orElse("no");
  }

  private Table needed() {
    return new Table(
        List.of(
            new Column("Ingredient", Holds.WORDS),
            new Column("From", Holds.NAME),
            new Column("Needed kg", Holds.FIGURES),
            new Column("From the store kg", Holds.FIGURES),
            new Column("Lacks kg", Holds.FIGURES)),
        list.goods().stream()
            .map(
                good ->
                    List.of(
                        good.title(),
                        good.from().toString(),
                        upToGram(good.needed()),
                        good.fromStore() > 0 ? fromStore(good) : "",
                        good.lacking() > 0 ? upToGram(good.lacking()) : ""))
            .toList(),
        false);
  }

  /** So that it adds up with the figures beside it. */
  private static String fromStore(Good good) {
    return new BigDecimal(upToGram(good.needed()))
        .subtract(new BigDecimal(upToGram(good.lacking())))
        .toPlainString();
  }

  static String kg(double kg) {
    return Figures.visible(kg, 3);
  }

  /**
   * Never too little: what is left of binary rounding beyond a millionth of a kg does not count.
   */
  private static String upToGram(double kg) {
    return BigDecimal.valueOf(kg)
        .setScale(6, RoundingMode.HALF_EVEN)
        .setScale(3, RoundingMode.CEILING)
        .toPlainString();
  }
}
