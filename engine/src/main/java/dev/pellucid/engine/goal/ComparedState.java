package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compare.FeedFigures;
import dev.pellucid.engine.compare.FigureTaking;
import dev.pellucid.engine.compare.Found;
import dev.pellucid.engine.compare.Printed;
import dev.pellucid.engine.compare.RecipeState;
import dev.pellucid.engine.compare.Standing;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.PremixOrders;
import dev.pellucid.engine.plan.Premixing;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.resolve.Reads;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.Kept;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** One state of a folder, with the figures of its recipes, and what its check says. */
final class ComparedState {
  private final Kept<Figured> kept;
  private final LocalDate day;
  private final Map<String, List<String>> words = new ConcurrentHashMap<>();

  /**
   * A recipe in it.
   *
   * @param figures absent where it cannot be computed
   * @param obstacle the first thing that keeps it from being computed; empty where nothing does
   * @param ruled what every rule says of it; absent where figures alone were asked for
   */
  record Figured(
      String path,
      Optional<FeedFigures> figures,
      String obstacle,
      Reads reads,
      Optional<Ruled> ruled) {

    static Figured of(Checked recipe) {
      return of(recipe, Optional.empty());
    }

    static Figured ruled(Checked recipe, LocalDate day) {
      return of(recipe, Optional.of(Ruled.of(recipe, day)));
    }

    private static Figured of(Checked recipe, Optional<Ruled> ruled) {
      Optional<FeedFigures> figures = recipe.recipe().flatMap(Figured::figures);
      return new Figured(
          recipe.path(),
          figures,
          figures.isPresent() ? "" : obstacle(recipe),
          recipe.reads(),
          ruled);
    }

    private static String obstacle(Checked recipe) {
      for (Finding finding : recipe.findings()) {
        if (finding.severity() == Severity.ERROR) {
          return finding.headline();
        }
      }
      return "";
    }

    private static Optional<FeedFigures> figures(RuleContext recipe) {
      return recipe
          .feed()
          .map(
              feed ->
                  FigureTaking.of(
                      feed, recipe.judgement(), recipe.tables(), recipe.floor().plan()));
    }
  }

  /**
   * What the check says of a recipe, and what is printed of it.
   *
   * @param needs what a batch of it takes of each premix, where it is approved
   */
  record Ruled(Summary summary, Printed printed, List<Premixing.Need> needs) {
    static Ruled of(Checked recipe, LocalDate day) {
      Summary summary = Summary.of(recipe);
      return recipe.isSound() && recipe.recipe().isPresent()
          ? of(summary, recipe.recipe().get(), day)
          : new Ruled(summary, Printed.NONE, List.of());
    }

    private static Ruled of(Summary summary, RuleContext recipe, LocalDate day) {
      BatchPlan plan = PrintedTaking.plan(recipe, recipe.feed().orElseThrow(), day);
      return new Ruled(
          summary,
          PrintedTaking.of(recipe, recipe.feed().orElseThrow(), plan),
          plan.status().equals("approved") ? PremixOrders.of(plan) : List.of());
    }

    List<String> known() {
      return summary.findings().stream().map(one -> Found.of(one).known()).sorted().toList();
    }
  }

  private ComparedState(Kept<Figured> kept, LocalDate day) {
    this.kept = kept;
    this.day = day;
  }

  /** With figures alone. */
  static ComparedState of(Texts texts, LocalDate day) {
    return new ComparedState(Kept.of(texts, Days.on(day), Kept.Route.JUDGE, Figured::of), day);
  }

  /** With all that its check says. */
  static ComparedState ruled(Texts texts, LocalDate day) {
    return new ComparedState(
        Kept.of(texts, Days.on(day), Kept.Route.CHECK, recipe -> Figured.ruled(recipe, day)), day);
  }

  /**
   * Another state of the same folder, on the same day; what hangs on nothing that is otherwise in
   * it is not worked out again.
   */
  ComparedState other(Texts texts) {
    return new ComparedState(kept.with(texts.held().sharing(texts())), day);
  }

  /** This state with some files as another has them, for its figures. */
  ComparedState with(Collection<String> paths, ComparedState other) {
    return new ComparedState(
        kept.with(texts().with(paths, other.texts()), Kept.Route.JUDGE, Figured::of), day);
  }

  /** The same with what every rule says. */
  ComparedState ruledWith(Collection<String> paths, ComparedState other) {
    return new ComparedState(kept.with(texts().with(paths, other.texts())), day);
  }

  Texts texts() {
    return kept.shared().texts();
  }

  Shared shared() {
    return kept.shared();
  }

  LocalDate day() {
    return day;
  }

  String currency() {
    return kept.shared().tables().settings().currency();
  }

  /** All that is compared of it; only where its check was asked for. */
  Standing standing() {
    List<Figured> recipes = kept.all();
    List<Summary> summaries = new ArrayList<>();
    for (Figured one : recipes) {
      summaries.add(one.ruled().orElseThrow().summary());
    }
    Whole whole = Whole.of(shared(), summaries);
    List<Finding> all = new ArrayList<>(whole.findings());
    all.addAll(StaleFigures.of(shared().folder(), whole.findings()));
    SortedMap<String, List<Found>> found = new TreeMap<>();
    long errors = 0;
    for (Finding finding : all) {
      errors += finding.severity() == Severity.ERROR ? 1 : 0;
      Found one = Found.of(finding);
      found.computeIfAbsent(one.path(), none -> new ArrayList<>()).add(one);
    }
    SortedMap<String, RecipeState> byCode = byCode(found);
    PremixTaking premixes = new PremixTaking(this, whole.faulty(), found);
    for (Figured one : recipes) {
      premixes.takenBy(code(one), one.ruled().orElseThrow().needs());
    }
    SortedMap<String, List<Found>> elsewhere = new TreeMap<>(found);
    byCode.values().forEach(one -> elsewhere.remove(one.path()));
    elsewhere.keySet().removeAll(shared().trees().premixPaths().values());
    return new Standing(byCode, premixes.states(), elsewhere, errors);
  }

  private static String code(Figured one) {
    return new SourceFile(one.path(), "").stem();
  }

  /** Every recipe, by its code, for its figures. */
  Map<String, RecipeState> byCode() {
    return byCode(new TreeMap<>());
  }

  private SortedMap<String, RecipeState> byCode(Map<String, List<Found>> found) {
    SortedMap<String, RecipeState> states = new TreeMap<>();
    kept.recipes().parallelStream().forEach(this::words);
    for (Figured one : kept.all()) {
      String code = code(one);
      states.putIfAbsent(
          code,
          new RecipeState(
              code,
              one.path(),
              words(one.path()),
              kept.shared().dependsOn(one.path(), one.reads())::on,
              one.figures(),
              one.obstacle(),
              found.getOrDefault(one.path(), List.of()),
              one.ruled().map(Ruled::printed).orElse(Printed.NONE)));
    }
    return states;
  }

  /** The figures of one recipe; empty where it is not there or cannot be computed. */
  Optional<FeedFigures> figures(String path) {
    return kept.recipe(path).flatMap(Figured::figures);
  }

  /** Whether the rules say the same of a recipe here and there, and the same is printed of it. */
  boolean saysOf(String path, ComparedState other) {
    Optional<Ruled> own = kept.recipe(path).flatMap(Figured::ruled);
    Optional<Ruled> there = other.kept.recipe(path).flatMap(Figured::ruled);
    return own.isPresent()
        && there.isPresent()
        && own.get().printed().equals(there.get().printed())
        && own.get().known().equals(there.get().known());
  }

  /** Errors of files that recipes share, in one sentence; none where there are none. */
  Optional<String> doubt() {
    List<Finding> errors =
        kept.shared().findings().stream()
            .filter(one -> one.severity() == Severity.ERROR)
            .filter(one -> DependsOn.bearsOnFeeds(one.span().file().path()))
            .toList();
    return errors.stream()
        .findFirst()
        .map(
            first ->
                Plural.of(errors.size(), "error")
                    + " in files that feeds share, the first in "
                    + first.span().place()
                    + ": "
                    + first.headline());
  }

  /** The text of a file. */
  String text(String path) {
    return texts().read(path, new ArrayList<>()).map(SourceFile::text).orElse("");
  }

  /** Line by line: white space between words and empty lines are no change. */
  List<String> words(String path) {
    return words.computeIfAbsent(path, one -> SpacedLines.of(text(one)));
  }
}
