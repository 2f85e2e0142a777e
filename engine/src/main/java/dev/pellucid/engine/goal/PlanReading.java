package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedPlan;
import dev.pellucid.engine.data.FeedPlan.Planned;
import dev.pellucid.engine.sharing.Wanted.Due;
import dev.pellucid.engine.workspace.PlannedFeeds;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Reads what is to be shared out: a plan by its name, else the batches that are planned. */
final class PlanReading {
  private static final String FOLDER = "plans/";
  private static final String ENDING = ".yaml";

  private final Shared shared;
  private final LocalDate day;
  private final List<String> notes = new ArrayList<>();

  PlanReading(Shared shared, LocalDate day) {
    this.shared = shared;
    this.day = day;
  }

  PlanAsked of(String name) {
    if (name.isEmpty()) {
      return batches();
    }
    FeedPlan plan = shared.tables().plans().get(name);
    return plan == null ? PlanAsked.slips(missing(name)) : of(plan);
  }

  /** What is wrong with a file of that name, of which no plan came; else that there is none. */
  private List<String> missing(String name) {
    List<String> broken =
        shared.findings().stream()
            .filter(one -> one.severity() == Severity.ERROR)
            .filter(one -> one.span().file().path().equals(FOLDER + name + ENDING))
            .map(Hindrance::placed)
            .toList();
    return broken.isEmpty() ? List.of(unknown(name)) : broken;
  }

  /** A plan is called by the name of its file alone. */
  private static String bare(String name) {
    String file = name.startsWith(FOLDER) ? name.substring(FOLDER.length()) : name;
    return file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
  }

  private String unknown(String name) {
    Set<String> names = shared.tables().plans().keySet();
    if (names.isEmpty()) {
      return name
          + " is no plan: this folder has no file "
          + FOLDER
          + bare(name)
          + ENDING
          + "; write one";
    }
    List<String> near =
        names.contains(bare(name)) ? List.of(bare(name)) : NearNames.of(name, names);
    return name
        + " is no plan of this folder"
        + (near.isEmpty()
            ? (names.size() == 1 ? "; there is " : "; there are ") + Choices.of(names)
            : Meant.question(near).map(question -> "; " + question).orElse(""));
  }

  private PlanAsked of(FeedPlan plan) {
    List<String> slips = new ArrayList<>();
    List<Finding> findings = new ArrayList<>(PlannedFeeds.of(shared, plan, drafts(plan)));
    for (Finding one : shared.findings()) {
      if (one.span().file().path().equals(plan.declared().file().path())) {
        findings.add(one);
      }
    }
    for (Finding one : findings) {
      String words = Hindrance.placed(one);
      (one.severity() == Severity.ERROR ? slips : notes).add(words);
    }
    for (Planned one : plan.feeds()) {
      if (one.by().isBefore(day)) {
        slips.add(
            one.due().place()
                + ": "
                + one.recipe()
                + " is wanted by "
                + one.by()
                + ", which is past on "
                + day
                + "; take it out, or write the day that is meant");
      }
    }
    return slips.isEmpty() ? asked(plan) : PlanAsked.slips(slips);
  }

  private Set<String> drafts(FeedPlan plan) {
    Map<String, Boolean> drafts = new TreeMap<>();
    for (Planned one : plan.feeds()) {
      shared
          .trees()
          .path(one.recipe())
          .ifPresent(
              path ->
                  drafts.put(one.recipe(), Summary.of(Streamed.judged(shared, path)).isDraft()));
    }
    drafts.values().removeIf(draft -> !draft);
    return drafts.keySet();
  }

  private PlanAsked asked(FeedPlan plan) {
    Map<String, List<Due>> due = new TreeMap<>();
    List<String> order = new ArrayList<>();
    for (Planned one : plan.feeds()) {
      if (!due.containsKey(one.recipe())) {
        order.add(one.recipe());
      }
      due.computeIfAbsent(one.recipe(), none -> new ArrayList<>())
          .add(new Due(one.by(), one.kg(), ""));
    }
    List<PlanAsked.Feed> feeds = new ArrayList<>();
    order.forEach(code -> feeds.add(feed(code, true, due.getOrDefault(code, List.of()))));
    return feeds.isEmpty()
        ? PlanAsked.slips(List.of(plan.declared().place() + ": the plan wants no feed; add one"))
        : new PlanAsked(
            "plan " + plan.name(),
            " -Dpellucid.plan=" + plan.name(),
            feeds,
            List.of(),
            plan.available(),
            false,
            notes,
            List.of());
  }

  private PlanAsked.Feed feed(String code, boolean bagged, List<Due> due) {
    List<Due> inOrder = new ArrayList<>(due);
    inOrder.sort(Comparator.comparing(Due::day).thenComparing(Due::batch));
    return new PlanAsked.Feed(code, shared.trees().path(code).orElseThrow(), bagged, inOrder);
  }

  private PlanAsked batches() {
    Map<String, List<Due>> due = new TreeMap<>();
    List<BatchRecord> recorded = new ArrayList<>();
    for (BatchRecord record : shared.tables().batches().values()) {
      boolean feed = shared.trees().path(record.code()).isPresent();
      if (record.isPlanned() && (!feed || record.rebalanced().isPresent())) {
        recorded.add(record);
      } else if (record.isPlanned()) {
        due.computeIfAbsent(record.code(), none -> new ArrayList<>())
            .add(new Due(record.day(), record.kg(), record.number()));
      }
    }
    List<PlanAsked.Feed> feeds = new ArrayList<>();
    due.forEach((code, all) -> feeds.add(feed(code, false, all)));
    return feeds.isEmpty()
        ? PlanAsked.slips(List.of(nothingPlanned(recorded)))
        : new PlanAsked(
            "the batches that are planned", "", feeds, recorded, List.of(), true, notes, List.of());
  }

  private String nothingPlanned(List<BatchRecord> recorded) {
    List<String> rebalanced =
        recorded.stream()
            .filter(one -> one.rebalanced().isPresent())
            .map(BatchRecord::number)
            .toList();
    if (!rebalanced.isEmpty()) {
      return "every batch of a feed that is planned is re-balanced, and made as its record says: "
          + String.join(", ", rebalanced)
          + "; so there is nothing to share out";
    }
    Set<String> plans = shared.tables().plans().keySet();
    return "no batch of a feed is planned in batches/"
        + (plans.isEmpty()
            ? "; write one, or a plan such as plans/december.yaml"
            : "; name a plan with -Dpellucid.plan=" + plans.iterator().next());
  }
}
