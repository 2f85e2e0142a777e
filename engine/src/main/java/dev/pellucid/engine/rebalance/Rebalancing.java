package dev.pellucid.engine.rebalance;

import dev.pellucid.engine.account.Held;
import java.util.List;
import java.util.Optional;

/**
 * What a person is told of one batch. Shares are in percent of the recipe, money is in the currency
 * of the folder for a kg in the bags.
 *
 * @param number of the batch
 * @param why nothing is offered, in a sentence; empty where something is
 * @param lots that were measured
 * @param lines that change, in the order of the recipe; none where nothing is offered
 * @param limits those that are missed, and those that bind after the change
 * @param others how many other limits are kept before and after
 * @param causes what of each lot moves a limit that is missed
 * @param costs absent where a price is missing
 * @param label why the label of the recipe is not true of this batch, a sentence each
 * @param cautions what a person should know before signing, a sentence each
 * @param against what stands against each other where nothing keeps all limits
 */
public record Rebalancing(
    String number,
    String code,
    Standing standing,
    String why,
    List<LotIn> lots,
    List<LineMove> lines,
    List<LimitMove> limits,
    int others,
    List<Cause> causes,
    Optional<Costs> costs,
    List<String> label,
    List<String> cautions,
    List<String> against) {
  public Rebalancing {
    lots = List.copyOf(lots);
    lines = List.copyOf(lines);
    limits = List.copyOf(limits);
    causes = List.copyOf(causes);
    label = List.copyOf(label);
    cautions = List.copyOf(cautions);
    against = List.copyOf(against);
  }

  /** What there is to say. */
  public enum Standing {
    /** No lot of it was measured. */
    NO_GROUND,
    /** It keeps every limit as it stands. */
    KEPT,
    /** The shares of its record miss a limit, and those of the recipe keep all. */
    RECIPE_KEEPS,
    /** Other shares keep every limit. */
    MOVED,
    /** No shares within their bounds do. */
    IMPOSSIBLE,
    /** None were found that can be proven. */
    NOT_PROVEN
  }

  /**
   * A lot that was measured.
   *
   * @param named whether the record names it; else its sheet would
   * @param measured what was found in it beside what the ingredient has, in words
   */
  public record LotIn(String number, String line, boolean named, String measured) {}

  /**
   * A line.
   *
   * @param within how far the recipe lets it go, in words; empty where it tells nothing
   * @param rest whether it takes what the others leave
   */
  public record LineMove(String name, double recipe, double batch, String within, boolean rest) {
    /** Points more, or less. */
    public double moved() {
      return batch - recipe;
    }
  }

  /**
   * How the batch stands with a limit.
   *
   * @param recipe by the recipe, with what the folder says of its ingredients; absent where that
   *     tells nothing
   * @param lots with its lots and the shares of the recipe
   * @param batch with the new shares; absent where there are none
   * @param missed whether it is broken with its lots, or kept in too few batches
   */
  public record LimitMove(Optional<Held> recipe, Held lots, Optional<Held> batch, boolean missed) {}

  /**
   * What one lot does to a limit that is missed.
   *
   * @param limit as it is asked
   * @param moves the figure by as much, in the unit of the limit; below zero where it lowers it
   * @param unit with the blank before it
   */
  public record Cause(String limit, String lot, String line, double moves, String unit) {}

  /** What a kg in the bags costs by the shares of the recipe, and by those of the batch. */
  public record Costs(double recipe, double batch) {}

  /** Whether shares are offered. */
  public boolean isMoved() {
    return standing == Standing.MOVED;
  }

  /** The points by which lines rise, all together. */
  public double points() {
    return lines.stream().mapToDouble(line -> Math.max(0, line.moved())).sum();
  }
}
