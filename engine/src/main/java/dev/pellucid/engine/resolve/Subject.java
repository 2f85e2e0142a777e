package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.measure.Kind;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a limit is about. */
public sealed interface Subject {
  /** As one writes it: {@code lysine : crude-protein}. */
  String text();

  /** Applies the one of these that is for its kind. */
  <R> R byKind(
      Function<Nutrients, R> sum,
      Function<Ratio, R> ratio,
      Function<Inclusion, R> inclusion,
      Function<Cost, R> cost);

  /** For people: {@code Lysine : Crude protein}. */
  default String title() {
    return byKind(
        sum -> sum.nutrients().stream().map(Nutrient::title).collect(Collectors.joining(" + ")),
        ratio -> ratio.over().title() + " : " + ratio.under().title(),
        Inclusion::text,
        Cost::text);
  }

  /** Of which kind its figure is. */
  default Kind figure() {
    return byKind(
        sum -> sum.nutrients().get(0).unit().kind(),
        ratio -> ratio.kind() == RatioKind.PLAIN ? Kind.SHARE : Kind.SHARE_PER_ENERGY,
        inclusion -> Kind.SHARE,
        cost -> Kind.PRICE);
  }

  /** Whether it is one sum over another, so that what is not told can move it either way. */
  default boolean isRatio() {
    return byKind(sum -> false, ratio -> true, inclusion -> false, cost -> false);
  }

  /** The nutrients of which more raises it. */
  default List<Nutrient> raisedBy() {
    return byKind(
        Nutrients::nutrients,
        ratio -> ratio.over().nutrients(),
        inclusion -> List.of(),
        cost -> List.of());
  }

  /** The nutrients of which more lowers it. */
  default List<Nutrient> loweredBy() {
    return byKind(
        sum -> List.of(),
        ratio -> ratio.under().nutrients(),
        inclusion -> List.of(),
        cost -> List.of());
  }

  /** All that it is read off: what raises it, then what lowers it. */
  default List<Nutrient> nutrients() {
    return Stream.concat(raisedBy().stream(), loweredBy().stream()).toList();
  }

  /** The nutrients that add up to it; none where it is no sum of nutrients. */
  default List<Nutrient> addends() {
    return isRatio() ? List.of() : raisedBy();
  }

  /** One nutrient or the sum of several, all of one kind of unit. */
  record Nutrients(List<Nutrient> nutrients, String text) implements Subject {
    public Nutrients {
      nutrients = List.copyOf(nutrients);
    }

    @Override
    public <R> R byKind(
        Function<Nutrients, R> sum,
        Function<Ratio, R> ratio,
        Function<Inclusion, R> inclusion,
        Function<Cost, R> cost) {
      return sum.apply(this);
    }
  }

  /**
   * One sum over another, in the base of {@link #kind}: a plain quotient, or g/MJ for a mass over
   * an energy.
   */
  record Ratio(Nutrients over, Nutrients under, RatioKind kind, String text) implements Subject {
    @Override
    public <R> R byKind(
        Function<Nutrients, R> sum,
        Function<Ratio, R> ratio,
        Function<Inclusion, R> inclusion,
        Function<Cost, R> cost) {
      return ratio.apply(this);
    }
  }

  /** What a quotient of two sums is. */
  enum RatioKind {
    /** A quotient of like kinds. */
    PLAIN,
    /** A mass over an energy, in g/MJ. */
    PER_ENERGY
  }

  /**
   * The share of ingredients or groups, premixes opened.
   *
   * @param names of ingredients, groups or codes
   */
  record Inclusion(List<String> names, String text) implements Subject {
    public Inclusion {
      names = List.copyOf(names);
    }

    @Override
    public <R> R byKind(
        Function<Nutrients, R> sum,
        Function<Ratio, R> ratio,
        Function<Inclusion, R> inclusion,
        Function<Cost, R> cost) {
      return inclusion.apply(this);
    }
  }

  /** Money per finished kg. */
  record Cost() implements Subject {
    @Override
    public String text() {
      return "cost";
    }

    @Override
    public <R> R byKind(
        Function<Nutrients, R> sum,
        Function<Ratio, R> ratio,
        Function<Inclusion, R> inclusion,
        Function<Cost, R> cost) {
      return cost.apply(this);
    }
  }
}
