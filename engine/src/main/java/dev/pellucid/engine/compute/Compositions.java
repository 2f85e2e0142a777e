package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Digestibility.ProcessKind;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Species;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The {@link Composition} of each ingredient, worked out once for each species and kind of process
 * and then shared.
 */
final class Compositions {
  private final Ground ground;
  private final Map<String, Fed> fed = new ConcurrentHashMap<>();

  /**
   * What the compositions of a folder are worked out from.
   *
   * @param derivedInOrder nutrients that follow from others, each after those it follows from
   */
  record Ground(
      Nutrients nutrients,
      Practice practice,
      Retentions retentions,
      List<Nutrient> derivedInOrder) {}

  Compositions(Nutrients nutrients, Practice practice, Retentions retentions) {
    this.ground = new Ground(nutrients, practice, retentions, inOrder(nutrients));
  }

  /**
   * Those of a feed for one species and of one kind of process.
   *
   * @param species empty where the recipe tells none
   * @param kind empty where the recipe tells no process
   */
  Fed fed(Optional<Species> species, Optional<ProcessKind> kind) {
    String key =
        (kind.isPresent() ? kind.get().name() : "")
            + ' '
            + (species.isPresent() ? species.get().name() : "");
    Fed known = fed.get(key);
    if (known == null) {
      known = new Fed(species, kind);
      fed.put(key, known);
    }
    return known;
  }

  /** The compositions for one species and one kind of process. */
  final class Fed {
    private final Optional<Species> species;
    private final Optional<ProcessKind> kind;
    private final Map<String, Composition> byLot = new ConcurrentHashMap<>();

    private Fed(Optional<Species> species, Optional<ProcessKind> kind) {
      this.species = species;
      this.kind = kind;
    }

    Composition of(Ingredient ingredient) {
      String lot = ingredient.lot();
      String key = lot.isEmpty() ? ingredient.name() : ingredient.name() + '\n' + lot;
      Composition known = byLot.get(key);
      if (known == null) {
        known = new CompositionMaker(ground, ingredient, species, kind).made();
        byLot.put(key, known);
      }
      return known;
    }
  }

  /** Those that follow from others, each after those it follows from. */
  private static List<Nutrient> inOrder(Nutrients nutrients) {
    List<Nutrient> order = new ArrayList<>();
    BitSet seen = new BitSet();
    for (Nutrient nutrient : nutrients.inOrder()) {
      visit(nutrient, nutrients, seen, order);
    }
    return order;
  }

  private static void visit(
      Nutrient nutrient, Nutrients nutrients, BitSet seen, List<Nutrient> order) {
    if (seen.get(nutrient.index())) {
      return;
    }
    seen.set(nutrient.index());
    for (String needed : needs(nutrient)) {
      Optional<Nutrient> one = nutrients.named(needed);
      if (one.isPresent()) {
        visit(one.get(), nutrients, seen, order);
      }
    }
    if (!needs(nutrient).isEmpty()) {
      order.add(nutrient);
    }
  }

  private static List<String> needs(Nutrient nutrient) {
    List<String> needs = new ArrayList<>();
    if (nutrient.formula().isPresent()) {
      for (Nutrient.Formula.Term term : nutrient.formula().get().terms()) {
        needs.add(term.nutrient());
      }
    }
    if (nutrient.digestibleOf().isPresent()) {
      needs.add(nutrient.digestibleOf().get());
    }
    return needs;
  }
}
