package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Bounding;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Movable;
import dev.pellucid.engine.optimise.Nearby;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.optimise.ProgramPrices;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;

/** Cheapest feeds of the example, and of others that are made of them by chance. */
final class FoundFeeds {
  static final Shared SHARED = shared();
  static final FeedComputer COMPUTER = new FeedComputer(SHARED.tables());

  private FoundFeeds() {}

  private static Shared shared() {
    try {
      return Shared.of(
          ReadFolder.of(Texts.at(Example.whole())), Days.on(LocalDate.of(2026, 11, 28)));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** A feed that was posed, and what was found. */
  record Case(String name, Posed posed, Answer.Found found) {
    Nearby nearby() {
      return new Nearby(new Optimiser(Solver.standard()), found);
    }

    ProgramPrices prices() {
      return new ProgramPrices(found);
    }

    Reasons reasons() {
      return new Explaining(Solver.standard(), COMPUTER).of(posed, found, found.feed());
    }

    @Override
    public String toString() {
      return name;
    }
  }

  /** Each recipe of the example that has an answer. */
  static List<Case> ofExample() {
    List<Case> cases = new ArrayList<>();
    for (String path : SHARED.texts().ending(".recipe")) {
      Posed posed = posed(path, Wishes.NONE.explained(Optional.empty()));
      solved(posed.task()).ifPresent(found -> cases.add(new Case(path, posed, found)));
    }
    return cases;
  }

  static Case of(String path, Wishes wishes) {
    Posed posed = posed(path, wishes);
    return new Case(path, posed, solved(posed.task()).orElseThrow());
  }

  static Posed posed(String path, Wishes wishes) {
    return Posed.of(
            Streamed.judged(SHARED, path).recipe().orElseThrow(),
            wishes,
            COMPUTER,
            new Held(COMPUTER, SHARED.findings()))
        .orElseThrow();
  }

  /** Solved afresh, from the shares as they are written, with all that is kept. */
  static Optional<Answer.Found> solved(Task task) {
    return new Optimiser(Solver.standard())
        .solve(task)
        .byKind(Optional::of, unmet -> Optional.empty(), undecided -> Optional.empty());
  }

  /** The same of what must have an answer. */
  static Answer.Found must(Task task) {
    return new Optimiser(Solver.standard())
        .solve(task)
        .byKind(
            found -> found,
            unmet -> {
              throw new AssertionError("no shares keep all");
            },
            undecided -> {
              throw new AssertionError(undecided.why());
            });
  }

  /**
   * As many others: of a recipe some prices are others, some bounds are moved and some lines are
   * freer.
   */
  static List<Case> random(int many) {
    List<String> paths = SHARED.texts().ending(".recipe");
    Random random = new Random(16);
    List<Case> cases = new ArrayList<>();
    while (cases.size() < many) {
      String path = paths.get(random.nextInt(paths.size()));
      Posed posed = posed(path, Wishes.NONE.explained(Optional.empty()));
      Posed other =
          new Posed(
              posed.recipe(), posed.wishes(), moved(posed, random), posed.held(), posed.holding());
      String name = path + " " + cases.size();
      solved(other.task()).ifPresent(found -> cases.add(new Case(name, other, found)));
    }
    return cases;
  }

  private static Task moved(Posed posed, Random random) {
    Task task = posed.task();
    for (Free free : task.free()) {
      Optional<Price> now = free.line().material().single().flatMap(one -> one.price());
      if (now.isPresent() && random.nextBoolean()) {
        task = task.priced(at(now.get(), now.get().perKg() * (0.6 + random.nextDouble())));
      }
    }
    for (Tightened kept : task.kept()) {
      Optional<Movable> movable = Movable.of(kept.of());
      if (movable.isPresent() && movable.get().bound() > 0 && random.nextInt(4) == 0) {
        double times = 0.97 + 0.06 * random.nextDouble();
        task = Bounding.of(task, movable.get()).at(movable.get().bound() * times);
      }
    }
    List<Free> freer = new ArrayList<>();
    for (Free free : task.free()) {
      double more = random.nextInt(3) == 0 ? 4 * random.nextDouble() : 0;
      freer.add(free.between(Math.max(0, free.low() - more), free.high() + more));
    }
    return task.with(freer);
  }

  static Price at(Price now, double perKg) {
    return new Price(
        now.ingredient(), now.from(), perKg, now.asWritten(), now.source(), now.place());
  }

  /** The share of the lines of an ingredient in an answer, in points. */
  static double share(Answer.Found found, String name) {
    List<Free> free = found.task().free();
    for (int i = 0; i < free.size(); i++) {
      if (free.get(i).line().material().name().equals(name)) {
        return found.shares()[i];
      }
    }
    return 0;
  }

  /** An ingredient that is there. */
  static Ingredient ingredient(String name) {
    return Objects.requireNonNull(SHARED.tables().ingredients().get(name), name);
  }
}
