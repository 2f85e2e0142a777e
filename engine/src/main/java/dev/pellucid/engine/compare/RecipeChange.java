package dev.pellucid.engine.compare;

import dev.pellucid.engine.compare.RecipeState.Held;
import dev.pellucid.measure.Unit;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What became of one recipe.
 *
 * @param because data files that changed and that it hangs on
 * @param lines shares that changed
 * @param moved nutrients that changed, the largest change in proportion first
 * @param broken limits that are no longer kept
 * @param met limits that were broken and are kept now
 * @param tight limits that are kept and have come within a hundredth of their bound
 * @param costBefore money per kg in the bags
 * @param waivers added, with a plus, and gone, with a minus
 */
public record RecipeChange(
    String code,
    How how,
    List<String> because,
    List<Shifted> lines,
    List<Moved> moved,
    List<LimitMoved> broken,
    List<LimitMoved> met,
    List<LimitMoved> tight,
    OptionalDouble costBefore,
    OptionalDouble costAfter,
    List<String> waivers) {
  public RecipeChange {
    because = List.copyOf(because);
    lines = List.copyOf(lines);
    moved = List.copyOf(moved);
    broken = List.copyOf(broken);
    met = List.copyOf(met);
    tight = List.copyOf(tight);
    waivers = List.copyOf(waivers);
  }

  /** In what way it changed. */
  public enum How {
    ADDED("new"),
    REMOVED("gone"),
    /** It can no longer be computed, or can be again. */
    BROKEN("cannot be computed any more"),
    MENDED("can be computed again"),
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

  /** A share before and after; empty where the line was not there. */
  public record Shifted(String line, String before, String after) {}

  /** A nutrient before and after, in the base of its unit's kind. */
  public record Moved(String nutrient, double before, double after, Unit unit) {}

  /** A limit before and after. */
  public record LimitMoved(Held before, Held after) {}

  /** What it adds to a kg in the bags; nought where one of the two is not known. */
  public double costMoved() {
    return costBefore.isPresent() && costAfter.isPresent()
        ? costAfter.getAsDouble() - costBefore.getAsDouble()
        : 0;
  }

  /** The gravest first. */
  int rank() {
    if (how == How.BROKEN) {
      return 0;
    }
    return !broken.isEmpty() ? 1 : !tight.isEmpty() ? 2 : !met.isEmpty() ? 3 : 4;
  }
}
