package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Advising;
import dev.pellucid.engine.leastcost.Bought;
import dev.pellucid.engine.leastcost.InStore;
import dev.pellucid.engine.leastcost.SweepAsked;
import dev.pellucid.engine.leastcost.Week;
import dev.pellucid.engine.leastcost.Wishes;
import dev.pellucid.engine.leastcost.Wishes.SweepWish;
import dev.pellucid.engine.leastcost.WishesReader;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.outcome.LeastCostJson;
import dev.pellucid.engine.report.LeastCostText;
import dev.pellucid.engine.report.LeastCostTold;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.engine.workspace.Trees;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.PrintedPaths;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Finds the cheapest recipe that keeps all that check judges, for one recipe or for all, and tells
 * it as a change of the text, with its reasons and its effect.
 */
public final class LeastCostGoal {
  private final Texts texts;
  private final LocalDate day;
  private final Shared shared;

  private LeastCostGoal(Texts texts, LocalDate day) {
    this.texts = texts;
    this.day = day;
    this.shared = Shared.of(ReadFolder.of(texts), Days.on(day));
  }

  /**
   * Asks for it.
   *
   * @param recipe the code of the only one that is asked for; empty for all
   * @param words what is wished beside, by the name of its parameter
   * @param paths how files are called for scripts
   */
  public static LeastCostReport of(
      Texts folder, LocalDate day, String recipe, Map<String, String> words, PrintedPaths paths) {
    return new LeastCostGoal(folder.held(), day).of(recipe, words, paths);
  }

  private LeastCostReport of(String recipe, Map<String, String> words, PrintedPaths paths) {
    Optional<String> unknown = unknown(recipe);
    if (unknown.isPresent()) {
      return LeastCostReport.problem(unknown.get());
    }
    WishesReader.Read read =
        WishesReader.read(shared.tables(), shared.resolver().premixes().keySet(), words);
    List<String> slips = new ArrayList<>(read.slips());
    Wishes wishes = read.wishes();
    if (recipe.isEmpty() && read.sweep().isPresent()) {
      slips.add("a sweep is of one recipe; say which with -Dpellucid.recipe=CODE");
    }
    if (!slips.isEmpty()) {
      return LeastCostReport.problem(String.join("\n", slips));
    }
    List<String> asked =
        recipe.isEmpty()
            ? texts.ending(Trees.RECIPE)
            : List.of(shared.trees().path(recipe).orElseThrow());
    return recipe.isEmpty()
        ? told(advised(asked, wishes), false, paths)
        : one(asked.get(0), wishes, read.sweep(), paths);
  }

  private LeastCostReport one(
      String path, Wishes wishes, Optional<SweepAsked> sweep, PrintedPaths paths) {
    Checked checked = Streamed.judged(shared, path);
    Optional<SweepWish> wish =
        sweep.flatMap(it -> it.in(checked.recipe().map(RuleContext::limits).orElse(List.of())));
    List<String> slips =
        checked.recipe().isEmpty() ? new ArrayList<>() : misnamed(checked, wishes, sweep);
    if (sweep.isPresent() && wish.isEmpty() && checked.feed().isPresent()) {
      slips.add(
          "no limit on "
              + sweep.get().of()
              + " is in force in "
              + checked.code()
              + ", so none can be swept");
    }
    return slips.isEmpty()
        ? told(advised(List.of(path), wishes.explained(wish)), true, paths)
        : LeastCostReport.problem(String.join("\n", slips));
  }

  private Optional<String> unknown(String recipe) {
    if (texts.ending(Trees.RECIPE).isEmpty()) {
      return Optional.of("no recipe was found to make cheaper");
    }
    if (recipe.isEmpty() || shared.trees().path(recipe).isPresent()) {
      return Optional.empty();
    }
    List<String> near = NearNames.of(recipe, shared.trees().recipes());
    return Optional.of(
        recipe
            + " is not the code of a recipe of this folder"
            + Meant.question(near).map(question -> "; " + question).orElse(""));
  }

  /** Ingredients that are known, and are no lines of it, or are already. */
  private static List<String> misnamed(Checked checked, Wishes wishes, Optional<SweepAsked> sweep) {
    List<String> told = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (Line line : checked.recipe().orElseThrow().recipe().lines()) {
      names.add(line.material().name());
    }
    List<String> lines = new ArrayList<>(new TreeSet<>(wishes.freed()));
    lines.addAll(new TreeSet<>(wishes.without()));
    sweep.filter(SweepAsked::isPrice).ifPresent(it -> lines.add(it.of()));
    for (String one : lines) {
      if (!names.contains(one) && !wishes.tried().contains(one)) {
        told.add(
            one
                + " is no line of "
                + checked.code()
                + Meant.question(NearNames.of(one, names))
                    .map(question -> "; " + question)
                    .orElse("; offer it with -Dpellucid.try=" + one));
      }
    }
    for (String one : wishes.tried()) {
      if (names.contains(one)) {
        told.add(
            one
                + " is in "
                + checked.code()
                + " already; let its share move with -Dpellucid.free="
                + one);
      }
    }
    return told;
  }

  /**
   * An advice and what it does to purchases.
   *
   * @param bought for a tonne in the bags
   */
  private record Advised(Advice advice, List<Bought> bought) {}

  private List<Advised> advised(List<String> paths, Wishes wishes) {
    Hindrance hindrance = new Hindrance(shared, day, wishes);
    Advising advising =
        new Advising(
            Solver.standard(),
            new FeedComputer(shared.tables()),
            shared.findings(),
            wishes.fromStock() ? Optional.of(store()) : Optional.empty());
    return Streamed.judge(
        shared,
        paths,
        checked -> {
          Optional<String> why = hindrance.of(checked);
          return why.isPresent()
              ? new Advised(NotAsked.of(shared, checked, why.get()), List.of())
              : advised(checked.recipe().orElseThrow(), advising, wishes);
        });
  }

  /** What all records of the folder leave in the store. */
  private InStore store() {
    return new InStore(
        shared.tables(), Whole.of(shared, Streamed.check(shared, Summary::of)).stock());
  }

  private Advised advised(RuleContext recipe, Advising advising, Wishes wishes) {
    Advice advice = advising.of(recipe, wishes);
    Optional<ComputedFeed> then =
        advice.change().isSome()
            ? recipe.fixing().again().with(advice.change().edits()).flatMap(RuleContext::feed)
            : Optional.empty();
    return new Advised(
        advice,
        then.isPresent() ? Bought.forTonne(recipe.feed().orElseThrow(), then.get()) : List.of());
  }

  private LeastCostReport told(List<Advised> all, boolean one, PrintedPaths paths) {
    Map<String, String> changed = new TreeMap<>();
    List<Week.Feed> feeds = new ArrayList<>();
    for (Advised advised : all) {
      Advice advice = advised.advice();
      if (advice.change().isSome()) {
        changed.put(advice.path(), advice.change().after());
        advice
            .costs()
            .ifPresent(
                costs ->
                    feeds.add(
                        new Week.Feed(
                            advice.code(),
                            costs.tonnesPerMonth(),
                            costs.savesPerTonne(),
                            advised.bought())));
      }
    }
    Map<String, RecipeChange> effects = effects(changed);
    List<LeastCostTold> told = new ArrayList<>();
    List<Advice> advices = new ArrayList<>();
    Map<String, List<Bought>> bought = new HashMap<>();
    for (Advised advised : all) {
      advices.add(advised.advice());
      bought.put(advised.advice().code(), advised.bought());
      told.add(
          new LeastCostTold(
              advised.advice(),
              Optional.ofNullable(effects.get(advised.advice().code())),
              advised.bought()));
    }
    String currency = shared.tables().settings().currency();
    Week week = Week.of(feeds);
    return new LeastCostReport(
        told,
        week,
        one,
        new LeastCostText(currency),
        LeastCostJson.of(advices, bought, week, currency, paths),
        changed,
        Optional.empty());
  }

  /** What all changes together do, as a comparison tells it, by code. */
  private Map<String, RecipeChange> effects(Map<String, String> changed) {
    Map<String, RecipeChange> effects = new HashMap<>();
    if (!changed.isEmpty()) {
      for (RecipeChange change :
          CompareGoal.ofEdited(texts, texts.over(changed), changed.keySet(), day).changes()) {
        effects.put(change.code(), change);
      }
    }
    return effects;
  }
}
