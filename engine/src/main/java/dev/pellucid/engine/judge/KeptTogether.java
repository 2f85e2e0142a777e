package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.LotFigures;
import dev.pellucid.engine.resolve.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * In what part of all batches a feed keeps all of its limits at once, when lots differ: a feed of
 * which each limit is kept in nine batches of ten keeps all of them in far fewer.
 *
 * <p>Each limit is held against its bound in force, at the end where {@link Judge} judges it, with
 * contents that are drawn in place of mean and margin; one that asks for a part of batches too.
 * Within one ingredient each content is drawn by itself, while a margin takes the contents of a sum
 * to move together, so that a limit on a sum may be kept in more batches here than its margin asks
 * for. What follows from contents moves with them along a straight line. What is weighed, what the
 * process does and what is paid do not vary.
 *
 * @param all the part of all batches that keeps every limit; zero where the feed breaks one on
 *     average
 * @param limits that can be judged, in their order
 * @param notJudged limits for which too little is told, in their order; they count as kept
 */
public record KeptTogether(double all, List<Alone> limits, List<LimitStatus> notJudged) {
  public KeptTogether {
    limits = List.copyOf(limits);
    notJudged = List.copyOf(notJudged);
  }

  /**
   * One limit by itself.
   *
   * @param kept the part of all batches that keeps it; of one that is broken on average, too
   */
  public record Alone(LimitStatus status, double kept) {}

  /** Of a feed and how it stands with its limits. */
  public static KeptTogether of(ComputedFeed feed, List<LimitStatus> limits) {
    LotFigures lots = new LotFigures(feed);
    LotDraws draws = new LotDraws(lots);
    Judging judging = new Judging(feed);
    List<Drawn> drawn = new ArrayList<>(limits.size());
    List<LimitStatus> notJudged = new ArrayList<>();
    for (LimitStatus status : limits) {
      LimitStatus bare = withoutBatches(judging, status);
      if (bare.state().isJudged()) {
        Limit limit = status.limit();
        LotDraws.Held held =
            draws.hold(
                lots.judged(limit.subject(), limit.basis(), limit.side()),
                limit.side(),
                limit.inForce());
        drawn.add(new Drawn(status, bare.state().isBroken(), held));
      } else {
        notJudged.add(status);
      }
    }
    draws.draw();
    return counted(drawn, notJudged);
  }

  /** As if the limit did not say in how many batches it must hold. */
  private static LimitStatus withoutBatches(Judging judging, LimitStatus status) {
    Limit limit = status.limit();
    return limit.inBatches().isEmpty()
        ? status
        : judging.status(limit.askedIn(OptionalDouble.empty()));
  }

  /**
   * A limit and its batches.
   *
   * @param broken whether it is on average
   */
  private record Drawn(LimitStatus status, boolean broken, LotDraws.Held held) {
    /** The part of batches that keeps it; notes those that fail. */
    double kept(boolean[] fails) {
      if (!held.varies()) {
        return broken ? 0 : 1;
      }
      int kept = 0;
      for (int batch = 0; batch < fails.length; batch++) {
        if (held.keeps(batch)) {
          kept++;
        } else {
          fails[batch] = true;
        }
      }
      return part(kept);
    }
  }

  private static KeptTogether counted(List<Drawn> drawn, List<LimitStatus> notJudged) {
    boolean[] fails = new boolean[LotDraws.BATCHES];
    boolean broken = false;
    List<Alone> limits = new ArrayList<>(drawn.size());
    for (Drawn one : drawn) {
      limits.add(new Alone(one.status(), one.kept(fails)));
      broken |= one.broken();
    }
    int all = 0;
    for (boolean fail : fails) {
      all += fail ? 0 : 1;
    }
    return new KeptTogether(broken ? 0 : part(all), limits, notJudged);
  }

  private static double part(int batches) {
    return (double) batches / LotDraws.BATCHES;
  }

  /** The limit that fails most often, the first of several; empty where none ever fails. */
  public Optional<Alone> failsMost() {
    Optional<Alone> most = Optional.empty();
    for (Alone one : limits) {
      if (one.kept() < 1 && (most.isEmpty() || one.kept() < most.get().kept())) {
        most = Optional.of(one);
      }
    }
    return most;
  }
}
