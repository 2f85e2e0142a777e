package dev.pellucid.engine.docs;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.goal.AskedOn;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.engine.goal.ExplainReport;
import dev.pellucid.engine.goal.FiguresReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.InitReport;
import dev.pellucid.engine.goal.LeastCostReport;
import dev.pellucid.engine.goal.NewReport;
import dev.pellucid.engine.goal.RebalanceReport;
import dev.pellucid.engine.goal.RecallReport;
import dev.pellucid.engine.goal.ShareOutReport;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.TraceReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the goals of a command print in the folder of a page, without the marks of Maven's own. What
 * a goal writes, it writes into that folder.
 */
final class GoalOutput {
  private static final String TARGET = "target";

  private final DocFolder folder;
  private final DocCommand command;

  private GoalOutput(DocFolder folder, DocCommand command) {
    this.folder = folder;
    this.command = command;
  }

  static List<String> of(DocFolder folder, DocCommand command) throws IOException {
    List<String> lines = new ArrayList<>();
    for (String goal : command.goals()) {
      String text = new GoalOutput(folder, command).of(goal);
      text.lines().forEach(lines::add);
    }
    return lines;
  }

  private String of(String goal) throws IOException {
    return switch (goal) {
      case "check" -> check();
      case "batch-sheet" -> sheets();
      case "explain" -> explain();
      case "compare" -> compare();
      case "least-cost" -> leastCost();
      case "share-out" -> shareOut();
      case "figures" -> figures();
      case "rebalance" -> rebalance();
      case "trace" -> trace();
      case "recall" -> recall();
      case "init" -> init();
      case "new" -> newFile();
      // They say what they wrote, and where on the disk: nothing that a page could show.
      case "format", "format-check", "report", "help" -> "";
      default -> throw new AssertionError("GoalOutput does not know how to run " + goal);
    };
  }

  private String check() throws IOException {
    CheckReport report = folder.check();
    String standing = report.standing().isEmpty() ? "" : "pellucid: " + report.standing() + "\n";
    return FindingText.of(report.shown()) + standing + "pellucid: " + report.tally();
  }

  private String sheets() throws IOException {
    Version version = Version.committed("1a2b3c4");
    SheetReport report = Pellucid.batchSheets(folder.state(), DocFolder.DAY, version);
    report.write(folder.root().resolve(TARGET).resolve("batch-sheets"));
    List<String> drafts = report.drafts();
    return "pellucid: "
        + report.tally()
        + " in target/batch-sheets\n"
        + report.labelTally().map(labels -> "pellucid: " + labels + " beside them\n").orElse("")
        + (drafts.isEmpty()
            ? ""
            : "pellucid: drafts, not to be made: " + String.join(", ", drafts));
  }

  private String explain() throws IOException {
    String rule = given("rule");
    ExplainReport report =
        rule.isEmpty()
            ? Pellucid.explain(folder.state(), DocFolder.DAY, given("recipe"), given("figure"))
            : Pellucid.explainRule(rule);
    return told(report.problem(), report.text());
  }

  private String compare() throws IOException {
    CompareReport report =
        Pellucid.compare(
            FolderState.at(folder.committed()).over(Bundled.ofThisVersion()),
            folder.state(),
            DocFolder.DAY,
            "compare.html");
    report.write(folder.root().resolve(TARGET).resolve("comparison"));
    if (!given("feed").isEmpty()) {
      return report.of(given("feed")).orElse(report.tally());
    }
    return given("full").equals("true") ? report.text() : report.brief();
  }

  private String leastCost() throws IOException {
    Map<String, String> wishes = typed();
    wishes.remove("recipe");
    LeastCostReport report =
        Pellucid.leastCost(
            folder.state(), DocFolder.DAY, given("recipe"), wishes, PrintedPaths.BELOW_FOLDER);
    if (report.problem().isPresent()) {
      return report.problem().get();
    }
    boolean write = given("write").equals("true");
    report.write(folder.root().resolve(TARGET).resolve("least-cost"));
    List<String> written = write ? report.apply(folder.root()) : List.of();
    folder.changed();
    StringBuilder told = new StringBuilder(report.shown()).append('\n');
    written.forEach(path -> told.append("changed ").append(path).append('\n'));
    return told + String.join("\n", report.next(write));
  }

  private String shareOut() throws IOException {
    Map<String, String> wishes = typed();
    wishes.remove("plan");
    ShareOutReport report =
        Pellucid.shareOut(
            folder.state(), DocFolder.DAY, given("plan"), wishes, PrintedPaths.BELOW_FOLDER);
    if (report.problem().isPresent()) {
      return report.problem().get();
    }
    boolean write = given("write").equals("true");
    report.write(folder.root().resolve(TARGET).resolve("share-out"));
    List<String> written = write ? report.apply(folder.root()) : List.of();
    folder.changed();
    StringBuilder told = new StringBuilder(report.shown()).append('\n');
    written.forEach(path -> told.append("changed ").append(path).append('\n'));
    return told + String.join("\n", report.next(write));
  }

  private String figures() throws IOException {
    FiguresReport report =
        Pellucid.figures(folder.state(), given("recipe"), given("kept").equals("true"));
    report.write(folder.root());
    folder.changed();
    StringBuilder told = new StringBuilder();
    report.changes().forEach(change -> told.append("written " + change.path() + "\n"));
    return told(report.problem(), told + "pellucid: " + report.tally());
  }

  private String rebalance() throws IOException {
    RebalanceReport report =
        Pellucid.rebalance(folder.state(), DocFolder.DAY, given("batch"), given("free"));
    if (report.problem().isPresent()) {
      return report.problem().get();
    }
    boolean write = given("write").equals("true");
    List<String> written = write ? report.apply(folder.root()) : List.of();
    folder.changed();
    StringBuilder told = new StringBuilder(report.text());
    written.forEach(path -> told.append("changed ").append(path).append('\n'));
    return told + String.join("\n", report.next(write));
  }

  private String trace() throws IOException {
    TraceReport report =
        Pellucid.trace(folder.state(), PrintedPaths.BELOW_FOLDER, given("lot"), given("batch"));
    return report.text();
  }

  private String recall() throws IOException {
    RecallReport report =
        Pellucid.recall(
            folder.state(),
            PrintedPaths.BELOW_FOLDER,
            AskedOn.today(DocFolder.DAY),
            given("lot"),
            given("batch"));
    report.write(folder.root().resolve(TARGET).resolve("recall"));
    return told(report.problem(), report.text());
  }

  /** Without the way to the folder, which is another one on each machine. */
  private String init() throws IOException {
    Map<String, String> wishes = wishes("species", "jurisdiction", "currency", "name");
    InitReport report = Pellucid.init(folder.root(), wishes, DocFolder.DAY, OwnVersion.read());
    if (!report.problems().isEmpty()) {
      return String.join("\n", report.problems());
    }
    InitReport.Written written = report.write(folder.root());
    folder.changed();
    return String.join("\n", written.done()) + "\n" + check();
  }

  private String newFile() throws IOException {
    NewReport report = Pellucid.newFile(folder.state(), DocFolder.DAY, typed());
    if (report.problem().isPresent()) {
      return report.problem().get();
    }
    List<String> done = report.write(folder.root());
    folder.changed();
    return String.join("\n", done);
  }

  /** What was typed, by the names of parameters behind {@code pellucid.}. */
  private Map<String, String> typed() {
    Map<String, String> typed = new TreeMap<>();
    command.given().forEach((name, words) -> typed.put(name.replace("pellucid.", ""), words));
    typed.keySet().removeAll(List.of("write", "day"));
    return typed;
  }

  private Map<String, String> wishes(String... names) {
    Map<String, String> wishes = new TreeMap<>();
    for (String name : names) {
      wishes.put(name, given(name));
    }
    return wishes;
  }

  private String given(String parameter) {
    return command.given("pellucid." + parameter);
  }

  private static String told(Optional<String> problem, String text) {
    return problem.orElse(text);
  }
}
