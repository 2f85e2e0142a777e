package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Price;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What is to be found: the shares of a feed.
 *
 * @param feed as it is written; lines that it may take in stand in it with a share of zero
 * @param free the lines whose shares may change, in the order of the file; all others stay
 * @param kept what the feed must keep
 * @param mostMoved the points that may move from some lines to others, all together; infinite for
 *     any
 */
public record Task(
    ComputedFeed feed, List<Free> free, List<Tightened> kept, double mostMoved, Aim aim) {
  public Task {
    free = List.copyOf(free);
    kept = List.copyOf(kept);
  }

  /** The same of some of its lines alone, by their index; all others stay as they are written. */
  public Task of(Set<Integer> lines) {
    List<Free> some = new ArrayList<>();
    for (Free one : free) {
      some.add(lines.contains(one.line().index()) ? one : one.fixed());
    }
    return with(some);
  }

  public Task with(List<Free> others) {
    return new Task(feed, others, kept, mostMoved, aim);
  }

  /** The same if an ingredient had another price. */
  public Task priced(Price price) {
    return new Task(feed.priced(price), free, kept, mostMoved, aim);
  }

  /** A task that keeps all, with nothing to spare. */
  public static Task of(
      ComputedFeed feed, List<Free> free, List<Requirement> kept, double mostMoved, Aim aim) {
    List<Tightened> plain = new ArrayList<>(kept.size());
    for (Requirement one : kept) {
      plain.add(new Tightened(one, 0));
    }
    return new Task(feed, free, plain, mostMoved, aim);
  }

  /** The same with another aim. */
  public Task aiming(Aim other) {
    return new Task(feed, free, kept, mostMoved, other);
  }

  public Task keeping(List<Tightened> others) {
    return new Task(feed, free, others, mostMoved, aim);
  }
}
