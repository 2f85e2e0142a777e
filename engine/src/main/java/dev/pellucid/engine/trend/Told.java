package dev.pellucid.engine.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What of a course is to be told today: what goes on at its last batch, and else single batches
 * that were far off not long ago. What came back by itself is told no more.
 *
 * @param run which is told
 * @param alone other batches of late that were further off than three spreads, the last first
 */
public record Told(Course course, Run run, List<Spot> alone) {
  /** Among so many batches one that was far off by itself is still told: as many as a rule sees. */
  private static final int OF_LATE = 8;

  /** A row on one side is told from so many spreads off on average; ours. */
  private static final double LEAST = 0.25;

  /** What was made so many days ago last is not made any more; no source. */
  private static final int DAYS = 365;

  public Told {
    alone = List.copyOf(alone);
  }

  /** Empty where the course is left to chance. */
  public static Optional<Told> of(Course course, LocalDate today) {
    if (course.spots().isEmpty() || isForgotten(course, today)) {
      return Optional.empty();
    }
    List<Run> far = far(course);
    List<Run> now = course.now().stream().filter(one -> isOfWeight(course, one)).toList();
    Optional<Run> run = longest(now).or(() -> far.stream().findFirst());
    return run.map(
        one ->
            new Told(
                course,
                one,
                far.stream()
                    .filter(other -> other.to() < one.from())
                    .map(other -> course.spots().get(other.to()))
                    .toList()));
  }

  /** A row on one side that is hardly off is one of rounded readings. */
  private static boolean isOfWeight(Course course, Run run) {
    double sum = 0;
    for (Spot spot : course.spots().subList(run.from(), run.to() + 1)) {
      sum += Math.abs(spot.spreads().orElse(1));
    }
    return run.rule() != RunRule.EIGHT_ON_ONE_SIDE || sum / run.count() >= LEAST;
  }

  private static boolean isForgotten(Course course, LocalDate today) {
    LocalDate last = course.spots().get(course.spots().size() - 1).batch().day();
    return last.plusDays(DAYS).isBefore(today);
  }

  /** Of what goes on over several batches, what takes in most of them. */
  private static Optional<Run> longest(List<Run> runs) {
    Optional<Run> longest = Optional.empty();
    for (Run run : runs) {
      boolean longer = longest.isEmpty() || run.count() > longest.get().count();
      longest = longer && run.count() > 1 ? Optional.of(run) : longest;
    }
    return longest;
  }

  /**
   * Single batches far off of late, the last first; of one that is gone nothing can be done. What
   * is read on the floor is held against practice batch by batch, where it is written.
   */
  private static List<Run> far(Course course) {
    List<Run> far = new ArrayList<>();
    if (!course.what().ofLaboratory()) {
      return far;
    }
    int first = course.spots().size() - OF_LATE;
    for (Run run : course.runs()) {
      boolean open = !course.spots().get(run.to()).batch().closed();
      if (run.rule() == RunRule.BEYOND_THREE && run.to() >= first && open) {
        far.add(0, run);
      }
    }
    return far;
  }

  /** The batches that the run takes in, as they were made. */
  public List<Spot> spots() {
    return course.spots().subList(run.from(), run.to() + 1);
  }

  /** The batch at which the run is told. */
  public Spot last() {
    return course.spots().get(run.to());
  }
}
