package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Digestibility.ProcessKind;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchBasis;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A resolved recipe and its weighing to the feed as it will be fed. Shared by all recipes of a
 * folder; it keeps nothing between two of them but compositions.
 *
 * <p>The route: each line is opened down to its ingredients ({@link ExplodedLine}); their water and
 * dry matter go through the passes at three ends ({@link MassFlow}); what each keeps of every
 * nutrient ({@link RetentionPath}) makes its {@link Row}.
 */
public final class FeedComputer {
  private static final double UNTOLD_KG = 100;

  private final FeedTables tables;
  private final Retentions retentions;
  private final Compositions compositions;

  public FeedComputer(FeedTables tables) {
    this.tables = tables;
    this.retentions = new Retentions(tables.practice());
    this.compositions = new Compositions(tables.nutrients(), tables.practice(), retentions);
  }

  /**
   * A recipe as it is written. What is weighed for a batch of finished feed is known only after its
   * yield; where overage per weighing hangs on it, the feed is weighed again.
   */
  public Computation compute(ResolvedRecipe recipe) {
    Optional<BatchSize> size = recipe.batch();
    double kg = size.isPresent() ? size.get().kg() : UNTOLD_KG;
    Computation first = compute(recipe, Weighing.of(recipe, kg));
    boolean finished = size.isPresent() && size.get().basis() == BatchBasis.FINISHED;
    return finished && first.feed().isPresent() && isTakenAtEachWeighing(recipe)
        ? first.feed().get().weighed(Weighing.of(first.feed().get()))
        : first;
  }

  /** Whether of some line so much is weighed on top each time, whatever the batch. */
  private static boolean isTakenAtEachWeighing(ResolvedRecipe recipe) {
    for (Line line : recipe.taken()) {
      if (line.kgPerWeighing() > 0) {
        return true;
      }
    }
    return false;
  }

  /** A recipe as it is weighed. */
  public Computation compute(ResolvedRecipe recipe, Weighing weighing) {
    List<ExplodedLine> leaves = leaves(recipe, weighing);
    Surroundings surroundings = Surroundings.of(tables.practice().steam(), recipe.plant());
    Balancing balancing = new Balancing(recipe.process(), tables.nutrients(), surroundings);
    Balances balances = balancing.of(leaves);
    if (balances.obstacle().isPresent()) {
      return new Computation(balances, Optional.empty());
    }
    RetentionPath keeping = keeping(recipe, surroundings);
    FeedYield feedYield = balancing.yieldOf(leaves, balances);
    Rows rows = rows(leaves, keeping, keeping(recipe, surroundings), feedYield);
    return new Computation(
        balances,
        Optional.of(
            new ComputedFeed(
                recipe,
                tables.nutrients(),
                surroundings,
                weighing,
                balances,
                rows.ofSome(),
                rows.atZero(),
                recipe.plant().isPresent() ? recipe.plant().get().shrink() : 0,
                List.copyOf(keeping.gaps()),
                rows.unpriced())));
  }

  private RetentionPath keeping(ResolvedRecipe recipe, Surroundings surroundings) {
    return new RetentionPath(
        retentions, recipe.process(), recipe.declared(), surroundings.airTemperature(), 0);
  }

  /**
   * What is found missing on the way of a line at zero is not missing in the feed.
   *
   * @param keeping the way of what there is some of
   * @param ofNone the way of lines at zero
   */
  private static Rows rows(
      List<ExplodedLine> leaves, RetentionPath keeping, RetentionPath ofNone, FeedYield feedYield) {
    List<ExplodedLine> some = new ArrayList<>(leaves.size());
    List<ExplodedLine> none = new ArrayList<>();
    for (ExplodedLine leaf : leaves) {
      (leaf.isOfSome() ? some : none).add(leaf);
    }
    return new Rows(
        rows(some, keeping, feedYield), none.isEmpty() ? List.of() : rows(none, ofNone, feedYield));
  }

  /** What would be kept without gaps is worked out only where there are some. */
  private static List<Row> rows(
      List<ExplodedLine> leaves, RetentionPath keeping, FeedYield feedYield) {
    RowMaker maker = new RowMaker(keeping);
    List<Retained> kept = maker.kept(leaves);
    List<Retained> without =
        keeping.gaps().isEmpty() ? kept : new RowMaker(keeping.asIfGapsKeptAll()).kept(leaves);
    List<Row> rows = new ArrayList<>(leaves.size());
    for (int i = 0; i < leaves.size(); i++) {
      rows.add(new Row(leaves.get(i), kept.get(i), without.get(i), feedYield));
    }
    return rows;
  }

  /** What an ingredient holds for the species and the kind of process of a recipe. */
  public Composition composition(Ingredient ingredient, ResolvedRecipe recipe) {
    return compositions.fed(recipe.species(), kind(recipe.process())).of(ingredient);
  }

  /** All nutrients of the folder. */
  public Nutrients nutrients() {
    return tables.nutrients();
  }

  private static Optional<ProcessKind> kind(Passes process) {
    return process.isTold() ? Optional.of(process.kind()) : Optional.empty();
  }

  private List<ExplodedLine> leaves(ResolvedRecipe recipe, Weighing weighing) {
    Compositions.Fed fed = compositions.fed(recipe.species(), kind(recipe.process()));
    List<ExplodedLine> leaves = new ArrayList<>();
    for (Line line : recipe.lines()) {
      new Explosion(line, fed, leaves)
          .open(line.material(), weighing.inFeed().get(line.index()), weighing.richest(line));
    }
    return leaves;
  }
}
