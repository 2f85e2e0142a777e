package dev.pellucid.engine.compare;

import dev.pellucid.engine.account.Account.Tally;
import dev.pellucid.engine.account.Held;
import dev.pellucid.measure.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What became of one recipe.
 *
 * @param formerly its code before, where it was renamed
 * @param text lines of its text that are gone, {@code was: ...}, and new, {@code now: ...}
 * @param because the files that moved it, itself among others
 * @param costBefore money per kg in the bags
 * @param limits how its limits stand now; empty where it is gone or cannot be computed
 * @param effect what it does to the feed, of a new one what it does not keep; empty where there is
 *     nothing to see
 * @param obstacle what keeps it from being computed now; empty where nothing does
 * @param findings what its check says otherwise; of a new one all that is wrong with it
 * @param printed what its sheet and its label tell otherwise
 */
public record RecipeChange(
    String code,
    Optional<String> formerly,
    How how,
    List<String> text,
    List<Cause> because,
    OptionalDouble costBefore,
    OptionalDouble costAfter,
    Optional<Tally> limits,
    Optional<Effect> effect,
    String obstacle,
    FindingsMoved findings,
    Printed.Moved printed) {
  public RecipeChange {
    text = List.copyOf(text);
    because = List.copyOf(because);
  }

  /** In what way it changed. */
  public enum How {
    ADDED("new"),
    REMOVED("gone"),
    /** It can no longer be computed, or can be again. */
    BROKEN("cannot be computed any more"),
    MENDED("can be computed again"),
    /** Under another code, and nothing else. */
    RENAMED("renamed"),
    EDITED("edited"),
    /** Nobody touched it. */
    BY_DATA("not touched, changed by its data");

    private final String words;

    How(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * A file without whose change the feed would be another.
   *
   * @param costMoved what it adds to a kg in the bags; absent where the feed hangs on it altogether
   */
  public record Cause(String path, OptionalDouble costMoved) {}

  /** A share before and after; empty where the line was not there. */
  public record Shifted(String line, String before, String after) {}

  /**
   * A nutrient before and after, in the base of its unit's kind.
   *
   * @param nearest the limit on it that is nearest to its bound, or furthest beyond it
   */
  public record Moved(
      String nutrient, double before, double after, Unit unit, Optional<Held> nearest) {

    /** Whether it comes in or goes altogether. */
    public boolean altogether() {
      return before == 0 || after == 0;
    }
  }

  /** A limit before and after. */
  public record LimitMoved(Held before, Held after) {}

  /**
   * What a line adds to the cost of a kg in the bags.
   *
   * @param priceBefore money for a kg of it; zero where it was not there
   */
  public record CostMoved(String line, double moved, double priceBefore, double priceAfter) {
    /** Stands in place of a line for what more or fewer kg in the bags do. */
    static final String YIELD = "yield";

    /** Whether it is no line, but what comes of water that goes off. */
    public boolean isYield() {
      return line.equals(YIELD);
    }
  }

  /**
   * kg on the scales in one load, or round, before and after; zero where the line was not there.
   */
  public record WeightMoved(String line, double before, double after) {}

  /** What it adds to a kg in the bags; zero where one of the two is not known. */
  public double costMoved() {
    return costBefore.isPresent() && costAfter.isPresent()
        ? costAfter.getAsDouble() - costBefore.getAsDouble()
        : 0;
  }

  /** {@code CG-37, formerly CG-36}. */
  public String named() {
    return formerly.map(former -> code + ", formerly " + former).orElse(code);
  }

  /** What it does to the feed; where there is nothing to see, an effect of nothing. */
  public Effect effectOrNone() {
    return effect.orElse(Effect.NONE);
  }

  /** Whether it cannot be computed and did before, or is new. */
  public boolean isLost() {
    return how == How.BROKEN || isNew() && costAfter.isEmpty();
  }

  /** Whether it was not there before. */
  public boolean isNew() {
    return how == How.ADDED;
  }

  /** The gravest first. */
  int rank() {
    return isLost()
        ? 0
        : 1 + Math.min(effect.map(Effect::rank).orElse(Effect.LEAST), findings.rank());
  }
}
