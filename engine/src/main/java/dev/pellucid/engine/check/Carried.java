package dev.pellucid.engine.check;

import dev.pellucid.engine.larder.Ingredient;
import dev.pellucid.engine.larder.Ingredient.Trait;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.List;
import java.util.stream.Stream;

/** The ingredients that a line carries, premixes opened. They are known even without figures. */
final class Carried {
  private Carried() {}

  static List<Ingredient> by(Line line) {
    return line.material() instanceof Material.Single single
        ? List.of(single.ingredient())
        : in(line.material()).toList();
  }

  static List<Ingredient> with(Line line, Trait trait) {
    return line.material() instanceof Material.Single single
        ? single.ingredient().traits().contains(trait) ? List.of(single.ingredient()) : List.of()
        : in(line.material()).filter(one -> one.traits().contains(trait)).toList();
  }

  static Stream<Ingredient> in(Material material) {
    if (material instanceof Material.Single single) {
      return Stream.of(single.ingredient());
    }
    ResolvedPremix premix = ((Material.Blended) material).premix();
    return premix.parts().stream().flatMap(part -> in(part.material()));
  }
}
