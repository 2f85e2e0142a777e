package dev.pellucid.engine.compute;

import static java.util.Objects.requireNonNull;

import dev.pellucid.engine.larder.Digestibility.ProcessKind;
import dev.pellucid.engine.larder.Ingredient;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchBasis;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * A resolved recipe and its weighing to the feed as it will be fed. Shared by all recipes of a
 * folder; it keeps nothing between two of them but compositions.
 *
 * <p>The route: each line is opened down to its ingredients ({@link Leaf}); their water and dry
 * matter go through the passes at three ends ({@link MassFlow}); what each keeps of every nutrient
 * ({@link Keeping}) makes its {@link Row}.
 */
public final class FeedComputer {
  private static final double UNTOLD_KG = 100;

  private final Larder larder;
  private final Retentions retentions;
  private final Compositions compositions;

  public FeedComputer(Larder larder) {
    this.larder = larder;
    this.retentions = new Retentions(larder.practice());
    this.compositions = new Compositions(larder.nutrients(), larder.practice(), retentions);
  }

  /**
   * A recipe as it is written. What is weighed for a batch of finished feed is known only after its
   * yield; where overage per weighing hangs on it, the feed is weighed again.
   */
  public Computation compute(ResolvedRecipe recipe) {
    double kg = recipe.batch().map(BatchSize::kg).orElse(UNTOLD_KG);
    Computation first = compute(recipe, Weighing.of(recipe, kg));
    boolean changes =
        recipe.batch().filter(size -> size.basis() == BatchBasis.FINISHED).isPresent()
            && recipe.lines().stream().anyMatch(line -> line.kgPerWeighing() > 0);
    return changes ? first.feed().map(feed -> again(feed, Weighing.of(feed))).orElse(first) : first;
  }

  public Computation compute(ResolvedRecipe recipe, Weighing weighing) {
    return compute(recipe, weighing, 0);
  }

  /** As if every step for which the folder does not tell what is kept kept all. */
  public Computation asIfGapsKeptAll(ResolvedRecipe recipe, Weighing weighing) {
    return compute(recipe, weighing, 1);
  }

  /** A feed of which only the weights change. */
  public Computation again(ComputedFeed feed, Weighing weighing) {
    return again(larder, feed, weighing);
  }

  /** The same without what a computer keeps: the feed holds the compositions that it is made of. */
  public static Computation again(Larder larder, ComputedFeed feed, Weighing weighing) {
    IdentityHashMap<Ingredient, Composition> known = new IdentityHashMap<>();
    feed.rows().forEach(row -> known.put(row.ingredient(), row.composition()));
    List<Leaf> leaves =
        leaves(feed.recipe(), weighing, ingredient -> requireNonNull(known.get(ingredient)));
    Balances balances = balances(larder, feed.recipe(), leaves);
    if (balances.obstacle().isPresent()) {
      return new Computation(balances, Optional.empty());
    }
    List<Row> rows = new ArrayList<>(leaves.size());
    for (int i = 0; i < leaves.size(); i++) {
      rows.add(feed.rows().get(i).weighedAs(leaves.get(i)));
    }
    return new Computation(balances, Optional.of(feed.weighedAs(balances, rows)));
  }

  private Computation compute(ResolvedRecipe recipe, Weighing weighing, double leftInGap) {
    List<Leaf> leaves = leaves(recipe, weighing, compositionsFor(recipe));
    Balances balances = balances(larder, recipe, leaves);
    if (balances.obstacle().isPresent()) {
      return new Computation(balances, Optional.empty());
    }
    Keeping keeping = new Keeping(retentions, recipe.process(), airTemperature(), leftInGap);
    RowMaker maker = new RowMaker(keeping, recipe.process().has(Step.STORE));
    List<Row> rows = leaves.stream().map(maker::row).toList();
    return new Computation(
        balances,
        Optional.of(
            new ComputedFeed(
                recipe,
                larder.nutrients(),
                balances,
                rows,
                larder.plant().map(plant -> plant.shrink()).orElse(0.0),
                List.copyOf(keeping.gaps()),
                unpriced(rows))));
  }

  private double airTemperature() {
    return larder.plant().map(plant -> plant.airTemperature()).orElse(25.0);
  }

  private static List<String> unpriced(List<Row> rows) {
    TreeSet<String> names = new TreeSet<>();
    rows.stream()
        .filter(row -> row.price().isEmpty())
        .forEach(row -> names.add(row.ingredient().name()));
    return List.copyOf(names);
  }

  private static List<Leaf> leaves(
      ResolvedRecipe recipe, Weighing weighing, Function<Ingredient, Composition> compositions) {
    List<Leaf> leaves = new ArrayList<>();
    for (Line line : recipe.lines()) {
      double kg = weighing.inFeed().get(line.index());
      double richest = kg + weighing.onTop().get(line.index());
      new Opened(line, compositions, leaves).open(line.material(), kg, richest);
    }
    return leaves;
  }

  private Function<Ingredient, Composition> compositionsFor(ResolvedRecipe recipe) {
    ProcessKind kind = recipe.process().kind();
    return ingredient -> compositions.of(ingredient, recipe.species(), kind);
  }

  private static Balances balances(Larder larder, ResolvedRecipe recipe, List<Leaf> leaves) {
    boolean overage = leaves.stream().anyMatch(leaf -> leaf.richest() > leaf.kg());
    Balance richest = balance(larder, recipe, leaves, End.RICHEST, overage);
    return new Balances(
        balance(larder, recipe, leaves, End.EXPECTED, false),
        balance(larder, recipe, leaves, End.POOREST, false),
        richest,
        overage ? balance(larder, recipe, leaves, End.RICHEST, false) : richest);
  }

  private static Balance balance(
      Larder larder, ResolvedRecipe recipe, List<Leaf> leaves, End end, boolean withOverage) {
    int moisture = larder.nutrients().moisture().orElseThrow(() -> unresolved(larder)).index();
    double mix = 0;
    double mixWater = 0;
    double coat = 0;
    double coatWater = 0;
    for (Leaf leaf : leaves) {
      double kg = withOverage ? leaf.richest() : leaf.kg();
      Composition composition = leaf.composition();
      double water =
          kg * (end == End.RICHEST ? composition.high() : composition.low()).at(moisture);
      if (leaf.line().place() == Place.MIX) {
        mix += kg;
        mixWater += water;
      } else {
        coat += kg;
        coatWater += water;
      }
    }
    return MassFlow.balance(
        recipe.process(),
        larder,
        end,
        new MassFlow.Poured(mix, mixWater),
        new MassFlow.Poured(coat, coatWater));
  }

  private static IllegalStateException unresolved(Larder larder) {
    return new IllegalStateException(
        "a recipe was resolved before " + larder.nutrients().mendFirst() + " was mended");
  }
}
