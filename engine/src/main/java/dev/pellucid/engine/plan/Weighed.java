package dev.pellucid.engine.plan;

import dev.pellucid.engine.resolve.Line;
import java.util.List;

/**
 * One line of the weigh list, for the whole batch.
 *
 * @param title for people, with the code of a premix after it
 * @param share the recipe share in percent, as written or as {@code rest} comes to
 * @param target the recipe share of the batch
 * @param stability what stability overage adds to it; of the {@code rest} what the others take away
 * @param handling what is weighed on top and expected to be lost
 * @param micro whether it is weighed apart and checked by a second person: a premix, a trait that
 *     harms by the gram, or less than 1 % of the feed (common practice, no source)
 * @param liquid whether it goes in after the dry lines, slowly
 * @param lot which to take; empty where it is written by hand
 * @param perKgKernel to weigh per kg of kernel; zero in the mix
 */
public record Weighed(
    Line.Place place,
    String name,
    String title,
    double share,
    Mass target,
    Mass stability,
    Mass handling,
    boolean micro,
    boolean liquid,
    String lot,
    Mass perKgKernel) {
  /** The same from another lot, where it is not of one already. */
  Weighed from(String other) {
    String taken = lot.isEmpty() ? other : lot;
    return new Weighed(
        place, name, title, share, target, stability, handling, micro, liquid, taken, perKgKernel);
  }

  /** Overage of both kinds. */
  public Mass extra() {
    return stability.plus(handling);
  }

  /** What is to be in the feed. */
  public Mass inFeed() {
    return target.plus(stability);
  }

  /** What the scale must show. */
  public Mass total() {
    return target.plus(extra());
  }

  /** Several lines together; each sum is that of the figures shown. */
  public record Sum(Mass target, Mass extra, Mass total, Mass perKgKernel) {
    static Sum of(List<Weighed> lines) {
      return new Sum(
          Mass.sum(lines.stream().map(Weighed::target), 0),
          Mass.sum(lines.stream().map(Weighed::extra), 0),
          Mass.sum(lines.stream().map(Weighed::total), 0),
          Mass.sum(lines.stream().map(Weighed::perKgKernel), 0));
    }
  }
}
