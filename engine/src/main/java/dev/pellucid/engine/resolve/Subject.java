package dev.pellucid.engine.resolve;

import dev.pellucid.engine.larder.Nutrient;
import java.util.List;

/** What a limit is about. */
public sealed interface Subject {
  /** As one writes it: {@code lysine : crude-protein}. */
  String text();

  /** One nutrient or the sum of several, all of one kind of unit. */
  record Nutrients(List<Nutrient> nutrients, String text) implements Subject {
    public Nutrients {
      nutrients = List.copyOf(nutrients);
    }
  }

  /**
   * One sum over another, in the base of {@link #kind}: a plain quotient, or g/MJ for a mass over
   * an energy.
   */
  record Ratio(Nutrients over, Nutrients under, RatioKind kind, String text) implements Subject {}

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
  }

  /** Money per finished kg. */
  record Cost() implements Subject {
    @Override
    public String text() {
      return "cost";
    }
  }
}
