package dev.pellucid.engine.plan;

import dev.pellucid.engine.check.Verdict;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.resolve.Line.Place;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * One batch of a feed as the mill makes it: what to weigh, do, read and pack, in kg.
 *
 * @param house the name of the folder
 * @param fish species, size and habit in words, as far as they are told
 * @param sizeTold whether the recipe names the size of the batch; else it is 100 kg weighed
 * @param draftBecause why the feed is not to be made from this sheet; empty when it may be
 * @param inspection what to look at before anything is weighed
 * @param weighing mix and coat in the order of the recipe
 * @param mixCautions where the lines of the mix are weighed
 * @param tasks in the order of the work; the coat stands at its place
 */
public record BatchPlan(
    String house,
    String code,
    String title,
    String status,
    List<String> fish,
    Provenance provenance,
    boolean sizeTold,
    List<String> draftBecause,
    List<String> inspection,
    List<Weighed> weighing,
    List<Caution> mixCautions,
    List<Task> tasks,
    MassBalance balance,
    Optional<Packing> packing,
    Optional<Storing> storing,
    double moisture,
    List<Expectation> expected) {
  public BatchPlan {
    fish = List.copyOf(fish);
    draftBecause = List.copyOf(draftBecause);
    inspection = List.copyOf(inspection);
    weighing = List.copyOf(weighing);
    mixCautions = List.copyOf(mixCautions);
    tasks = List.copyOf(tasks);
    expected = List.copyOf(expected);
  }

  /** The plan of a batch of the size that the recipe names. */
  public static BatchPlan of(
      ComputedFeed feed, List<Verdict> verdicts, Larder larder, Provenance provenance) {
    return new BatchPlanner(feed, verdicts, larder, provenance).plan();
  }

  /** Whether the feed must not be made from this sheet. */
  public boolean draft() {
    return !draftBecause.isEmpty();
  }

  /** Lines of the mix from the large scale, dry. */
  public List<Weighed> dryLines() {
    return of(line -> line.place() == Place.MIX && !line.micro() && !line.liquid());
  }

  /** Lines of the mix that are weighed apart. */
  public List<Weighed> microLines() {
    return of(line -> line.place() == Place.MIX && line.micro());
  }

  /** Lines of the mix that go in last and slowly. */
  public List<Weighed> liquidLines() {
    return of(line -> line.place() == Place.MIX && !line.micro() && line.liquid());
  }

  /** Lines of the coat. */
  public List<Weighed> coatLines() {
    return of(line -> line.place() == Place.COAT);
  }

  /** Whether anything but the recipe shares is weighed. */
  public boolean hasOverage() {
    return weighing.stream().anyMatch(line -> line.stability() != 0 || line.handling() != 0);
  }

  private List<Weighed> of(Predicate<Weighed> kind) {
    return weighing.stream().filter(kind).toList();
  }

  /** Several lines together. */
  public static Weighed.Sum sum(List<Weighed> lines) {
    return new Weighed.Sum(
        lines.stream().mapToDouble(Weighed::share).sum(),
        lines.stream().mapToDouble(Weighed::target).sum(),
        lines.stream().mapToDouble(Weighed::extra).sum(),
        lines.stream().mapToDouble(Weighed::total).sum(),
        lines.stream().mapToDouble(Weighed::perKgKernel).sum());
  }
}
