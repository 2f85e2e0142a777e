package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Digestibility.Coefficient;
import dev.pellucid.engine.data.Digestibility.ProcessKind;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Dense;
import dev.pellucid.engine.quantity.Sum;
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

/**
 * Works out one composition.
 *
 * <p>What is told directly counts; what is not follows from its formula, or from the nutrient it is
 * the digestible part of, when all that it needs is known. What is absent is bounded by the room
 * that the known parts of the same whole leave.
 */
final class CompositionMaker {
  private final Nutrients nutrients;
  private final Compositions.Ground ground;
  private final Ingredient ingredient;
  private final Optional<Species> species;
  private final Optional<ProcessKind> kind;
  private final double[] expected;
  private final double[] low;
  private final double[] high;
  private final double[] spread;
  private final List<List<Composition.Derived.Term>> net;
  private final BitSet unknown = new BitSet();
  private final BitSet unbounded = new BitSet();
  private final BitSet bounded = new BitSet();
  private final BitSet spreadAssumed = new BitSet();
  private final BitSet spreadUnknown = new BitSet();
  private final BitSet feedUntold = new BitSet();
  private final List<Composition.Derived> derived = new ArrayList<>();

  CompositionMaker(
      Compositions.Ground ground,
      Ingredient ingredient,
      Optional<Species> species,
      Optional<ProcessKind> kind) {
    this.ground = ground;
    this.nutrients = ground.nutrients();
    this.ingredient = ingredient;
    this.species = species;
    this.kind = kind;
    this.expected = new double[nutrients.count()];
    this.low = new double[nutrients.count()];
    this.high = new double[nutrients.count()];
    this.spread = new double[nutrients.count()];
    this.net = new ArrayList<>(Collections.nCopies(nutrients.count(), List.of()));
  }

  Composition made() {
    List<Integer> classes = new ArrayList<>();
    for (Nutrient nutrient : nutrients.inOrder()) {
      tell(nutrient);
      classes.add(stability(nutrient));
    }
    for (Nutrient nutrient : ground.derivedInOrder()) {
      derive(nutrient);
    }
    for (Nutrient nutrient : nutrients.inOrder()) {
      bound(nutrient);
    }
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
        .with(Untold.SPREAD_UNKNOWN, spreadUnknown)
        .with(Untold.FEED_UNTOLD, feedUntold);
  }

  /**
   * What is not told and no figure bounds. Where a bound says that there can be none, as of lysine
   * where there is no protein, nothing is missing.
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
    List<Composition.Decaying> decaying = new ArrayList<>();
    for (int i = 0; i < low.length; i++) {
      if (classes.get(i) != 0 && high[i] > 0) {
        decaying.add(new Composition.Decaying(i, classes.get(i)));
      }
    }
    return decaying;
  }

  private List<Composition.Derived> followingFrom(List<Composition.Decaying> decaying) {
    BitSet changing = new BitSet();
    for (Composition.Decaying one : decaying) {
      changing.set(one.nutrient());
    }
    List<Composition.Derived> following = new ArrayList<>();
    for (Composition.Derived one : derived) {
      if (hangsOn(one, changing)) {
        changing.set(one.nutrient());
        following.add(one);
      }
    }
    return following;
  }

  private static boolean hangsOn(Composition.Derived one, BitSet changing) {
    for (Composition.Derived.Term term : one.terms()) {
      if (changing.get(term.nutrient())) {
        return true;
      }
    }
    return false;
  }

  private int stability(Nutrient nutrient) {
    return ground
        .retentions()
        .indexOf(ingredient.stability().getOrDefault(nutrient.name(), nutrient.stability()));
  }

  private void tell(Nutrient nutrient) {
    int index = nutrient.index();
    Optional<Content> told = told(nutrient.name());
    if (told.isEmpty()) {
      unknown.set(index);
      feedUntold.set(index, species.isEmpty() && isToldForSome(nutrient.name()));
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
    OptionalDouble assumed = ground.practice().spread(nutrient.name());
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
    Optional<Ingredient.ContentBlock> block = ingredient.telling(nutrient, species);
    return block.isPresent()
        ? Optional.ofNullable(block.get().byNutrient().get(nutrient))
        : Optional.empty();
  }

  /** Whether a species that the recipe does not tell could have its own figure. */
  private boolean isToldForSome(String nutrient) {
    for (Ingredient.ContentBlock block : ingredient.contents()) {
      if (block.byNutrient().containsKey(nutrient)) {
        return true;
      }
    }
    return false;
  }

  private void derive(Nutrient nutrient) {
    if (!unknown.get(nutrient.index())) {
      return;
    }
    Optional<Terms> terms = Optional.empty();
    if (nutrient.formula().isPresent()) {
      terms = terms(nutrient.formula().get(), nutrient.index());
    }
    if (terms.isEmpty() && nutrient.digestibleOf().isPresent()) {
      terms = digestible(nutrient, nutrient.digestibleOf().get());
    }
    if (terms.isPresent()) {
      set(nutrient, terms.get());
    }
  }

  private record Terms(double constant, List<Composition.Derived.Term> list) {}

  private Optional<Terms> terms(Nutrient.Formula formula, int index) {
    List<Composition.Derived.Term> list = new ArrayList<>();
    for (Nutrient.Formula.Term term : formula.terms()) {
      Optional<Nutrient> of = nutrients.named(term.nutrient());
      if (of.isEmpty() || unknown.get(of.get().index())) {
        hangsAs(of, index);
        return Optional.empty();
      }
      list.add(new Composition.Derived.Term(term.factor(), of.get().index()));
    }
    return Optional.of(new Terms(formula.constant(), list));
  }

  /** What follows from something that hangs on the feed hangs on it too. */
  private void hangsAs(Optional<Nutrient> needed, int following) {
    if (needed.isPresent() && feedUntold.get(needed.get().index())) {
      feedUntold.set(following);
    }
  }

  private Optional<Terms> digestible(Nutrient part, String whole) {
    Optional<Nutrient> of = nutrients.named(whole);
    if (of.isEmpty() || unknown.get(of.get().index())) {
      hangsAs(of, part.index());
      return Optional.empty();
    }
    int index = of.get().index();
    Optional<Coefficient> told =
        ingredient.coefficient(part, species, kind.orElse(ProcessKind.MASH));
    // Of nothing, nothing is digested, whatever the coefficient.
    if (told.isEmpty() && high[index] != 0) {
      boolean feedTold = species.isPresent() && kind.isPresent();
      feedUntold.set(part.index(), !feedTold && ingredient.isDigestibleForSome(part));
      return Optional.empty();
    }
    double coefficient = told.isEmpty() ? 0 : told.get().part();
    return Optional.of(new Terms(0, List.of(new Composition.Derived.Term(coefficient, index))));
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
    for (Map.Entry<Integer, Double> one : factors.entrySet()) {
      if (one.getValue() != 0) {
        terms.add(new Composition.Derived.Term(one.getValue(), one.getKey()));
      }
    }
    return List.copyOf(terms);
  }

  /** A whole is bounded before its parts; what is part of the boundless is boundless too. */
  private void bound(Nutrient nutrient) {
    int index = nutrient.index();
    if (!unknown.get(index) || bounded.get(index) || nutrient.whereTold()) {
      return;
    }
    bounded.set(index);
    Optional<Nutrient> digested = named(nutrient.digestibleOf());
    if (digested.isPresent()) {
      boundByAllOf(digested.get(), index);
      return;
    }
    Optional<Nutrient> whole = named(nutrient.partOf());
    boolean boundless = !nutrient.ofTheWhole();
    double most = 1;
    if (whole.isPresent()) {
      bound(whole.get());
      boundless = unbounded.get(whole.get().index());
      most = high[whole.get().index()];
    }
    if (nutrient.unit().kind() != Kind.SHARE || boundless) {
      unbounded.set(index);
    } else {
      high[nutrient.index()] = Math.max(0, most - knownParts(nutrient));
    }
  }

  private Optional<Nutrient> named(Optional<String> name) {
    return name.isEmpty() ? Optional.empty() : nutrients.named(name.get());
  }

  /** No more is digested than there is. */
  private void boundByAllOf(Nutrient whole, int index) {
    bound(whole);
    high[index] = high[whole.index()];
    unbounded.set(index, unbounded.get(whole.index()));
  }

  private double knownParts(Nutrient nutrient) {
    Sum parts = new Sum();
    for (Nutrient other : nutrients.inOrder()) {
      boolean beside =
          nutrient.ofTheWhole()
              ? other.ofTheWhole()
              : !other.ofTheWhole() && other.partOf().equals(nutrient.partOf());
      boolean counts = other.unit().kind() == Kind.SHARE && other.formula().isEmpty();
      if (beside && counts && !unknown.get(other.index())) {
        parts.add(low[other.index()]);
      }
    }
    return parts.total();
  }
}
