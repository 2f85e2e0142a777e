package dev.pellucid.engine.records;

import dev.pellucid.engine.records.MaterialRequirements.Planned;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.Comparator;
import java.util.Map;

/** Planned batches in the order of their days; of one day premixes before what holds them. */
final class InTurn implements Comparator<Planned> {
  private static final int FEED = Integer.MAX_VALUE;

  private final Map<String, ResolvedPremix> premixes;

  InTurn(Map<String, ResolvedPremix> premixes) {
    this.premixes = premixes;
  }

  @Override
  public int compare(Planned one, Planned other) {
    return Comparator.comparing((Planned planned) -> planned.day())
        .thenComparing(this::depth)
        .thenComparing(planned -> planned.number())
        .compare(one, other);
  }

  private int depth(Planned planned) {
    ResolvedPremix premix = premixes.get(planned.order().code());
    return premix == null ? FEED : depth(premix);
  }

  /** How many premixes lie in each other below it. */
  private static int depth(ResolvedPremix premix) {
    int deepest = 0;
    for (ResolvedPremix.Part part : premix.parts()) {
      Material material = part.material();
      deepest = Math.max(deepest, material.premixed().map(it -> depth(it) + 1).orElse(0));
    }
    return deepest;
  }
}
