package dev.pellucid.engine.compare;

import dev.pellucid.engine.compare.PremixState.Figures;
import dev.pellucid.engine.compare.PremixState.Supply;
import dev.pellucid.engine.compare.RecipeChange.WeightMoved;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What became of one premix.
 *
 * @param how it changed, in words
 * @param text lines of its text that are gone and new
 * @param because the other files that it hangs on and that say something else
 * @param batches kg made at once, before and after, where that moved
 * @param weights kg of each line in a batch that moved
 * @param supplies that moved
 * @param costBefore money for a kg of it
 * @param printed what its sheet tells otherwise
 */
public record PremixChange(
    String code,
    String path,
    How how,
    List<String> text,
    List<String> because,
    Optional<WeightMoved> batches,
    List<WeightMoved> weights,
    List<SupplyMoved> supplies,
    OptionalDouble costBefore,
    OptionalDouble costAfter,
    Printed.Moved printed,
    FindingsMoved findings) {
  private static final String MADE_FOR = "sheet: what it is made for";

  /** Weights are rounded to the scales: to a gram they are in step, kg. */
  private static final double GRID = 0.001;

  public PremixChange {
    text = List.copyOf(text);
    because = List.copyOf(because);
    weights = List.copyOf(weights);
    supplies = List.copyOf(supplies);
  }

  /** In what way it changed. */
  public enum How {
    ADDED("new"),
    REMOVED("gone"),
    EDITED("edited"),
    /** Nobody touched it. */
    BY_DATA("not touched, changed by its data"),
    /** It is the same, and other feeds take it or they take another amount. */
    BY_ORDER("made for other feeds, or in another amount");

    private final String words;

    How(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * What it is made to bring, before and after; absent where it was not there.
   *
   * @param asked whether the amount in the feed is another, and not only what the premix holds
   */
  public record SupplyMoved(
      String nutrient, boolean asked, Optional<Supply> before, Optional<Supply> after) {}

  static PremixChange alone(PremixState state, boolean added) {
    List<Found> none = List.of();
    OptionalDouble cost = cost(state);
    return new PremixChange(
        state.code(),
        state.path(),
        added ? How.ADDED : How.REMOVED,
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        List.of(),
        added ? OptionalDouble.empty() : cost,
        added ? cost : OptionalDouble.empty(),
        Printed.Moved.NONE,
        added
            ? FindingsMoved.between(none, state.found())
            : FindingsMoved.between(state.found(), none));
  }

  /** Empty where nothing is otherwise. */
  static Optional<PremixChange> between(
      PremixState was, PremixState is, Set<String> differing, List<String> text) {
    Optional<Figures> then = was.figures();
    Optional<Figures> now = is.figures();
    boolean both = then.isPresent() && now.isPresent();
    PremixChange change =
        new PremixChange(
            is.code(),
            is.path(),
            text.isEmpty() ? How.BY_DATA : How.EDITED,
            text,
            differing.stream()
                .filter(path -> !path.equals(is.path()) && !path.equals(was.path()))
                .filter(path -> is.hangsOn().test(path) || was.hangsOn().test(path))
                .toList(),
            both ? batches(then.get(), now.get()) : Optional.empty(),
            both ? weights(then.get(), now.get()) : List.of(),
            both ? supplies(then.get().supplies(), now.get().supplies()) : List.of(),
            cost(was),
            cost(is),
            Printed.between(was.printed(), is.printed()),
            FindingsMoved.between(was.found(), is.found()));
    boolean none =
        text.isEmpty()
            && was.path().equals(is.path())
            && then.isPresent() == now.isPresent()
            && change.batches().isEmpty()
            && change.weights().isEmpty()
            && change.supplies().isEmpty()
            && !change.costMoves()
            && change.printed().isNone()
            && change.findings().isNone();
    return none
        ? Optional.empty()
        : Optional.of(change.isOrder(was, is) ? change.byOrder() : change);
  }

  /** Whether it is the same premix, of which more or less is made, or for other feeds. */
  private boolean isOrder(PremixState was, PremixState is) {
    return text.isEmpty()
        && was.path().equals(is.path())
        && findings.isNone()
        && was.figures().isPresent()
        && is.figures().isPresent()
        && weights.isEmpty()
        && supplies.isEmpty()
        && !costMoves()
        && printed.facts().isEmpty()
        && (batches.isPresent() || printed.parts().equals(List.of(MADE_FOR)))
        && !printed.parts().contains("sheet: head")
        && !printed.parts().contains("sheet: before the start");
  }

  private PremixChange byOrder() {
    return new PremixChange(
        code,
        path,
        How.BY_ORDER,
        text,
        List.of(),
        batches,
        weights,
        supplies,
        costBefore,
        costAfter,
        printed,
        findings);
  }

  private static OptionalDouble cost(PremixState state) {
    return state.figures().isPresent() ? state.figures().get().costPerKg() : OptionalDouble.empty();
  }

  /** Whether a kg of it costs something else. */
  public boolean costMoves() {
    return costBefore.isPresent() != costAfter.isPresent()
        || costBefore.isPresent()
            && !Effect.same(costBefore.getAsDouble(), costAfter.getAsDouble());
  }

  /** What a kg becomes dearer by; zero where one of the two is not known. */
  public double costMoved() {
    return costBefore.isPresent() && costAfter.isPresent()
        ? costAfter.getAsDouble() - costBefore.getAsDouble()
        : 0;
  }

  private static Optional<WeightMoved> batches(Figures was, Figures is) {
    return Effect.same(was.batch(), is.batch())
        ? Optional.empty()
        : Optional.of(new WeightMoved("batch", was.batch(), is.batch()));
  }

  /** None where each line only moves as the batch does. */
  private static List<WeightMoved> weights(Figures was, Figures is) {
    List<WeightMoved> weights = new ArrayList<>();
    boolean inStep = true;
    for (String line : names(was.weights(), is.weights())) {
      double before = was.weights().getOrDefault(line, 0.0);
      double after = is.weights().getOrDefault(line, 0.0);
      if (!Effect.same(before, after)) {
        weights.add(new WeightMoved(line, before, after));
      }
      inStep &= Math.abs(before * is.batch() - after * was.batch()) < GRID * was.batch();
    }
    return inStep && !Effect.same(was.batch(), is.batch()) ? List.of() : weights;
  }

  private static List<SupplyMoved> supplies(Map<String, Supply> was, Map<String, Supply> is) {
    List<SupplyMoved> supplies = new ArrayList<>();
    for (String nutrient : names(was, is)) {
      Optional<Supply> before = Optional.ofNullable(was.get(nutrient));
      Optional<Supply> after = Optional.ofNullable(is.get(nutrient));
      if (before.isEmpty() || after.isEmpty()) {
        supplies.add(new SupplyMoved(nutrient, true, before, after));
      } else {
        boolean unit = before.get().unit().equals(after.get().unit());
        boolean asked = !unit || !Effect.same(before.get().asked(), after.get().asked());
        if (asked || !Effect.same(before.get().fresh(), after.get().fresh())) {
          supplies.add(new SupplyMoved(nutrient, asked, before, after));
        }
      }
    }
    return supplies;
  }

  private static Set<String> names(Map<String, ?> was, Map<String, ?> is) {
    Set<String> names = new LinkedHashSet<>(is.keySet());
    names.addAll(was.keySet());
    return names;
  }

  int rank() {
    return how == How.BY_ORDER ? Effect.LEAST + 1 : findings.rank();
  }
}
