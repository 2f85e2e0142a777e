package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.leastcost.Wishes.SweepWish;
import dev.pellucid.engine.optimise.Bounding;
import dev.pellucid.engine.optimise.Movable;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * What goes from here to there.
 *
 * @param name of it in full
 * @param at the task with it there, in the unit of the wish
 * @param line the place of the free line whose price it is; empty for a limit
 */
record Swept(String name, DoubleFunction<Task> at, Optional<Integer> line) {
  Task task(double value) {
    return at.apply(value);
  }

  static Optional<Swept> of(Posed posed, Task task, SweepWish wish) {
    Optional<Unit> unit = Unit.of(wish.unit());
    if (unit.isPresent() && unit.get().kind() == Kind.PRICE) {
      Optional<Swept> price = price(posed, task, wish, unit.get());
      return price.isPresent() ? price : limit(task, wish, unit);
    }
    return limit(task, wish, unit);
  }

  private static Optional<Swept> price(Posed posed, Task task, SweepWish wish, Unit unit) {
    for (int i = 0; i < task.free().size(); i++) {
      if (task.free().get(i).line().material().isCalled(wish.of())) {
        return price(
            posed, task, task.free().get(i).line().material().name(), unit, Optional.of(i));
      }
    }
    boolean isThere =
        task.feed().rows().stream().anyMatch(row -> row.ingredient().name().equals(wish.of()));
    return isThere ? price(posed, task, wish.of(), unit, Optional.empty()) : Optional.empty();
  }

  private static Optional<Swept> price(
      Posed posed, Task task, String name, Unit unit, Optional<Integer> line) {
    Ingredient one = posed.recipe().tables().ingredients().get(name);
    Optional<Price> any = one == null ? Optional.empty() : Repriced.of(posed.recipe(), one, 0);
    return any.map(
        price ->
            new Swept(
                name,
                value ->
                    task.priced(Repriced.of(posed.recipe(), one, unit.toBase(value)).orElseThrow()),
                line));
  }

  private static Optional<Swept> limit(Task task, SweepWish wish, Optional<Unit> unit) {
    for (Tightened kept : task.kept()) {
      Optional<Movable> movable = Movable.of(kept.of());
      if (movable.isPresent() && BoundWords.isCalled(kept.of(), wish.of())) {
        TradeStep step = TradeStep.of(movable.get());
        boolean fits =
            step.bare()
                ? wish.unit().isEmpty()
                : unit.filter(it -> it.kind() == step.unit().kind()).isPresent();
        if (fits) {
          Bounding bounding = Bounding.of(task, movable.get());
          return Optional.of(
              new Swept(
                  BoundWords.inFull(kept.of()),
                  value -> bounding.at(step.bare() ? value : unit.orElseThrow().toBase(value)),
                  Optional.empty()));
        }
      }
    }
    return Optional.empty();
  }
}
