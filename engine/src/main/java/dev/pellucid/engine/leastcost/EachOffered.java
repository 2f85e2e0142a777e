package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.resolve.Line;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An answer with lines for ingredients of the folder that it has no line for, each with a share of
 * zero: nothing else of it changes, so what its program costs is true of them too.
 */
final class EachOffered {
  private final Posed posed;
  private final Answer.Found found;
  private final FeedComputer computer;

  EachOffered(Posed posed, Answer.Found found, FeedComputer computer) {
    this.posed = posed;
    this.found = found;
    this.computer = computer;
  }

  /** Those that it has no line for, in the order of their names. */
  List<Ingredient> absent() {
    Set<String> present = new HashSet<>();
    for (Line line : found.task().feed().recipe().lines()) {
      present.add(line.material().name());
    }
    List<Ingredient> absent = new ArrayList<>();
    for (Ingredient one : posed.recipe().tables().ingredients().values()) {
      if (!present.contains(one.name())) {
        absent.add(one);
      }
    }
    return absent;
  }

  /** The task with lines for these; empty where its feed then has no figures. */
  Optional<Task> task(List<Ingredient> more) {
    Task task = found.task();
    return Offered.in(task.feed(), more, posed.recipe().tables(), computer, posed.recipe().day())
        .map(feed -> new Task(feed, task.free(), task.kept(), task.mostMoved(), task.aim()));
  }

  /** The slopes of the answer, with lines for as many of these as have figures. */
  List<Slopes> slopes(List<Ingredient> more) {
    Optional<ComputedFeed> feed = task(more).flatMap(it -> Optimiser.feed(it, found.shares()));
    if (feed.isPresent()) {
      return List.of(new Slopes(feed.get()));
    }
    if (more.size() <= 1) {
      return List.of();
    }
    List<Slopes> both = new ArrayList<>(slopes(more.subList(0, more.size() / 2)));
    both.addAll(slopes(more.subList(more.size() / 2, more.size())));
    return both;
  }
}
