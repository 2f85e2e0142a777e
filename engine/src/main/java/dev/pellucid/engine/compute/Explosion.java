package dev.pellucid.engine.compute;

import dev.pellucid.engine.quantity.Sum;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A line opened down to its ingredients, through premixes in premixes. */
final class Explosion {
  private final Line line;
  private final Compositions.Fed compositions;
  private final List<ExplodedLine> leaves;

  /** What was opened on the way down. */
  private record Way(
      List<String> path, List<ResolvedPremix> through, List<ExplodedLine.Taken> taken) {
    static Way of(Material material) {
      return new Way(List.of(material.name()), through(List.of(), material), List.of());
    }

    Way into(Material material, ExplodedLine.Taken part) {
      return new Way(plus(path, material.name()), through(through, material), plus(taken, part));
    }

    private static List<ResolvedPremix> through(List<ResolvedPremix> before, Material material) {
      return material.opened(single -> before, premix -> plus(before, premix));
    }

    private static <T> List<T> plus(List<T> list, T more) {
      List<T> longer = new ArrayList<>(list);
      longer.add(more);
      return List.copyOf(longer);
    }
  }

  /**
   * @param leaves takes what is found
   */
  Explosion(Line line, Compositions.Fed compositions, List<ExplodedLine> leaves) {
    this.line = line;
    this.compositions = compositions;
    this.leaves = leaves;
  }

  void open(Material material, double kg, double richest) {
    open(material, Way.of(material), kg, richest);
  }

  private void open(Material material, Way way, double kg, double richest) {
    Optional<Material.Single> single = material.single();
    if (single.isPresent()) {
      leaves.add(leaf(single.get(), way, kg, richest));
      return;
    }
    List<ResolvedPremix.Part> parts = material.parts();
    Sum onTop = new Sum();
    for (ResolvedPremix.Part part : parts) {
      onTop.add(part.onTop().part());
    }
    for (ResolvedPremix.Part part : parts) {
      double share = part.share().part();
      double most = Math.max(share, (share + part.onTop().part()) / (1 + onTop.total()));
      Way down = way.into(part.material(), new ExplodedLine.Taken(share, most));
      open(part.material(), down, kg * share, richest * most);
    }
  }

  private ExplodedLine leaf(Material.Single single, Way way, double kg, double richest) {
    Composition composition = compositions.of(single.ingredient());
    return new ExplodedLine(
        line, way.path(), single, composition, way.through(), way.taken(), kg, richest);
  }
}
