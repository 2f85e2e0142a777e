package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.check.PartWords;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Aim;
import dev.pellucid.engine.optimise.Contradicting;
import dev.pellucid.engine.optimise.Ease;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.optimise.OtherBound;
import dev.pellucid.engine.optimise.Part;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Recipes of the example with limits and lines tightened at random, seeded, until nothing keeps
 * all: the parts that are told cannot be met and can with any one left out, what is offered is none
 * that is never loosened, and does. With {@code -Dpellucid.contradictions=200} so many.
 */
class RandomContradictionsTest {
  private static final int MANY = Integer.getInteger("pellucid.contradictions", 40);
  private static final int SEED = Integer.getInteger("pellucid.contradictionsSeed", 20261128);
  private static final Solver SOLVER = Solver.standard();
  private static final int MOST_TRIES = 20;

  private enum Met {
    YES,
    NO,
    UNDECIDED
  }

  private final Shared shared;
  private final FeedComputer computer;
  private final List<String> wrong = new ArrayList<>();
  private int undecided;
  private int parts;
  private int offered;

  RandomContradictionsTest() throws IOException {
    this.shared =
        Shared.of(
            ReadFolder.of(Texts.at(Example.whole()).held()), Days.on(LocalDate.of(2026, 11, 28)));
    this.computer = new FeedComputer(shared.tables());
  }

  @Test
  void whatIsToldContradictsItselfAndWhatIsOfferedHelps() {
    List<String> recipes = shared.texts().ending(".recipe");
    Random random = new Random(SEED);
    int shown = 0;
    int without = 0;
    for (int i = 0; i < MANY * MOST_TRIES && shown < MANY; i++) {
      String path = recipes.get(random.nextInt(recipes.size()));
      RuleContext recipe = Streamed.judged(shared, path).recipe().orElseThrow();
      Posed posed =
          Posed.of(recipe, Wishes.NONE, computer, new Held(computer, List.of())).orElseThrow();
      Task task = tightened(posed.task(), random);
      if (met(task) == Met.NO) {
        shown++;
        without += look(i + " " + path, posed, task) ? 0 : 1;
      }
    }
    System.out.println(
        "contradictions: "
            + shown
            + " of "
            + parts
            + " parts, not shown: "
            + without
            + ", parts without which it is not decided: "
            + undecided
            + ", offered: "
            + offered);
    assertEquals(MANY, shown);
    assertEquals(List.of(), wrong, () -> String.join("\n", wrong));
    assertTrue(without <= MANY / 20, "not shown: " + without);
    assertTrue(undecided <= parts / 20, "not decided: " + undecided);
  }

  /** Some limits beyond what the feed is at, and some lines close around their shares. */
  private static Task tightened(Task task, Random random) {
    List<Tightened> kept = new ArrayList<>(task.kept());
    Slopes slopes = new Slopes(task.feed());
    int limits = 1 + random.nextInt(2);
    for (int i = 0; i < limits; i++) {
      int at = random.nextInt(kept.size());
      Requirement one = kept.get(at).of();
      if (OtherBound.of(one, 0).isPresent()) {
        double now = OtherBound.kept(one, slopes);
        double by = (0.02 + 0.2 * random.nextDouble()) * now;
        kept.set(
            at, new Tightened(OtherBound.of(one, isLeast(one) ? now + by : now - by).get(), 0));
      }
    }
    List<Free> free = new ArrayList<>();
    for (Free one : task.free()) {
      double part = random.nextInt(3) == 0 ? random.nextDouble() : 1;
      double now = one.written();
      free.add(one.between(now - part * (now - one.low()), now + part * (one.high() - now)));
    }
    return task.keeping(kept).with(free);
  }

  private static boolean isLeast(Requirement one) {
    return one.byKind(
        limit -> limit.limit().side().word().equals("min"),
        practice -> practice.side().word().equals("min"),
        cap -> false,
        label -> label.side().word().equals("min"),
        order -> false,
        stock -> false);
  }

  private static Met met(Task task) {
    return new Optimiser(SOLVER)
        .solve(task.aiming(Aim.CHANGE))
        .byKind(found -> Met.YES, none -> Met.NO, undecided -> Met.UNDECIDED);
  }

  /** Whether a contradiction is shown. */
  private boolean look(String name, Posed posed, Task task) {
    Optional<List<Part>> told = Contradicting.of(task, SOLVER, Part::ease);
    if (told.isEmpty()) {
      return false;
    }
    List<Part> set = told.get();
    parts += set.size();
    if (met(Part.only(task, set)) != Met.NO) {
      wrong.add(name + " can be met: " + set);
    }
    for (Part part : set) {
      List<Part> less = new ArrayList<>(set);
      less.remove(part);
      Met met = met(Part.only(task, less));
      undecided += met == Met.UNDECIDED ? 1 : 0;
      if (met == Met.NO) {
        wrong.add(name + " cannot be met without " + part);
      }
    }
    for (Part part : set) {
      Optional<Loosened> one = Loosened.of(task, part, SOLVER);
      if (one.isPresent()) {
        offered++;
        if (met(one.get().change().apply(task)) != Met.YES) {
          wrong.add(name + " does not help: " + one.get().words());
        }
      }
    }
    Contradiction shown =
        Contradictions.of(
                new Posed(posed.recipe(), posed.wishes(), task, posed.held(), posed.holding()),
                SOLVER,
                computer)
            .orElseThrow()
            .contradiction();
    for (Contradiction.Loosening one : shown.loosenings()) {
      for (Part part : set) {
        boolean isThis = one.place().isPresent() && one.place().equals(PartWords.place(part));
        boolean never = part.ease() == Ease.NEVER;
        if (isThis && never) {
          wrong.add(name + " is never loosened: " + one.words());
        }
      }
      if (one.words().contains("law") || one.words().contains("its cap")) {
        wrong.add(name + " is never loosened: " + one.words());
      }
    }
    return true;
  }
}
