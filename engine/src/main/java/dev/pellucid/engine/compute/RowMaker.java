package dev.pellucid.engine.compute;

import dev.pellucid.engine.quantity.Dense;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a leaf keeps of each nutrient on its way. */
final class RowMaker {
  private final RetentionPath keeping;
  private final int classes;
  private final @Nullable Parts[] inTheMix;
  private final @Nullable Parts[] inTheCoat;
  private final Map<String, @Nullable Parts[]> inPremixes = new HashMap<>();

  RowMaker(RetentionPath keeping) {
    this.keeping = keeping;
    this.classes = keeping.classes();
    this.inTheMix = new @Nullable Parts[classes];
    this.inTheCoat = new @Nullable Parts[classes];
  }

  /** The parts kept: fresh for what is expected and for the richest, stored for the poorest. */
  private record Parts(double expected, double poorest, double richest) {}

  /** What each keeps, in their order. */
  List<Retained> kept(List<ExplodedLine> leaves) {
    List<Retained> kept = new ArrayList<>(leaves.size());
    for (ExplodedLine leaf : leaves) {
      kept.add(kept(leaf));
    }
    return kept;
  }

  private Retained kept(ExplodedLine leaf) {
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
    for (Composition.Derived derived : composition.derived()) {
      expected[derived.nutrient()] = derived.value(expected, expected);
      derivePair(derived, poorest, richest);
    }
    return new Retained(Dense.of(expected), Dense.of(poorest), Dense.of(richest), Dense.of(spread));
  }

  private static void derivePair(Composition.Derived d, double[] poorest, double[] richest) {
    double low = d.value(poorest, richest);
    double high = d.value(richest, poorest);
    poorest[d.nutrient()] = low;
    richest[d.nutrient()] = Math.max(low, high);
  }

  /** What all leaves on one way keep by class; most come through no premix. */
  private @Nullable Parts[] onTheWay(ExplodedLine leaf) {
    boolean heated = leaf.line().place() == Place.MIX;
    if (leaf.through().isEmpty()) {
      return heated ? inTheMix : inTheCoat;
    }
    StringBuilder way = new StringBuilder(heated ? "heated" : "");
    for (ResolvedPremix premix : leaf.through()) {
      way.append('>').append(premix.code());
    }
    return inPremixes.computeIfAbsent(way.toString(), any -> new @Nullable Parts[classes]);
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
    double lasting = keeping.throughStorage(stability);
    for (ResolvedPremix premix : leaf.through()) {
      lasting *= keeping.inPremix(stability, premix);
    }
    return new Parts(aimed, poor * lasting, rich);
  }
}
