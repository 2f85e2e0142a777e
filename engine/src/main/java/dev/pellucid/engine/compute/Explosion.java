package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A line opened down to its ingredients, through premixes in premixes. */
final class Explosion {
  private final Line line;
  private final Function<Ingredient, Composition> compositions;
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
  Explosion(Line line, Function<Ingredient, Composition> compositions, List<ExplodedLine> leaves) {
    this.line = line;
    this.compositions = compositions;
    this.leaves = leaves;
  }

  void open(Material material, double kg, double richest) {
    open(material, Way.of(material), kg, richest);
  }

  private void open(Material material, Way way, double kg, double richest) {
    material.single().ifPresent(single -> leaves.add(leaf(single, way, kg, richest)));
    List<ResolvedPremix.Part> parts = material.parts();
    double whole = 1 + parts.stream().mapToDouble(part -> part.onTop().part()).sum();
    for (ResolvedPremix.Part part : parts) {
      double share = part.share().part();
      double most = Math.max(share, (share + part.onTop().part()) / whole);
      Way down = way.into(part.material(), new ExplodedLine.Taken(share, most));
      open(part.material(), down, kg * share, richest * most);
    }
  }

  private ExplodedLine leaf(Material.Single single, Way way, double kg, double richest) {
    Composition composition = compositions.apply(single.ingredient());
    return new ExplodedLine(
        line, way.path(), single, composition, way.through(), way.taken(), kg, richest);
  }
}
