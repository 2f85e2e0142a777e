package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Digestibility.ProcessKind;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Dense;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Kind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * The {@link Composition} of each ingredient, worked out once for each species and kind of process
 * and then shared.
 *
 * <p>What is told directly counts; what is not follows from its formula, or from the nutrient it is
 * the digestible part of, when all that it needs is known. What is absent is bounded by the room
 * that the known parts of the same whole leave.
 */
final class Compositions {
  private final Nutrients nutrients;
  private final Practice practice;
  private final Retentions retentions;
  private final List<Nutrient> derivedInOrder;
  private final Map<Made, Fed> made = new ConcurrentHashMap<>();

  private record Made(String species, ProcessKind kind) {}

  Compositions(Nutrients nutrients, Practice practice, Retentions retentions) {
    this.nutrients = nutrients;
    this.practice = practice;
    this.retentions = retentions;
    this.derivedInOrder = inOrder(nutrients);
  }

  /** Those of a feed for one species and of one kind of process. */
  Fed fed(Optional<Species> species, ProcessKind kind) {
    Made key = new Made(species.map(Species::name).orElse(""), kind);
    Fed known = made.get(key);
    if (known == null) {
      known = new Fed(species, kind);
      made.put(key, known);
    }
    return known;
  }

  /** The compositions for one species and one kind of process. */
  final class Fed {
    private final Optional<Species> species;
    private final ProcessKind kind;
    private final Map<String, Composition> byLot = new ConcurrentHashMap<>();

    private Fed(Optional<Species> species, ProcessKind kind) {
      this.species = species;
      this.kind = kind;
    }

    Composition of(Ingredient ingredient) {
      String lot = ingredient.lot();
      String key = lot.isEmpty() ? ingredient.name() : ingredient.name() + '\n' + lot;
      Composition known = byLot.get(key);
      if (known == null) {
        known = new Work(ingredient, species, kind).done();
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
      nutrients.named(needed).ifPresent(one -> visit(one, nutrients, seen, order));
    }
    if (!needs(nutrient).isEmpty()) {
      order.add(nutrient);
    }
  }

  private static List<String> needs(Nutrient nutrient) {
    List<String> needs = new ArrayList<>();
    nutrient.formula().ifPresent(f -> f.terms().forEach(term -> needs.add(term.nutrient())));
    nutrient.digestibleOf().ifPresent(needs::add);
    return needs;
  }

  /** The making of one composition. */
  private final class Work {
    private final Ingredient ingredient;
    private final Optional<Species> species;
    private final ProcessKind kind;
    private final double[] expected = new double[nutrients.count()];
    private final double[] low = new double[nutrients.count()];
    private final double[] high = new double[nutrients.count()];
    private final double[] spread = new double[nutrients.count()];
    private final List<List<Composition.Derived.Term>> net =
        new ArrayList<>(Collections.nCopies(nutrients.count(), List.of()));
    private final BitSet unknown = new BitSet();
    private final BitSet unbounded = new BitSet();
    private final BitSet bounded = new BitSet();
    private final BitSet spreadAssumed = new BitSet();
    private final BitSet spreadUnknown = new BitSet();
    private final List<Composition.Derived> derived = new ArrayList<>();

    Work(Ingredient ingredient, Optional<Species> species, ProcessKind kind) {
      this.ingredient = ingredient;
      this.species = species;
      this.kind = kind;
    }

    Composition done() {
      nutrients.inOrder().forEach(this::tell);
      derivedInOrder.forEach(this::derive);
      nutrients.inOrder().forEach(this::bound);
      List<Integer> classes = nutrients.inOrder().stream().map(this::stability).toList();
      List<Composition.Decaying> decaying = decaying(classes);
      return new Composition(
          Dense.of(expected),
          Dense.of(low),
          Dense.of(high),
          Dense.of(spread),
          net,
          untold(),
          classes,
          decaying,
          followingFrom(decaying));
    }

    private Untold untold() {
      return new Untold(nutrients.count())
          .with(Untold.UNKNOWN, unknown)
          .with(Untold.UNBOUNDED, unbounded)
          .with(Untold.MAYBE_MORE, apart(expected, high, unseen()))
          .with(Untold.MAYBE_LESS, apart(low, expected, new BitSet()))
          .with(Untold.SPREAD_ASSUMED, spreadAssumed)
          .with(Untold.SPREAD_UNKNOWN, spreadUnknown);
    }

    /**
     * What is not told and no figure bounds. Where a bound says that there can be none, as of
     * lysine where there is no protein, nothing is missing.
     */
    private BitSet unseen() {
      BitSet unseen = (BitSet) unbounded.clone();
      for (Nutrient nutrient : nutrients.inOrder()) {
        if (nutrient.whereTold() && unknown.get(nutrient.index())) {
          unseen.set(nutrient.index());
        }
      }
      return unseen;
    }

    /** Where the upper figure lies above the lower one, and more. */
    private static BitSet apart(double[] lower, double[] upper, BitSet more) {
      BitSet apart = (BitSet) more.clone();
      for (int i = 0; i < lower.length; i++) {
        if (Closeness.isAbove(upper[i], lower[i])) {
          apart.set(i);
        }
      }
      return apart;
    }

    private List<Composition.Decaying> decaying(List<Integer> classes) {
      return IntStream.range(0, low.length)
          .filter(i -> classes.get(i) != 0 && high[i] > 0)
          .mapToObj(i -> new Composition.Decaying(i, classes.get(i)))
          .toList();
    }

    private List<Composition.Derived> followingFrom(List<Composition.Decaying> decaying) {
      BitSet changing = new BitSet();
      decaying.forEach(one -> changing.set(one.nutrient()));
      List<Composition.Derived> following = new ArrayList<>();
      for (Composition.Derived one : derived) {
        if (one.terms().stream().anyMatch(term -> changing.get(term.nutrient()))) {
          changing.set(one.nutrient());
          following.add(one);
        }
      }
      return following;
    }

    private int stability(Nutrient nutrient) {
      return retentions.indexOf(
          ingredient.stability().getOrDefault(nutrient.name(), nutrient.stability()));
    }

    private void tell(Nutrient nutrient) {
      int index = nutrient.index();
      Optional<Content> told = told(nutrient.name());
      if (told.isEmpty()) {
        unknown.set(index);
        return;
      }
      expected[index] = told.get().low();
      low[index] = told.get().low();
      high[index] = told.get().high();
      net.set(index, List.of(new Composition.Derived.Term(1, index)));
      spread(nutrient, told.get());
    }

    private void spread(Nutrient nutrient, Content told) {
      int index = nutrient.index();
      OptionalDouble assumed = practice.spread(nutrient.name());
      if (told.spread().isPresent()) {
        spread[index] = told.spread().getAsDouble();
      } else if (assumed.isPresent()) {
        spread[index] = told.high() * assumed.getAsDouble();
        spreadAssumed.set(index);
      } else if (told.high() > 0) {
        spreadUnknown.set(index);
      }
    }

    private Optional<Content> told(String nutrient) {
      Optional<Content> general = Optional.empty();
      for (Ingredient.ContentBlock block : ingredient.contents()) {
        Content content = block.byNutrient().get(nutrient);
        if (content == null) {
          continue;
        }
        if (block.species().isEmpty()) {
          general = Optional.of(content);
        } else if (species.filter(one -> one.is(block.species().get())).isPresent()) {
          return Optional.of(content);
        }
      }
      return general;
    }

    private void derive(Nutrient nutrient) {
      if (!unknown.get(nutrient.index())) {
        return;
      }
      nutrient.formula().flatMap(this::terms).ifPresent(terms -> set(nutrient, terms));
      nutrient.digestibleOf().flatMap(this::digestible).ifPresent(terms -> set(nutrient, terms));
    }

    private record Terms(double constant, List<Composition.Derived.Term> list) {}

    private Optional<Terms> terms(Nutrient.Formula formula) {
      List<Composition.Derived.Term> list = new ArrayList<>();
      for (Nutrient.Formula.Term term : formula.terms()) {
        Optional<Nutrient> of = nutrients.named(term.nutrient());
        if (of.isEmpty() || unknown.get(of.get().index())) {
          return Optional.empty();
        }
        list.add(new Composition.Derived.Term(term.factor(), of.get().index()));
      }
      return Optional.of(new Terms(formula.constant(), list));
    }

    private Optional<Terms> digestible(String whole) {
      Optional<Nutrient> of = nutrients.named(whole).filter(n -> !unknown.get(n.index()));
      if (of.isEmpty()) {
        return Optional.empty();
      }
      // Of nothing, nothing is digested, whatever the coefficient.
      Optional<Double> ofNothing =
          high[of.get().index()] == 0 ? Optional.of(0.0) : Optional.empty();
      return ingredient
          .digestible(whole, species, kind)
          .map(d -> d.coefficients().getOrDefault(whole, 0.0))
          .or(() -> ofNothing)
          .map(
              coefficient ->
                  new Terms(
                      0, List.of(new Composition.Derived.Term(coefficient, of.get().index()))));
    }

    private void set(Nutrient nutrient, Terms terms) {
      int index = nutrient.index();
      Composition.Derived of = new Composition.Derived(index, terms.constant(), terms.list());
      double least = of.value(low, high);
      high[index] = Math.max(least, of.value(high, low));
      low[index] = least;
      expected[index] = of.value(expected, expected);
      net.set(index, net(of));
      for (Composition.Derived.Term term : net.get(index)) {
        spreadAssumed.set(index, spreadAssumed.get(index) || spreadAssumed.get(term.nutrient()));
        spreadUnknown.set(index, spreadUnknown.get(index) || spreadUnknown.get(term.nutrient()));
      }
      unknown.clear(index);
      derived.add(of);
    }

    /**
     * By how much it moves with each content that is told, whichever way it hangs on it; a figure
     * that is held at zero does not move.
     */
    private List<Composition.Derived.Term> net(Composition.Derived of) {
      if (of.sum(expected, expected) < -Closeness.PART) {
        return List.of();
      }
      SortedMap<Integer, Double> factors = new TreeMap<>();
      for (Composition.Derived.Term term : of.terms()) {
        for (Composition.Derived.Term told : net.get(term.nutrient())) {
          factors.merge(told.nutrient(), term.factor() * told.factor(), Double::sum);
        }
      }
      List<Composition.Derived.Term> terms = new ArrayList<>();
      factors.forEach(
          (content, factor) -> {
            if (factor != 0) {
              terms.add(new Composition.Derived.Term(factor, content));
            }
          });
      return List.copyOf(terms);
    }

    /** A whole is bounded before its parts; what is part of the boundless is boundless too. */
    private void bound(Nutrient nutrient) {
      int index = nutrient.index();
      if (!unknown.get(index) || bounded.get(index) || nutrient.whereTold()) {
        return;
      }
      bounded.set(index);
      Optional<Nutrient> digested = nutrient.digestibleOf().flatMap(nutrients::named);
      if (digested.isPresent()) {
        boundByAllOf(digested.get(), index);
        return;
      }
      Optional<Nutrient> whole = nutrient.partOf().flatMap(nutrients::named);
      whole.ifPresent(this::bound);
      boolean boundless = whole.map(w -> unbounded.get(w.index())).orElse(!nutrient.ofTheWhole());
      if (nutrient.unit().kind() != Kind.SHARE || boundless) {
        unbounded.set(index);
      } else {
        double room = whole.map(w -> high[w.index()]).orElse(1.0);
        high[nutrient.index()] = Math.max(0, room - knownParts(nutrient));
      }
    }

    /** No more is digested than there is. */
    private void boundByAllOf(Nutrient whole, int index) {
      bound(whole);
      high[index] = high[whole.index()];
      unbounded.set(index, unbounded.get(whole.index()));
    }

    private double knownParts(Nutrient nutrient) {
      return nutrients.inOrder().stream()
          .filter(other -> !unknown.get(other.index()))
          .filter(
              other ->
                  nutrient.ofTheWhole()
                      ? other.ofTheWhole()
                      : !other.ofTheWhole() && other.partOf().equals(nutrient.partOf()))
          .filter(other -> other.unit().kind() == Kind.SHARE && other.formula().isEmpty())
          .mapToDouble(other -> low[other.index()])
          .sum();
    }
  }
}
