package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.leastcost.Held;
import dev.pellucid.engine.leastcost.Wishes;
import dev.pellucid.engine.leastcost.WishesReader;
import dev.pellucid.engine.rebalance.Balancing;
import dev.pellucid.engine.rebalance.RecordEdit.Named;
import dev.pellucid.engine.report.RebalanceText;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Holds one planned batch against every limit with what was measured of its lots, and finds the
 * smallest change of its shares that keeps them all, as an edit of its record.
 */
public final class RebalanceGoal {
  private static final String PARAMETER = "-Dpellucid.batch";

  /** What a batch with other lots may say of itself, and what this goal is there to mend. */
  private static final List<String> MENDED =
      List.of(
          "made-outside-limits",
          "rebalanced-off-recipe",
          "rebalanced-total-off",
          "rebalanced-without-lots",
          "rebalanced-not-decided");

  private final Texts texts;
  private final LocalDate day;
  private final String free;
  private final Shared shared;
  private final FeedTables tables;

  private RebalanceGoal(Texts texts, LocalDate day, String free) {
    this.texts = texts;
    this.day = day;
    this.free = free;
    this.shared = Shared.of(ReadFolder.of(texts), Days.on(day));
    this.tables = shared.tables();
  }

  /**
   * Asks for it.
   *
   * @param number of the batch
   * @param free lines that may move though they tell no within, parted by commas; empty for none
   */
  public static RebalanceReport of(Texts folder, LocalDate day, String number, String free) {
    return new RebalanceGoal(folder.held(), day, free).of(number);
  }

  private RebalanceReport of(String number) {
    BatchRecord record = tables.batches().get(number);
    Optional<String> problem = record == null ? Optional.of(unknown(number)) : unfit(record);
    if (record == null || problem.isPresent()) {
      return RebalanceReport.problem(problem.orElse(""));
    }
    Optional<String> path = shared.trees().path(record.code());
    if (path.isEmpty()) {
      return RebalanceReport.problem(noFeed(record));
    }
    Checked recipe = Streamed.judged(shared, path.get());
    WishesReader.Read read =
        WishesReader.read(tables, shared.resolver().premixes().keySet(), wishes());
    Optional<String> hindrance =
        new Hindrance(shared, day, Wishes.NONE)
            .ofText(recipe)
            .or(() -> read.slips().stream().findFirst())
            .or(() -> noLine(recipe.recipe().orElseThrow(), read.wishes().freed()));
    return hindrance.isPresent()
        ? RebalanceReport.problem(hindrance.get())
        : of(record, recipe.recipe().orElseThrow(), read.wishes().freed());
  }

  private Map<String, String> wishes() {
    return free.isEmpty() ? Map.of() : Map.of("free", free);
  }

  /** An ingredient that is known and is in no line. */
  private static Optional<String> noLine(RuleContext recipe, Set<String> freed) {
    List<String> names =
        recipe.recipe().lines().stream().map(line -> line.material().name()).toList();
    for (String one : new TreeSet<>(freed)) {
      if (!names.contains(one)) {
        return Optional.of(
            one
                + " is no line of "
                + recipe.recipe().code()
                + "; "
                + Meant.question(NearNames.of(one, names))
                    .orElse("a batch is re-balanced with the lines of its recipe alone"));
      }
    }
    return Optional.empty();
  }

  private String unknown(String number) {
    List<String> planned =
        tables.batches().values().stream()
            .filter(one -> one.isPlanned() && shared.trees().path(one.code()).isPresent())
            .map(BatchRecord::number)
            .toList();
    String those =
        planned.isEmpty()
            ? "no batch is planned; mvn pellucid:new " + PARAMETER + "=CODE writes a record"
            : "planned are " + String.join(", ", planned);
    return number.isEmpty()
        ? "say which batch with " + PARAMETER + "=NUMBER; " + those
        : number
            + " is not the number of a batch of this folder; "
            + Meant.question(NearNames.of(number, tables.batches().keySet())).orElse(those);
  }

  /** What cannot be re-balanced any more, or not yet. */
  private Optional<String> unfit(BatchRecord record) {
    String place = record.declared().place() + ": ";
    if (!record.isPlanned()) {
      return Optional.of(
          place
              + record.number()
              + " is made, and what was weighed cannot be given other shares; check says how it"
              + " stands with its limits");
    }
    return day.isAfter(record.day().plusDays(1))
        ? Optional.of(
            place
                + record.number()
                + " was planned for "
                + record.day()
                + ", and today is "
                + day
                + "; name the file by the day on which it will be made")
        : Optional.empty();
  }

  private String noFeed(BatchRecord record) {
    return record.declared().place()
        + ": "
        + (shared.trees().premixPaths().containsKey(record.code())
            ? record.code()
                + " is a premix, and premixes are made as their file says; re-balance a feed that"
                + " holds it"
            : record.code() + " is no recipe of this folder");
  }

  private RebalanceReport of(BatchRecord record, RuleContext recipe, Set<String> freed) {
    SheetsGoal.Walked walked = SheetsGoal.walked(texts, day);
    Whole whole = walked.whole();
    Optional<String> first = first(record, whole);
    if (first.isPresent()) {
      return RebalanceReport.problem("check must be clean of this first: " + first.get());
    }
    ComputedFeed feed = recipe.feed().orElseThrow();
    LotsToTake lots = LotsToTake.of(shared, walked.ahead(), record);
    Trials trials = new Trials(shared, feed, lots.record());
    Balancing.Found found =
        new Balancing(
                trials,
                new Held(new FeedComputer(tables), shared.findings()),
                lots.measured(),
                freed)
            .found();
    RebalanceEdit edit = new RebalanceEdit(texts, day, record, named(lots));
    RebalanceEdit.Edited edited = edit.of(found, whole.findings());
    return new RebalanceReport(
        Optional.of(edited.told()),
        RebalanceText.of(
            edited.told(),
            tables.settings().currency(),
            edited.block(),
            lots.cautions(whole.findings())),
        record.declared().file().path(),
        edited.text(),
        Optional.empty());
  }

  /** What is wrong with the record beside what this goal is asked for. */
  private static Optional<String> first(BatchRecord record, Whole whole) {
    String path = record.declared().file().path();
    for (Finding one : whole.findings()) {
      if (one.severity() == Severity.ERROR
          && one.span().file().path().equals(path)
          && !MENDED.contains(one.code().text())) {
        return Optional.of(Hindrance.placed(one));
      }
    }
    return Optional.empty();
  }

  private static List<Named> named(LotsToTake lots) {
    return lots.measured().stream()
        .filter(one -> !one.named())
        .map(one -> new Named(one.line(), one.number()))
        .toList();
  }
}
