package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.List;
import java.util.stream.Stream;

/** The ingredients that a line carries, premixes opened. They are known even without figures. */
final class Carried {
  private Carried() {}

  static List<Ingredient> by(Line line) {
    return line.material()
        .opened(single -> List.of(single.ingredient()), premix -> in(premix).toList());
  }

  static List<Ingredient> with(Line line, Trait trait) {
    return line.material()
        .opened(
            single -> with(single.ingredient(), trait),
            premix -> in(premix).filter(one -> one.traits().contains(trait)).toList());
  }

  private static List<Ingredient> with(Ingredient one, Trait trait) {
    return one.traits().contains(trait) ? List.of(one) : List.of();
  }

  static Stream<Ingredient> in(Material material) {
    return material.opened(single -> Stream.of(single.ingredient()), Carried::in);
  }

  private static Stream<Ingredient> in(ResolvedPremix premix) {
    return premix.parts().stream().flatMap(part -> in(part.material()));
  }
}
