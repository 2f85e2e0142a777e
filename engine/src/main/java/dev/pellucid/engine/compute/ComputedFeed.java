package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.quantity.Sum;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The feed as it will be fed: the sum of its rows. A line may stand at zero, to be taken up again
 * later: what is said of a feed is said of its rows, and those at zero are kept apart for whoever
 * asks what the feed would be with some of them.
 *
 * @param surroundings where it is made
 * @param weighing what was weighed of each line
 * @param rows those of which there is some
 * @param rowsAtZero those of which there is none
 * @param shrink the part of the finished feed that never reaches a bag
 * @param retentionGaps where the folder does not say what is kept
 * @param unpriced ingredients without a price on the day, sorted
 */
public record ComputedFeed(
    ResolvedRecipe recipe,
    Nutrients nutrients,
    Surroundings surroundings,
    Weighing weighing,
    Balances balances,
    List<Row> rows,
    List<Row> rowsAtZero,
    double shrink,
    List<RetentionGap> retentionGaps,
    List<String> unpriced) {
  public ComputedFeed {
    rows = List.copyOf(rows);
    rowsAtZero = List.copyOf(rowsAtZero);
    retentionGaps = List.copyOf(retentionGaps);
    unpriced = List.copyOf(unpriced);
  }

  /**
   * What the feed would be if so much were weighed of each line. Nothing is resolved or opened
   * again: rows keep what they keep of each nutrient, and only the mass goes through the process
   * once more.
   */
  public Computation weighed(Weighing other) {
    List<Row> every = everyRow();
    List<ExplodedLine> leaves = new ArrayList<>(every.size());
    for (Row row : every) {
      leaves.add(other.of(row.leaf()));
    }
    Balancing balancing = new Balancing(recipe.process(), nutrients, surroundings);
    Balances anew = balancing.of(leaves);
    return new Computation(
        anew,
        anew.obstacle().isPresent()
            ? Optional.empty()
            : Optional.of(
                with(other, anew, weighed(every, leaves, balancing.yieldOf(leaves, anew)))));
  }

  /**
   * What the feed would be if a premix brought so many times as much of one of its sources, which
   * its carrier makes room for. Empty where the carrier cannot, or where something then stands in
   * the way of its figures.
   */
  public Optional<ComputedFeed> supplied(String premix, String source, double times) {
    List<Row> every = everyRow();
    List<ExplodedLine> leaves = new ArrayList<>(every.size());
    for (Row row : every) {
      Optional<ExplodedLine> leaf =
          row.leaf()
              .supplied(
                  premix,
                  source,
                  times,
                  weighing.inFeed().get(row.line().index()),
                  weighing.richest(row.line()));
      if (leaf.isEmpty()) {
        return Optional.empty();
      }
      leaves.add(leaf.get());
    }
    Balancing balancing = new Balancing(recipe.process(), nutrients, surroundings);
    Balances anew = balancing.of(leaves);
    return anew.obstacle().isPresent()
        ? Optional.empty()
        : Optional.of(
            with(weighing, anew, weighed(every, leaves, balancing.yieldOf(leaves, anew))));
  }

  private static List<Row> weighed(
      List<Row> every, List<ExplodedLine> leaves, FeedYield feedYield) {
    List<Row> weighed = new ArrayList<>(leaves.size());
    for (int i = 0; i < leaves.size(); i++) {
      weighed.add(every.get(i).weighed(leaves.get(i), feedYield));
    }
    return weighed;
  }

  /** What comes of one line, in the order of its premixes; of a line at zero too. */
  public List<Row> rows(Line line) {
    return everyRow().stream().filter(row -> row.line().index() == line.index()).toList();
  }

  /** All rows, those at zero too, in the order of their lines. */
  public List<Row> everyRow() {
    if (rowsAtZero.isEmpty()) {
      return rows;
    }
    List<Row> every = new ArrayList<>(rows);
    every.addAll(rowsAtZero);
    every.sort(Comparator.comparingInt(row -> row.line().index()));
    return every;
  }

  /** The rows of each ingredient together, in the order in which it first comes. */
  public List<List<Row>> rowsByIngredient() {
    Map<String, List<Row>> byName = new LinkedHashMap<>();
    for (Row row : rows) {
      List<Row> same = byName.get(row.ingredient().name());
      if (same == null) {
        same = new ArrayList<>(1);
        byName.put(row.ingredient().name(), same);
      }
      same.add(row);
    }
    return List.copyOf(byName.values());
  }

  /** What it would be with all lost that is weighed on top for handling. */
  public Optional<ComputedFeed> withOverageLost() {
    return weighed(weighing.withoutOnTop()).feed();
  }

  /** What it would be if every step for which the folder does not tell what is kept kept all. */
  public ComputedFeed asIfGapsKeptAll() {
    return with(weighing, balances, everyRow().stream().map(Row::asIfGapsKeptAll).toList());
  }

  /** The same feed if an ingredient had another price, wherever it stands in it. */
  public ComputedFeed priced(Price price) {
    List<Row> other = new ArrayList<>();
    for (Row row : everyRow()) {
      boolean isOne = row.ingredient().name().equals(price.ingredient());
      other.add(isOne ? row.priced(price) : row);
    }
    return with(weighing, balances, other);
  }

  private ComputedFeed with(Weighing other, Balances anew, List<Row> weighed) {
    Rows anewRows = Rows.of(weighed);
    boolean same = rowsAtZero.isEmpty() && anewRows.atZero().isEmpty();
    return new ComputedFeed(
        recipe,
        nutrients,
        surroundings,
        other,
        anew,
        anewRows.ofSome(),
        anewRows.atZero(),
        shrink,
        retentionGaps,
        same ? unpriced : anewRows.unpriced());
  }

  /** The same feed of which all that is finished comes into bags. */
  public ComputedFeed withoutShrink() {
    return new ComputedFeed(
        recipe,
        nutrients,
        surroundings,
        weighing,
        balances,
        rows,
        rowsAtZero,
        0,
        retentionGaps,
        unpriced);
  }

  /** The amount of a nutrient per kg of finished feed as fed, in the base of its kind. */
  public double content(Scenario end, int nutrient) {
    if (nutrients.isMoisture(nutrient)) {
      return moisture(end);
    }
    double sum = 0;
    for (Row row : rows) {
      sum += row.amount(end, nutrient);
    }
    double finished = balances.at(end).finished();
    return finished > 0 ? sum / finished : 0;
  }

  /**
   * Whether the water of a row reaches the feed as it is. What goes in before a step that brings
   * the feed to a moisture of its own leaves no trace of its water.
   */
  public boolean keepsItsWater(Row row) {
    Optional<Balance.MoistureSet> set = balances.expected().moistureSet();
    return set.isEmpty() || (row.line().place() == Place.COAT && !set.get().coated());
  }

  /** Out of a dryer the feed holds most water where all else is poorest, without one it varies. */
  private double moisture(Scenario end) {
    double expected = balances.expected().moisture();
    double poorest = balances.poorest().moisture();
    double richest = balances.richest().moisture();
    return switch (end) {
      case EXPECTED -> expected;
      case POOREST -> Math.min(expected, Math.min(poorest, richest));
      case RICHEST -> Math.max(expected, Math.max(poorest, richest));
    };
  }

  /** Bagged kg per 100 kg of recipe. */
  public double bagged() {
    return balances.expected().finished() * (1 - shrink);
  }

  /** kg weighed, before overage and water, for a batch of a size; bags are solved back. */
  public double weighed(BatchSize size) {
    return switch (size.basis()) {
      case WEIGHED -> size.kg();
      case FINISHED -> size.kg() / bagged() * 100;
    };
  }

  /** Money per bagged kg, with all that is weighed; what has no price counts as nothing. */
  public double costPerKg() {
    return costPer100() / bagged();
  }

  /** Money per 100 kg of recipe, handling overage included. */
  public double costPer100() {
    Sum money = new Sum();
    for (Row row : rows) {
      money.add(row.money());
    }
    return money.total();
  }
}
