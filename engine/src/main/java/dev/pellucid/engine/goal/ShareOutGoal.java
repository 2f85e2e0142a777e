package dev.pellucid.engine.goal;

import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.leastcost.Held;
import dev.pellucid.engine.leastcost.InStore;
import dev.pellucid.engine.leastcost.Portion;
import dev.pellucid.engine.leastcost.Posed;
import dev.pellucid.engine.leastcost.Wishes;
import dev.pellucid.engine.leastcost.WishesReader;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.outcome.ShareOutJson;
import dev.pellucid.engine.report.ShareOutText;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.sharing.ShareOut;
import dev.pellucid.engine.sharing.ShareOutTold;
import dev.pellucid.engine.sharing.SharedOut;
import dev.pellucid.engine.sharing.SharedOut.SharedFeed;
import dev.pellucid.engine.sharing.SharedOut.Standing;
import dev.pellucid.engine.sharing.Supply;
import dev.pellucid.engine.sharing.Wanted;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.text.PrintedPaths;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Shares out what is short over the feeds of a plan, or over the batches that are planned, so that
 * all together cost least, and tells it as changes of their texts.
 */
public final class ShareOutGoal {
  private final LocalDate day;
  private final Shared shared;
  private final FeedComputer computer;

  private ShareOutGoal(Texts texts, LocalDate day) {
    this.day = day;
    this.shared = Shared.of(ReadFolder.of(texts), Days.on(day));
    this.computer = new FeedComputer(shared.tables());
  }

  /**
   * Asks for it.
   *
   * @param plan the name of a file of {@code plans/}; empty for the batches that are planned
   * @param words what is wished beside, by the name of its parameter
   * @param paths how files are called for scripts
   */
  public static ShareOutReport of(
      Texts folder, LocalDate day, String plan, Map<String, String> words, PrintedPaths paths) {
    return new ShareOutGoal(folder.held(), day).of(plan, words, paths);
  }

  private ShareOutReport of(String plan, Map<String, String> words, PrintedPaths paths) {
    WishesReader.Read read =
        WishesReader.read(shared.tables(), shared.resolver().premixes().keySet(), words);
    if (!read.slips().isEmpty()) {
      return ShareOutReport.problem(read.slips());
    }
    PlanAsked asked = new PlanReading(shared, day).of(plan);
    if (!asked.slips().isEmpty()) {
      return ShareOutReport.problem(asked.slips());
    }
    List<String> slips = new ArrayList<>();
    List<Wanted> wanted = wanted(asked, read.wishes(), slips);
    Whole whole = Whole.of(shared, Streamed.check(shared, Summary::of));
    PlanStore store = new PlanStore(shared, whole, day, asked.recorded());
    slips.addAll(store.slips());
    return slips.isEmpty()
        ? told(asked, store.sparing(wanted), store, paths)
        : ShareOutReport.problem(slips);
  }

  private List<Wanted> wanted(PlanAsked asked, Wishes wishes, List<String> slips) {
    Portion portion = new Portion(Solver.standard(), computer);
    Held held = new Held(computer, shared.findings());
    List<Wanted> wanted = new ArrayList<>();
    for (PlanAsked.Feed feed : asked.feeds()) {
      Checked checked = Streamed.judged(shared, feed.path());
      Optional<String> why = new Hindrance(shared, day, wishes).of(checked);
      Portion.Posing posing =
          why.isPresent()
              ? new Portion.Posing(Optional.empty(), why.get())
              : portion.posed(checked.recipe().orElseThrow(), wishes, held);
      if (posing.posed().isEmpty()) {
        slips.add(feed.code() + ": " + posing.why());
      } else {
        Posed posed = posing.posed().get();
        wanted.add(
            Wanted.of(
                asked.isRebalanced(feed.code()) ? Portion.still(posed) : posed,
                feed.bagged(),
                feed.due()));
      }
    }
    return wanted;
  }

  private ShareOutReport told(
      PlanAsked asked, List<Wanted> wanted, PlanStore store, PrintedPaths paths) {
    FeedTables tables = shared.tables();
    SupplyReading reading =
        new SupplyReading(tables, new InStore(tables, store.left()), wanted, day);
    List<Supply> supplies = reading.of(asked);
    SharedOut out = new ShareOut(Solver.standard(), computer).of(wanted, supplies);
    if (out.standing() == Standing.NOT_PROVEN) {
      return ShareOutReport.problem(List.of(out.why()));
    }
    List<String> notes = new ArrayList<>(asked.notes());
    notes.addAll(reading.notes());
    notes.addAll(store.notes());
    String currency = tables.settings().currency();
    ShareOutTold told =
        new ShareOutTold(asked.title(), day, notes, out, store.fixed(), store.toBuy(out));
    Map<String, String> changed = new TreeMap<>();
    for (SharedFeed one : out.feeds()) {
      one.settled()
          .filter(its -> its.change().isSome())
          .ifPresent(its -> changed.put(one.wanted().path(), its.change().after()));
    }
    return new ShareOutReport(
        new ShareOutText(currency).of(told),
        ShareOutJson.of(told, currency, paths),
        changed,
        asked.option(),
        List.of());
  }
}
