package dev.pellucid.engine.compute;

import dev.pellucid.engine.larder.Composition;
import dev.pellucid.engine.quantity.Dense;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.HashMap;
import java.util.Map;

/** A leaf to its row: what it keeps of each nutrient, times its mass. */
final class RowMaker {
  private final Keeping keeping;
  private final boolean stored;
  private final Map<Way, Kept> known = new HashMap<>();

  RowMaker(Keeping keeping, boolean stored) {
    this.keeping = keeping;
    this.stored = stored;
  }

  /** The way of a stability class through the process. */
  private record Way(int stability, boolean heated, String premixes) {}

  /** The parts kept: fresh for what is expected and richest, stored for the poorest. */
  private record Kept(double expected, double poorest, double richest) {}

  private static final Kept ALL = new Kept(1, 1, 1);

  Row row(Leaf leaf) {
    Composition composition = leaf.composition();
    int count = composition.low().count();
    double[] expected = new double[count];
    double[] poorest = new double[count];
    double[] richest = new double[count];
    double[] spread = new double[count];
    for (int i = 0; i < count; i++) {
      int stability = composition.stability().get(i);
      Kept kept = stability == 0 ? ALL : kept(stability, leaf);
      expected[i] = composition.low().at(i) * kept.expected();
      poorest[i] = composition.low().at(i) * kept.poorest();
      richest[i] = composition.high().at(i) * kept.richest();
      spread[i] = composition.spread().at(i) * kept.expected();
    }
    composition.derived().forEach(d -> expected[d.nutrient()] = value(d, expected, expected));
    composition.derived().forEach(d -> derivePair(d, poorest, richest));
    return new Row(
        leaf.line(),
        leaf.path(),
        leaf.material().ingredient(),
        composition,
        leaf.material().price(),
        leaf.kg(),
        leaf.richest(),
        Dense.of(expected).times(leaf.kg()),
        Dense.of(poorest).times(leaf.kg()),
        Dense.of(richest).times(leaf.richest()),
        Dense.of(spread).times(leaf.kg()));
  }

  private static void derivePair(Composition.Derived d, double[] poorest, double[] richest) {
    double low = value(d, poorest, richest);
    double high = value(d, richest, poorest);
    poorest[d.nutrient()] = low;
    richest[d.nutrient()] = Math.max(low, high);
  }

  private static double value(Composition.Derived d, double[] adding, double[] taking) {
    double value = d.constant();
    for (Composition.Derived.Term term : d.terms()) {
      double[] from = term.factor() >= 0 ? adding : taking;
      value += term.factor() * from[term.nutrient()];
    }
    return Math.max(0, value);
  }

  private Kept kept(int stability, Leaf leaf) {
    boolean heated = leaf.line().place() == Place.MIX;
    StringBuilder premixes = new StringBuilder();
    leaf.through().forEach(premix -> premixes.append(premix.code()).append('>'));
    Way way = new Way(stability, heated, premixes.toString());
    return known.computeIfAbsent(way, w -> work(w, leaf));
  }

  private Kept work(Way way, Leaf leaf) {
    double poor = keeping.throughProcess(way.stability(), way.heated(), true);
    double rich = keeping.throughProcess(way.stability(), way.heated(), false);
    double lasting = stored ? keeping.throughStorage(way.stability()) : 1;
    for (ResolvedPremix premix : leaf.through()) {
      lasting *= keeping.inPremix(way.stability(), premix);
    }
    return new Kept(rich, poor * lasting, rich);
  }
}
