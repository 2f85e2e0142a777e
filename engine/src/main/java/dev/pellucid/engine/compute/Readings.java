package dev.pellucid.engine.compute;

import dev.pellucid.engine.larder.Nutrient;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;
import java.util.Arrays;
import java.util.List;

/**
 * Reads a figure off a feed: a sum of nutrients, a ratio, an inclusion or the cost, on a basis.
 *
 * <p>Deviations: nutrients of one ingredient move together and add up plainly; ingredients move
 * apart and add up by the root of the sum of squares, in the order of their names; a ratio goes by
 * the delta method.
 */
public final class Readings {
  private final ComputedFeed feed;

  /** The ingredients of the rows, sorted. */
  private final String[] names;

  /** For each row a place of its ingredient among {@link #names}, the same for all its rows. */
  private final int[] ingredientOf;

  public Readings(ComputedFeed feed) {
    this.feed = feed;
    this.names = new String[feed.rows().size()];
    this.ingredientOf = new int[names.length];
    Arrays.setAll(names, i -> name(feed, i));
    Arrays.sort(names);
    Arrays.setAll(ingredientOf, i -> Arrays.binarySearch(names, name(feed, i)));
  }

  private static String name(ComputedFeed feed, int row) {
    return feed.rows().get(row).ingredient().name();
  }

  /**
   * The figure that a side of a limit is judged by, in the base of the subject's kind; of a ratio,
   * the worse of the two ends.
   */
  public At judged(Subject subject, Basis basis, Bound.Side side) {
    End end = side == Bound.Side.MIN ? End.POOREST : End.RICHEST;
    if (subject instanceof Subject.Ratio) {
      At poor = new At(End.POOREST, at(subject, basis, End.POOREST));
      At rich = new At(End.RICHEST, at(subject, basis, End.RICHEST));
      boolean poorIsLess = poor.reading().value() <= rich.reading().value();
      return poorIsLess == (side == Bound.Side.MIN) ? poor : rich;
    }
    return new At(end, at(subject, basis, end));
  }

  /** A reading and the end it was taken at. */
  public record At(End end, Reading reading) {}

  /** The figure at one end. */
  public Reading at(Subject subject, Basis basis, End end) {
    if (subject instanceof Subject.Nutrients sum) {
      return onBasis(sum(sum.nutrients(), end), basis, end);
    }
    if (subject instanceof Subject.Ratio ratio) {
      return ratio(ratio, end);
    }
    if (subject instanceof Subject.Inclusion inclusion) {
      return plain(inclusion(inclusion.names()));
    }
    return plain(feed.costPerKg());
  }

  /** The share of the weighed feed that these ingredients, groups or codes make up. */
  public double inclusion(List<String> names) {
    return feed.rows().stream().filter(row -> isOneOf(row, names)).mapToDouble(Row::kg).sum() / 100;
  }

  /** Whether a row comes from one of these ingredients, groups or codes. */
  public static boolean isOneOf(Row row, List<String> names) {
    return names.stream()
        .anyMatch(name -> row.path().contains(name) || row.ingredient().groups().contains(name));
  }

  private Reading sum(List<Nutrient> nutrients, End end) {
    double value = 0;
    for (Nutrient nutrient : nutrients) {
      value += feed.content(end, nutrient.index());
    }
    double squares = 0;
    for (double one : deviations(nutrients)) {
      squares += one * one;
    }
    Gaps gaps = gaps(nutrients, end);
    return new Reading(
        value, Math.sqrt(squares), gaps.spreadUnknown(), gaps.unbounded(), gaps.unknownShare());
  }

  private Reading onBasis(Reading reading, Basis basis, End end) {
    double factor = factor(basis, end);
    return new Reading(
        reading.value() * factor,
        reading.deviation() * factor,
        reading.spreadUnknown(),
        reading.unbounded(),
        reading.unknownShare());
  }

  private double factor(Basis basis, End end) {
    double dry = 1 - feed.balances().at(end).moisture();
    if (basis instanceof Basis.DryMatter) {
      return 1 / dry;
    }
    return basis instanceof Basis.AtMoisture told ? (1 - told.moisture()) / dry : 1;
  }

  private Reading ratio(Subject.Ratio ratio, End end) {
    Reading over = sum(ratio.over().nutrients(), end);
    Reading under = sum(ratio.under().nutrients(), end);
    double scale = ratio.kind() == Subject.RatioKind.PER_ENERGY ? 1000 : 1;
    double value = under.value() > 0 ? over.value() / under.value() : 0;
    double[] below = deviations(ratio.under().nutrients());
    double[] above = deviations(ratio.over().nutrients());
    double squares = 0;
    for (int i = 0; i < above.length; i++) {
      double moves = above[i] - value * below[i];
      squares += moves * moves;
    }
    double deviation = under.value() > 0 ? Math.sqrt(squares) / under.value() : 0;
    return new Reading(
        value * scale,
        deviation * scale,
        over.spreadUnknown() || under.spreadUnknown(),
        over.unbounded() || under.unbounded(),
        Math.max(over.unknownShare(), under.unknownShare()));
  }

  /** One standard deviation that each ingredient brings to the sum, per kg of finished feed. */
  private double[] deviations(List<Nutrient> nutrients) {
    double finished = feed.balances().expected().finished();
    double[] byIngredient = new double[names.length];
    for (int i = 0; i < ingredientOf.length; i++) {
      Row row = feed.rows().get(i);
      double deviation = 0;
      for (Nutrient nutrient : nutrients) {
        deviation += row.spread().at(nutrient.index());
      }
      byIngredient[ingredientOf[i]] += deviation / finished;
    }
    return byIngredient;
  }

  private Gaps gaps(List<Nutrient> nutrients, End end) {
    boolean spreadUnknown = false;
    boolean unbounded = false;
    double unknown = 0;
    for (Row row : feed.rows()) {
      boolean untold = false;
      for (Nutrient nutrient : nutrients) {
        int index = nutrient.index();
        untold |= row.composition().unknown().get(index);
        unbounded |= row.composition().unbounded().get(index);
        spreadUnknown |= row.composition().spreadUnknown().get(index);
      }
      unknown += untold ? row.kg(end) : 0;
    }
    return new Gaps(spreadUnknown, unbounded, unknown / feed.balances().at(end).finished());
  }

  private record Gaps(boolean spreadUnknown, boolean unbounded, double unknownShare) {}

  private static Reading plain(double value) {
    return new Reading(value, 0, false, false, 0);
  }
}
