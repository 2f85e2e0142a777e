package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.measure.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What a limit is about. */
public sealed interface Subject {
  /** As one writes it: {@code lysine : crude-protein}. */
  String text();

  /** For people: {@code Lysine : Crude protein}. */
  String title();

  /** Of which kind its figure is. */
  Kind figure();

  /** Whether it is one sum over another, so that what is not told can move it either way. */
  default boolean isRatio() {
    return false;
  }

  /** The nutrients of which more raises it. */
  List<Nutrient> raisedBy();

  /** The nutrients of which more lowers it. */
  default List<Nutrient> loweredBy() {
    return List.of();
  }

  /** All that it is read off: what raises it, then what lowers it. */
  default List<Nutrient> nutrients() {
    return raisedBy();
  }

  /** The nutrients that add up to it; none where it is no sum of nutrients. */
  default List<Nutrient> addends() {
    return isRatio() ? List.of() : raisedBy();
  }

  /** Applies the one of these that is for its kind. */
  <R> R byKind(
      Function<Nutrients, R> sum,
      Function<Ratio, R> ratio,
      Function<Inclusion, R> inclusion,
      Function<Cost, R> cost);

  /** One nutrient or the sum of several, all of one kind of unit. */
  final class Nutrients implements Subject {
    private final List<Nutrient> nutrients;
    private final String text;
    private final int[] indexes;

    public Nutrients(List<Nutrient> nutrients, String text) {
      this.nutrients = List.copyOf(nutrients);
      this.text = text;
      this.indexes = new int[nutrients.size()];
      for (int i = 0; i < indexes.length; i++) {
        indexes[i] = nutrients.get(i).index();
      }
    }

    /** One nutrient by itself. */
    static Nutrients alone(Nutrient nutrient) {
      return new Nutrients(List.of(nutrient), nutrient.name());
    }

    /** Several together: {@code methionine + cystine}. */
    static Nutrients sum(List<Nutrient> nutrients) {
      StringBuilder text = new StringBuilder();
      for (Nutrient nutrient : nutrients) {
        text.append(text.length() == 0 ? "" : " + ").append(nutrient.name());
      }
      return new Nutrients(nutrients, text.toString());
    }

    @Override
    public List<Nutrient> nutrients() {
      return nutrients;
    }

    /** The places of the nutrients in every dense array; nobody writes to it. */
    public int[] indexes() {
      return indexes;
    }

    @Override
    public String text() {
      return text;
    }

    @Override
    public String title() {
      if (nutrients.size() == 1) {
        return nutrients.get(0).title();
      }
      StringBuilder title = new StringBuilder();
      for (Nutrient nutrient : nutrients) {
        title.append(title.length() == 0 ? "" : " + ").append(nutrient.title());
      }
      return title.toString();
    }

    @Override
    public Kind figure() {
      return nutrients.get(0).unit().kind();
    }

    @Override
    public List<Nutrient> raisedBy() {
      return nutrients;
    }

    @Override
    public <R> R byKind(
        Function<Nutrients, R> sum,
        Function<Ratio, R> ratio,
        Function<Inclusion, R> inclusion,
        Function<Cost, R> cost) {
      return sum.apply(this);
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other == this
          || other instanceof Nutrients told
              && told.text.equals(text)
              && told.nutrients.equals(nutrients);
    }

    @Override
    public int hashCode() {
      return text.hashCode();
    }

    @Override
    public String toString() {
      return text;
    }
  }

  /**
   * One sum over another, in the base of {@link #kind}: a plain quotient, or g/MJ for a mass over
   * an energy.
   */
  record Ratio(Nutrients over, Nutrients under, RatioKind kind, String text) implements Subject {
    static Ratio of(Nutrients over, Nutrients under, RatioKind kind) {
      return new Ratio(over, under, kind, over.text() + " : " + under.text());
    }

    @Override
    public String title() {
      return over.title() + " : " + under.title();
    }

    @Override
    public Kind figure() {
      return kind == RatioKind.PLAIN ? Kind.SHARE : Kind.SHARE_PER_ENERGY;
    }

    @Override
    public boolean isRatio() {
      return true;
    }

    @Override
    public List<Nutrient> raisedBy() {
      return over.nutrients();
    }

    @Override
    public List<Nutrient> loweredBy() {
      return under.nutrients();
    }

    @Override
    public List<Nutrient> nutrients() {
      List<Nutrient> both = new ArrayList<>(over.nutrients());
      both.addAll(under.nutrients());
      return both;
    }

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
    PER_ENERGY;

    /** What the quotient of the two sums is multiplied by: of kg over MJ, the grams of a kg. */
    public double times() {
      return this == PER_ENERGY ? 1000 : 1;
    }
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
    public String title() {
      return text;
    }

    @Override
    public Kind figure() {
      return Kind.SHARE;
    }

    @Override
    public List<Nutrient> raisedBy() {
      return List.of();
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
    public String title() {
      return text();
    }

    @Override
    public Kind figure() {
      return Kind.PRICE;
    }

    @Override
    public List<Nutrient> raisedBy() {
      return List.of();
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
