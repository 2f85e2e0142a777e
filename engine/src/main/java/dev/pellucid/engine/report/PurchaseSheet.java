package dev.pellucid.engine.report;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.PurchaseList;
import dev.pellucid.engine.records.PurchaseList.Spoiling;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A purchase list as text and as HTML: what comes too late, what is to be ordered, what is to be
 * made first, what spoils, then how all of it was reckoned.
 */
public final class PurchaseSheet {
  private static final String RECKONED =
      "Needed is what the planned batches weigh out with overage, and the premixes that are to be"
          + " made for them, in the order of their days. The store gives lots that are passed for"
          + " them, dry and good on the day of the batch. What lacks is rounded up to the gram, and"
          + " to whole packs where a file of prices tells the pack. The day to order by is the"
          + " first day on which it lacks, less the lead time.";

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
    PurchaseBlocks purchases = new PurchaseBlocks(day, currency, list);
    purchases.toDo(blocks);
    if (!list.spoiling().isEmpty()) {
      blocks.add(new Heading("Past its date before it is used up", false));
      blocks.add(spoiling());
    }
    purchases.needed(blocks);
    blocks.add(new Words(RECKONED));
    return blocks;
  }

  private Table spoiling() {
    List<List<String>> rows = new ArrayList<>();
    for (Spoiling lot : list.spoiling()) {
      rows.add(
          List.of(
              lot.lot(),
              lot.title(),
              lot.until().toString(),
              PurchaseBlocks.kg(lot.kg()),
              lot.perKg().isPresent()
                  ? Figures.fixed(lot.kg() * lot.perKg().getAsDouble(), 2)
                  : "untold",
              remedy(lot)));
    }
    return new Table(
        List.of(
            new Column("Lot", Holds.NAME),
            new Column("Ingredient", Holds.WORDS),
            new Column("Good until", Holds.NAME),
            new Column("Left kg", Holds.FIGURES),
            new Column("About " + currency, Holds.FIGURES),
            new Column("What could be done", Holds.WORDS)),
        rows,
        false);
  }

  private String remedy(Spoiling lot) {
    if (lot.hindrance().isPresent()) {
      return "it " + lot.hindrance().get();
    }
    if (lot.until().isBefore(day)) {
      return "past its date already";
    }
    if (!lot.couldTake().isEmpty()) {
      return "could go into " + String.join(", ", lot.couldTake());
    }
    return lot.wouldTake().isEmpty()
        ? "no planned batch takes it"
        : "by then make " + String.join(", ", lot.wouldTake());
  }
}
