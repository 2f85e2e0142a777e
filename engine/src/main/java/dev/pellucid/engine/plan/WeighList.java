package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.weighing.SmallLines;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The lines of a recipe for a batch, and which of them are weighed apart.
 *
 * <p>Small lines are rounded each by itself on the finer grid; as one sum for mix and one for coat
 * they count on the coarser one, and the large lines share what is left of the batch. So the
 * weights shown come to the batch exactly.
 */
final class WeighList {
  private static final int PER_KG_GRAMS = 5;

  private final ComputedFeed feed;
  private final double batchKg;
  private final Optional<OnScales> scales;
  private final double times;
  private final List<Line> large;
  private final List<Line> small;
  private final Grid grid;
  private final Mass batch;
  private final List<Weighed> lines;

  /** A line without its target. */
  private record Extra(Mass stability, Mass handling) {}

  /**
   * The lines of a batch.
   *
   * @param scales how the plant weighs it, for overage per weighing; absent: each line once
   */
  WeighList(ComputedFeed feed, double batchKg, Optional<OnScales> scales) {
    this.feed = feed;
    this.batchKg = batchKg;
    this.scales = scales;
    this.times = batchKg / 100;
    List<Line> apart = feed.recipe().taken().stream().filter(this::micro).toList();
    boolean allApart = apart.size() == feed.recipe().taken().size();
    this.small = allApart ? List.of() : apart;
    this.large = feed.recipe().taken().stream().filter(line -> !small.contains(line)).toList();
    Grid whole = Grid.of(batchKg, least(apart));
    this.grid = allApart ? new Grid(whole.small(), whole.small()) : whole;
    this.batch = Mass.of(batchKg, grid.kg());
    this.lines = weighed();
  }

  List<Weighed> lines() {
    return lines;
  }

  /** Decimals of a kg for large lines and for masses of the whole batch. */
  int decimals() {
    return grid.kg();
  }

  Mass batch() {
    return batch;
  }

  /** What is to be in the feed from one place. */
  Mass inFeed(Place place) {
    return together(lines.stream().filter(line -> line.place() == place), Weighed::target)
        .plus(together(lines.stream().filter(line -> line.place() == place), Weighed::stability));
  }

  Mass handling() {
    return together(lines.stream(), Weighed::handling);
  }

  private double least(List<Line> apart) {
    return apart.stream()
        .mapToDouble(this::exact)
        .filter(kg -> kg > 0)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private List<Weighed> weighed() {
    List<Weighed> light =
        small.stream()
            .map(line -> weighed(line, target(line, grid.small()), extra(line, grid.small())))
            .toList();
    List<Extra> extras =
        giving(
            large.stream().map(line -> extra(line, grid.kg())).toList(),
            together(light.stream(), Weighed::stability));
    Mass left =
        batch
            .minus(Mass.sum(extras.stream().map(Extra::stability), grid.kg()))
            .minus(together(light.stream(), Weighed::stability))
            .minus(together(light.stream(), Weighed::target));
    List<Mass> targets = SharedOut.masses(large.stream().map(this::exact).toList(), left);
    List<Weighed> heavy =
        IntStream.range(0, large.size())
            .mapToObj(i -> weighed(large.get(i), targets.get(i), extras.get(i)))
            .toList();
    Iterator<Weighed> lights = light.iterator();
    Iterator<Weighed> heavies = heavy.iterator();
    return feed.recipe().taken().stream()
        .map(line -> small.contains(line) ? lights.next() : heavies.next())
        .toList();
  }

  /** The {@code rest} gives way to the stability overage of all others, to the last step. */
  private List<Extra> giving(List<Extra> extras, Mass ofSmall) {
    Mass over = Mass.sum(extras.stream().map(Extra::stability), grid.kg()).plus(ofSmall);
    return IntStream.range(0, large.size())
        .mapToObj(
            i ->
                large.get(i).rest()
                    ? new Extra(extras.get(i).stability().minus(over), extras.get(i).handling())
                    : extras.get(i))
        .toList();
  }

  private double exact(Line line) {
    return line.designed().kgPer100() * times;
  }

  private Mass target(Line line, int decimals) {
    return Mass.of(exact(line), decimals);
  }

  private Extra extra(Line line, int decimals) {
    return new Extra(
        Mass.of(line.share().minus(line.designed()).kgPer100() * times, decimals),
        Mass.of(onTop(line), decimals));
  }

  private double onTop(Line line) {
    return line.onTopKg(batchKg, scales.map(plan -> plan.weighings(line.place())).orElse(1));
  }

  /** Lines added up as shown; the small ones of each place read as one on the coarser grid. */
  private Mass together(Stream<Weighed> lines, Function<Weighed, Mass> of) {
    List<Mass> large = new ArrayList<>();
    Map<Place, Mass> small = new HashMap<>();
    lines.forEach(
        line -> {
          if (line.micro()) {
            small.merge(line.place(), of.apply(line), Mass::plus);
          } else {
            large.add(of.apply(line));
          }
        });
    small.values().forEach(sum -> large.add(sum.at(grid.kg())));
    return Mass.sum(large.stream(), grid.kg());
  }

  private Weighed weighed(Line line, Mass target, Extra extra) {
    double weighed = line.share().kgPer100() + onTop(line) / times;
    boolean coat = line.place() == Place.COAT;
    double perKg = coat ? weighed / feed.balances().expected().kernel() : 0;
    boolean micro = micro(line);
    return new Weighed(
        line.place(),
        line.material().name(),
        title(line.material()),
        line.designed().kgPer100(),
        target,
        extra.stability(),
        extra.handling(),
        micro,
        line.material().isLiquid(),
        lot(line.material()),
        Mass.of(perKg, micro ? PER_KG_GRAMS + 1 : PER_KG_GRAMS));
  }

  static String title(Material material) {
    return material.premixed().isPresent() && !material.title().equals(material.name())
        ? material.title() + " (" + material.name() + ")"
        : material.title();
  }

  private boolean micro(Line line) {
    return SmallLines.has(feed, line);
  }

  /** The lot that the material is of, where it is of one. */
  static String lot(Material material) {
    return material.opened(single -> single.ingredient().lot(), premix -> "");
  }
}
