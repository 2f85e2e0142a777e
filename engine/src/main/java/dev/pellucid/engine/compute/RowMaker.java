package dev.pellucid.engine.compute;

import dev.pellucid.engine.larder.Composition;
import dev.pellucid.engine.quantity.Dense;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A leaf to its row: what it keeps of each nutrient, times its mass. */
final class RowMaker {
  private final Keeping keeping;
  private final boolean stored;
  private final Map<Way, @Nullable Kept[]> known = new HashMap<>();

  RowMaker(Keeping keeping, boolean stored) {
    this.keeping = keeping;
    this.stored = stored;
  }

  /** A way through premixes and process, which every stability class takes differently. */
  private record Way(boolean heated, String premixes) {}

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
    @Nullable Kept[] onTheWay = onTheWay(leaf);
    for (int i = 0; i < count; i++) {
      int stability = composition.stability().get(i);
      Kept kept = stability == 0 ? ALL : kept(stability, leaf, onTheWay);
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
        times(expected, leaf.kg()),
        times(poorest, leaf.kg()),
        times(richest, leaf.richest()),
        times(spread, leaf.kg()));
  }

  /** The array, taken over and scaled in place. */
  private static Dense times(double[] figures, double factor) {
    for (int i = 0; i < figures.length; i++) {
      figures[i] *= factor;
    }
    return Dense.of(figures);
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

  private @Nullable Kept[] onTheWay(Leaf leaf) {
    StringBuilder premixes = new StringBuilder();
    leaf.through().forEach(premix -> premixes.append(premix.code()).append('>'));
    Way way = new Way(leaf.line().place() == Place.MIX, premixes.toString());
    return known.computeIfAbsent(way, w -> new @Nullable Kept[keeping.classes()]);
  }

  private Kept kept(int stability, Leaf leaf, @Nullable Kept[] onTheWay) {
    Kept kept = onTheWay[stability];
    if (kept == null) {
      kept = work(stability, leaf);
      onTheWay[stability] = kept;
    }
    return kept;
  }

  private Kept work(int stability, Leaf leaf) {
    boolean heated = leaf.line().place() == Place.MIX;
    double poor = keeping.throughProcess(stability, heated, true);
    double rich = keeping.throughProcess(stability, heated, false);
    double lasting = stored ? keeping.throughStorage(stability) : 1;
    for (ResolvedPremix premix : leaf.through()) {
      lasting *= keeping.inPremix(stability, premix);
    }
    return new Kept(rich, poor * lasting, rich);
  }
}
