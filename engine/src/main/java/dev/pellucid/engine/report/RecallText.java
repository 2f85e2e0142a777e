package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.RecallFigures.amount;

import dev.pellucid.engine.html.Inline;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Stamp;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.Limit;
import dev.pellucid.engine.trace.Recall.Store;
import dev.pellucid.engine.trace.RecallList;
import dev.pellucid.engine.trace.RecallTally;
import dev.pellucid.engine.trace.RecallTally.Part;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;

/**
 * A recall as text and as a page that prints on A4, for somebody who has to stop and to call: what
 * it is, what to stop, whom to call, then the rest.
 */
public final class RecallText {
  private static final String MORE = Inline.text("report/recall.css");

  private static final List<String> CAUTIONS =
      List.of(
          "Local law and the authority come first. In many places feed that may be unsafe has to be"
              + " told to the authority at once, whatever its amount: find out whom to tell, and do"
              + " not wait until the list is whole.",
          "A veterinarian, and whoever sold the lot, may know what the fault does to fish and to"
              + " people. Tell them early.",
          "Keep what is stopped, what comes back and the samples apart and marked. Nothing is mixed,"
              + " reworked or thrown away until somebody who may decide has decided.",
          "Write down whom you called, when, and how much they have left; write what comes back into"
              + " returned: of its batch.",
          "This list is as good as the records. Ask the people who made and loaded these batches.");

  /** So many are told by name in the head. */
  private static final int FEW = 6;

  private final RecallList told;
  private final RecallTally tally;

  private RecallText(RecallList told) {
    this.told = told;
    this.tally = told.tally();
  }

  /** Plain text; lines end in {@code \n}. */
  public static String text(RecallList told) {
    return new TextPage().render(new RecallText(told).blocks());
  }

  /** One file, to be written as UTF-8. */
  public static String html(RecallList told) {
    return new HtmlPage().render("Recall of " + told.number(), MORE, new RecallText(told).blocks());
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title("Recall of " + told.number(), ""));
    if (!told.unsearched().isEmpty()) {
      blocks.add(new Stamp("THIS LIST MAY NOT BE WHOLE", notSearched()));
    }
    blocks.add(new Facts(head()));
    RecallStop stop = new RecallStop(told);
    stop.into(blocks);
    new RecallCalls(told).into(blocks);
    told.origins().ifPresent(origins -> new RecallSuppliers(told.number(), origins).into(blocks));
    stop.write(blocks);
    new RecallBalances(told).into(blocks);
    RecallWays ways = new RecallWays(told);
    ways.samples(blocks);
    ways.ways(blocks);
    searched(blocks);
    blocks.add(new Heading("Before you act on it", false));
    blocks.add(new Points(CAUTIONS));
    return blocks;
  }

  private static final String UNSURE = "as far as could be searched";

  /** The first of them, so that nobody has to look for what to mend. */
  private List<String> notSearched() {
    List<String> all = told.unsearched();
    List<String> first = new ArrayList<>();
    all.stream().limit(FEW).forEach(one -> first.add("not searched: " + one));
    if (all.size() > FEW) {
      first.add("and " + (all.size() - FEW) + " more, under What was searched");
    }
    return first;
  }

  private List<Fact> head() {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("It is", TraceWords.facts(told.answer().thing(), ", ")));
    if (told.answer().thing().lot().isPresent()) {
      facts.add(new Fact("Tell its supplier", TraceWords.supplier(told.answer().thing())));
    }
    facts.add(new Fact("It stands", RecallWords.state(told.answer().state())));
    boolean made = told.answer().thing().batch().isPresent();
    facts.add(
        new Fact(
            made ? "It and what holds it" : "Hold it",
            batches(tally.certain().batches()) + ", by the records" + planned(true)));
    facts.add(new Fact("May hold it", may(tally.possible())));
    facts.add(new Fact("Out, of those that hold it", out(tally.certain(), true)));
    facts.add(new Fact("Out, of those that may", out(tally.possible(), false)));
    if (!made) {
      facts.add(
          new Fact(
              "In the house, of it itself",
              tally.left().map(RecallText::store).orElse("no record can say")));
    }
    facts.add(new Fact("In the house, with it", house(tally.certain())));
    facts.add(new Fact("In the house, perhaps", house(tally.possible())));
    facts.add(new Fact("Asked in", told.house() + ", on " + told.day()));
    told.otherDay().ifPresent(it -> facts.add(new Fact("The day", it)));
    return facts;
  }

  /** Batches that are to be made with it, which are none of those that were made. */
  private String planned(boolean certain) {
    List<Affected> planned =
        told.answer().stop().planned().stream().filter(one -> one.certain() == certain).toList();
    int cleaned = (int) planned.stream().filter(Affected::isCleaned).count();
    return planned(planned.size() - cleaned, ", not to be made")
        + planned(cleaned, ", of which the record says that the line was cleaned: decide");
  }

  private static String planned(int number, String what) {
    return number == 0
        ? ""
        : "; and " + Plural.of(number, "planned batch", "planned batches") + what;
  }

  private String may(Part part) {
    if (part.batches() == 0) {
      String made = told.unsearched().isEmpty() ? "as far as records tell" : UNSURE;
      String planned = planned(false);
      return "no batch" + (planned.isEmpty() ? ", " : " that was made, ") + made + planned;
    }
    String onLine =
        part.onLine() == 0
            ? ""
            : "; " + part.onLine() + " of them only by what was left behind on the line";
    return batches(part.batches()) + ", and no record can say" + onLine + planned(false);
  }

  private static String batches(int number) {
    return Plural.of(number, "batch", "batches");
  }

  private String out(Part part, boolean certain) {
    if (part.out().kg() == 0) {
      return "nothing" + (told.unsearched().isEmpty() ? "" : ", " + UNSURE);
    }
    String to = part.parties() == 0 ? "" : ", to " + parties(part.parties(), certain);
    String nobody =
        part.toNobody() == 0
            ? ""
            : "; of " + RecallFigures.kg(part.toNobody()) + " kg no record tells to whom";
    return amount(part.out()) + to + nobody;
  }

  /** Few are told by name already in the head, which is read first. */
  private String parties(int number, boolean certain) {
    String parties = Plural.of(number, "party", "parties");
    List<String> names =
        told.answer().calls().stream()
            .filter(one -> !(certain ? one.certain() : one.possible()).equals(Amount.NONE))
            .map(Call::party)
            .toList();
    return names.size() > FEW ? parties : parties + ": " + String.join(", ", names);
  }

  private static String store(Store store) {
    return amount(store.amount(), store.least()) + ", " + RecallWords.counted(store);
  }

  private static String house(Part part) {
    List<String> but = new ArrayList<>();
    if (part.notCounted() > 0) {
      but.add("of " + batches(part.notCounted()) + " by the books only");
    }
    if (part.notTold() > 0) {
      but.add("of " + batches(part.notTold()) + " nobody can say");
    }
    return amount(part.store(), part.least())
        + (but.isEmpty() ? "" : ", " + String.join(", ", but));
  }

  private void searched(List<Block> blocks) {
    blocks.add(new Heading("What was searched", false));
    blocks.add(new Words("Searched: " + told.searched() + "."));
    List<String> missed = new ArrayList<>();
    told.unsearched().forEach(one -> missed.add("NOT SEARCHED: " + one));
    told.answer().notFollowed().stream()
        .filter(one -> one.limit() != Limit.PARTY_NOT_TOLD && one.limit() != Limit.MOVED_AHEAD)
        .forEach(one -> missed.add(RecallWords.notFollowed(one)));
    if (!told.answer().circle().isEmpty()) {
      missed.add(
          "By their records these batches hold themselves, which cannot be: "
              + String.join(", ", told.answer().circle())
              + ". No kg is told of what passes between them.");
    }
    blocks.add(missed.isEmpty() ? new Words("Nothing was left out.") : new Points(missed));
  }
}
