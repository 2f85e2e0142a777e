package dev.pellucid.engine.report;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.PurchaseList;
import dev.pellucid.engine.records.PurchaseList.Good;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A purchase list as text and as HTML: what lacks first, then what the store has enough of. */
public final class PurchaseSheet {
  private static final String RECKONED =
      "Needed is what the planned batches weigh out with overage, and the premixes that are to be"
          + " made for them. The store gives lots that are passed, dry and good on the day of the"
          + " batch; to buy is rounded up to the gram. Whole bags and what other batches will take"
          + " come on top.";

  private final String house;
  private final LocalDate day;
  private final String currency;
  private final PurchaseList list;

  /** A list for one folder and day, with prices in its currency. */
  public PurchaseSheet(String house, LocalDate day, String currency, PurchaseList list) {
    this.house = house;
    this.day = day;
    this.currency = currency;
    this.list = list;
  }

  /** Plain text; lines end in {@code \n}. */
  public String text() {
    return new TextPage().render(blocks());
  }

  /** One file, to be written as UTF-8. */
  public String html() {
    return new HtmlPage().render("Purchase list " + day, blocks());
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title("Purchase list", house));
    blocks.add(
        new Facts(
            List.of(
                new Fact("Prices and store of", day.toString()),
                new Fact("For the batches", String.join(", ", list.batches())))));
    List<Good> lacking = list.goods().stream().filter(good -> good.lacking() > 0).toList();
    List<Good> there = list.goods().stream().filter(good -> good.lacking() == 0).toList();
    blocks.add(new Heading("To buy", false));
    blocks.add(lacking.isEmpty() ? new Words("Nothing: the store has it all.") : toBuy(lacking));
    if (!list.premixes().isEmpty()) {
      blocks.add(new Heading("Premixes to make first", false));
      blocks.add(premixes());
    }
    if (!there.isEmpty()) {
      blocks.add(new Heading("In the store", false));
      blocks.add(inStore(there));
    }
    blocks.add(new Words(RECKONED));
    return blocks;
  }

  private Table toBuy(List<Good> goods) {
    List<List<String>> rows = new ArrayList<>();
    double sum = 0;
    boolean priced = true;
    for (Good good : goods) {
      double money = good.lacking() * good.perKg().orElse(0);
      sum += money;
      priced &= good.perKg().isPresent();
      rows.add(
          List.of(
              good.title(),
              good.from().toString(),
              upToGram(good.needed()),
              good.fromStore() > 0 ? kg(good.fromStore()) : "",
              upToGram(good.lacking()),
              good.perKg().isPresent() ? Figures.fixed(good.perKg().getAsDouble(), 2) : "untold",
              good.perKg().isPresent() ? Figures.fixed(money, 2) : "",
              ""));
    }
    rows.add(
        List.of(
            priced ? "Together" : "Together, what has a price",
            "",
            "",
            "",
            "",
            "",
            Figures.fixed(sum, 2),
            ""));
    return new Table(
        List.of(
            new Column("Ingredient", Holds.WORDS),
            new Column("By", Holds.NAME),
            new Column("Needed kg", Holds.FIGURES),
            new Column("From the store kg", Holds.FIGURES),
            new Column("To buy kg", Holds.FIGURES),
            new Column(currency + "/kg", Holds.FIGURES),
            new Column("About " + currency, Holds.FIGURES),
            new Column("Ordered", Holds.ROOM)),
        rows,
        true);
  }

  private Table premixes() {
    return new Table(
        List.of(
            new Column("Premix", Holds.WORDS),
            new Column("By", Holds.NAME),
            new Column("To make kg", Holds.FIGURES)),
        list.premixes().stream()
            .map(
                one ->
                    List.of(
                        one.title() + " (" + one.code() + ")",
                        one.from().toString(),
                        upToGram(one.kg())))
            .toList(),
        false);
  }

  private static Table inStore(List<Good> goods) {
    return new Table(
        List.of(
            new Column("Ingredient", Holds.WORDS),
            new Column("From", Holds.NAME),
            new Column("Needed kg", Holds.FIGURES)),
        goods.stream()
            .map(good -> List.of(good.title(), good.from().toString(), upToGram(good.needed())))
            .toList(),
        false);
  }

  private static String kg(double kg) {
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
