package dev.pellucid.engine.compute;

import dev.pellucid.engine.quantity.Dense;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a leaf keeps of each nutrient on its way. */
final class RowMaker {
  private final RetentionPath keeping;
  private final boolean stored;
  private final Map<Way, @Nullable Parts[]> known = new HashMap<>();

  RowMaker(RetentionPath keeping, boolean stored) {
    this.keeping = keeping;
    this.stored = stored;
  }

  /** A way through premixes and process, which every stability class takes differently. */
  private record Way(boolean heated, String premixes) {}

  /** The parts kept: fresh for what is expected and for the richest, stored for the poorest. */
  private record Parts(double expected, double poorest, double richest) {}

  Retained kept(ExplodedLine leaf) {
    Composition composition = leaf.composition();
    return composition.decaying().isEmpty() ? Retained.all(composition) : kept(composition, leaf);
  }

  private Retained kept(Composition composition, ExplodedLine leaf) {
    double[] expected = composition.expected().toArray();
    double[] poorest = composition.low().toArray();
    double[] richest = composition.high().toArray();
    double[] spread = composition.spread().toArray();
    @Nullable Parts[] onTheWay = onTheWay(leaf);
    for (Composition.Decaying decaying : composition.decaying()) {
      Parts parts = parts(decaying.stability(), leaf, onTheWay);
      int i = decaying.nutrient();
      expected[i] *= parts.expected();
      poorest[i] *= parts.poorest();
      richest[i] *= parts.richest();
      spread[i] *= parts.expected();
    }
    composition.derived().forEach(d -> expected[d.nutrient()] = d.value(expected, expected));
    composition.derived().forEach(d -> derivePair(d, poorest, richest));
    return new Retained(Dense.of(expected), Dense.of(poorest), Dense.of(richest), Dense.of(spread));
  }

  private static void derivePair(Composition.Derived d, double[] poorest, double[] richest) {
    double low = d.value(poorest, richest);
    double high = d.value(richest, poorest);
    poorest[d.nutrient()] = low;
    richest[d.nutrient()] = Math.max(low, high);
  }

  private @Nullable Parts[] onTheWay(ExplodedLine leaf) {
    Way way = new Way(leaf.line().place() == Place.MIX, premixes(leaf));
    return known.computeIfAbsent(way, w -> new @Nullable Parts[keeping.classes()]);
  }

  private static String premixes(ExplodedLine leaf) {
    if (leaf.through().isEmpty()) {
      return "";
    }
    return leaf.through().stream().map(ResolvedPremix::code).collect(Collectors.joining(">"));
  }

  private Parts parts(int stability, ExplodedLine leaf, @Nullable Parts[] onTheWay) {
    Parts parts = onTheWay[stability];
    if (parts == null) {
      parts = work(stability, leaf);
      onTheWay[stability] = parts;
    }
    return parts;
  }

  private Parts work(int stability, ExplodedLine leaf) {
    boolean heated = leaf.line().place() == Place.MIX;
    double aimed = keeping.throughProcess(stability, heated, Scenario.EXPECTED);
    double poor = keeping.throughProcess(stability, heated, Scenario.POOREST);
    double rich = keeping.throughProcess(stability, heated, Scenario.RICHEST);
    double lasting = stored ? keeping.throughStorage(stability) : 1;
    for (ResolvedPremix premix : leaf.through()) {
      lasting *= keeping.inPremix(stability, premix);
    }
    return new Parts(aimed, poor * lasting, rich);
  }
}
