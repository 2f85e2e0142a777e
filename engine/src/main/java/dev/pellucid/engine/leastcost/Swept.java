package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.leastcost.Wishes.SweepWish;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Bounding;
import dev.pellucid.engine.optimise.Movable;
import dev.pellucid.engine.optimise.ProgramPrices;
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

  static Optional<Swept> of(Posed posed, Answer.Found found, SweepWish wish) {
    Task task = found.task();
    Optional<Unit> unit = Unit.of(wish.unit());
    if (unit.isPresent() && unit.get().kind() == Kind.PRICE) {
      Optional<Swept> price = price(posed, task, wish, unit.get());
      return price.isPresent() ? price : limit(found, wish, unit);
    }
    return limit(found, wish, unit);
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
    return Optional.ofNullable(posed.recipe().tables().ingredients().get(name))
        .filter(one -> Repriced.of(posed.recipe(), one, 0).isPresent())
        .map(
            one ->
                new Swept(
                    name,
                    value ->
                        task.priced(
                            Repriced.of(posed.recipe(), one, unit.toBase(value)).orElseThrow()),
                    line));
  }

  /** Of limits that are called so the one that binds, else the one that asks most. */
  private static Optional<Swept> limit(Answer.Found found, SweepWish wish, Optional<Unit> unit) {
    ProgramPrices prices = new ProgramPrices(found);
    Optional<Movable> best = Optional.empty();
    for (Tightened kept : found.task().kept()) {
      Optional<Movable> one = Movable.of(kept.of());
      if (one.isPresent()
          && BoundWords.isCalled(kept.of(), wish.of())
          && fits(TradeStep.of(one.get()), wish, unit)
          && (best.isEmpty() || asksMore(one.get(), best.get(), prices))) {
        best = one;
      }
    }
    return best.map(one -> limit(found.task(), one, unit));
  }

  private static boolean fits(TradeStep step, SweepWish wish, Optional<Unit> unit) {
    return step.bare()
        ? wish.unit().isEmpty()
        : unit.isPresent() && unit.get().kind() == step.unit().kind();
  }

  private static boolean asksMore(Movable one, Movable other, ProgramPrices prices) {
    boolean binds = prices.perUnit(one) > 0;
    boolean otherBinds = prices.perUnit(other) > 0;
    return binds == otherBinds ? (one.bound() - other.bound()) * one.tighter() > 0 : binds;
  }

  private static Swept limit(Task task, Movable one, Optional<Unit> unit) {
    Bounding bounding = Bounding.of(task, one);
    return new Swept(
        BoundWords.inFull(one.of()),
        value -> bounding.at(unit.isPresent() ? unit.get().toBase(value) : value),
        Optional.empty());
  }
}
