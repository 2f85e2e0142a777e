package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.quantity.Certainty;
import dev.pellucid.engine.quantity.Dense;
import dev.pellucid.engine.quantity.Sum;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;
import java.util.List;

/**
 * Reads a figure off a feed: a sum of nutrients, a ratio, an inclusion or the cost, on a basis.
 *
 * <p>How a figure varies from lot to lot is worked out in {@link Deviations}.
 */
public final class Readings {
  private final ComputedFeed feed;
  private final Row[] rows;
  private final double[] kg;
  private final double[] kgRichest;

  /** What a kg of each row holds. */
  private final Dense[] expected;

  private final Dense[] poorest;
  private final Dense[] richest;

  private final OpenContents open;
  private final Deviations deviations;

  public Readings(ComputedFeed feed) {
    this.feed = feed;
    this.rows = feed.rows().toArray(new Row[0]);
    this.open = new OpenContents(feed);
    this.deviations = new Deviations(feed);
    this.kg = new double[rows.length];
    this.kgRichest = new double[rows.length];
    this.expected = new Dense[rows.length];
    this.poorest = new Dense[rows.length];
    this.richest = new Dense[rows.length];
    for (int i = 0; i < rows.length; i++) {
      kg[i] = rows[i].kg();
      kgRichest[i] = rows[i].kgRichest();
      expected[i] = rows[i].kept(Scenario.EXPECTED);
      poorest[i] = rows[i].kept(Scenario.POOREST);
      richest[i] = rows[i].kept(Scenario.RICHEST);
    }
  }

  /**
   * The figure that a side of a limit is judged by, in the base of the subject's kind.
   *
   * @param spread whether its deviation is asked for
   */
  public At judged(Subject subject, Basis basis, Bound.Side side, boolean spread) {
    Scenario end = side == Bound.Side.MIN ? Scenario.POOREST : Scenario.RICHEST;
    return new At(end, at(subject, basis, end, spread));
  }

  /** A reading and the end it was taken at. */
  public record At(Scenario end, Reading reading) {}

  /** The figure at one end, without its deviation. */
  public Reading at(Subject subject, Basis basis, Scenario end) {
    return at(subject, basis, end, false);
  }

  /** The content of one nutrient as fed, on target and fresh. */
  public Reading of(Nutrient nutrient) {
    int[] alone = {nutrient.index()};
    return sum(alone, new Basis.AsFed(), Scenario.EXPECTED, false);
  }

  /** The figure at one end, with its deviation. */
  public Reading varying(Subject subject, Basis basis, Scenario end) {
    return at(subject, basis, end, true);
  }

  private Reading at(Subject subject, Basis basis, Scenario end, boolean spread) {
    return subject.byKind(
        sum -> sum(sum.indexes(), basis, end, spread),
        ratio -> ratio(ratio, end, spread),
        inclusion -> plain(inclusion(inclusion.names()), Certainty.TOLD),
        cost -> plain(feed.costPerKg(), Certainty.of(!feed.unpriced().isEmpty(), false)));
  }

  /**
   * Whether there is anything to judge: of what is judged only where it is told, some ingredient of
   * the feed must tell it.
   */
  public boolean isTold(Subject subject) {
    List<Nutrient> addends = subject.addends();
    for (Nutrient one : addends) {
      if (!one.whereTold() || isTold(one)) {
        return true;
      }
    }
    return addends.isEmpty();
  }

  /**
   * Whether it is read off a content that is told for some species or kinds of process alone, of a
   * recipe that does not say its own.
   */
  public boolean hangsOnFeed(Subject subject) {
    return open.hangsOnFeed(subject.nutrients());
  }

  private boolean isTold(Nutrient one) {
    for (Row row : rows) {
      if (!row.composition().isUnknown(one.index())) {
        return true;
      }
    }
    return false;
  }

  /** The share of the weighed feed that these ingredients, groups or codes make up. */
  public double inclusion(List<String> names) {
    Sum included = new Sum();
    for (Row row : rows) {
      if (isOneOf(row, names)) {
        included.add(row.kg());
      }
    }
    return included.total() / 100;
  }

  /** Whether a row comes from one of these ingredients, groups or codes. */
  public static boolean isOneOf(Row row, List<String> names) {
    for (String name : names) {
      if (row.path().contains(name) || row.ingredient().groups().contains(name)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Handling overage of one line thins what the others bring, so that a feed may be richest with it
   * or without.
   */
  private Reading sum(int[] nutrients, Basis basis, Scenario end, boolean spread) {
    Balances balances = feed.balances();
    Reading with = sum(nutrients, basis, end, end, balances.at(end), spread);
    if (end != Scenario.RICHEST || !balances.losesOverage()) {
      return with;
    }
    Reading lost = sum(nutrients, basis, end, Scenario.POOREST, balances.richestLost(), spread);
    return lost.value() > with.value() ? lost : with;
  }

  private Reading sum(
      int[] nutrients,
      Basis basis,
      Scenario content,
      Scenario mass,
      Balance balance,
      boolean spread) {
    double finished = balance.finished();
    double value = amount(nutrients, content, mass, finished, Counting.AT_BOUNDS);
    double deviation = spread ? deviations.ofSum(nutrients, content, mass) : 0;
    double per = finished > 0 ? factor(basis, balance) / finished : 0;
    OpenContents.Gaps gaps = open.of(nutrients, mass);
    boolean isOpen = gaps.certainty() != Certainty.TOLD;
    return new Reading(
        value * per,
        isOpen ? per * amount(nutrients, content, mass, finished, Counting.TOLD) : value * per,
        isOpen ? per * amount(nutrients, content, mass, finished, Counting.SURE) : value * per,
        gaps.certainty(),
        deviation * per,
        gaps.spreadUnknown(),
        gaps.unbounded(),
        gaps.unknownShare());
  }

  /** Water alone holds nothing on dry matter. */
  static double factor(Basis basis, Balance balance) {
    double factor = basis.fromAsFed(Math.max(0, 1 - balance.moisture()));
    return Double.isFinite(factor) ? factor : 0;
  }

  /**
   * A ratio is lowest with the least above over the most below, and highest the other way round.
   * Both are told of the same mass, with handling overage or without, whichever is worse: the
   * moisture of the feed then cancels.
   */
  private Reading ratio(Subject.Ratio ratio, Scenario end, boolean spread) {
    if (end == Scenario.EXPECTED) {
      return quotient(ratio, end, end, end, spread);
    }
    Scenario other = end == Scenario.POOREST ? Scenario.RICHEST : Scenario.POOREST;
    Reading lost = quotient(ratio, end, other, Scenario.POOREST, spread);
    Reading present = quotient(ratio, end, other, Scenario.RICHEST, spread);
    boolean lostIsLess = lost.value() <= present.value();
    return lostIsLess == (end == Scenario.POOREST) ? lost : present;
  }

  private Reading quotient(
      Subject.Ratio ratio, Scenario above, Scenario below, Scenario mass, boolean spread) {
    int[] upper = ratio.over().indexes();
    int[] lower = ratio.under().indexes();
    double finished = feed.balances().at(mass).finished();
    double under = amount(lower, below, mass, finished, Counting.AT_BOUNDS);
    double value = over(amount(upper, above, mass, finished, Counting.AT_BOUNDS), under);
    double scale = ratio.kind().times();
    double deviation = 0;
    if (spread && under > 0) {
      deviation = deviations.ofRatio(upper, above, lower, below, mass, value) / under;
    }
    OpenContents.Gaps gapsAbove = open.of(upper, mass);
    OpenContents.Gaps gapsBelow = open.of(lower, mass);
    Certainty certainty = gapsAbove.over(gapsBelow);
    double told = value;
    double sure = value;
    if (certainty != Certainty.TOLD) {
      told =
          over(
              amount(upper, above, mass, finished, Counting.TOLD),
              amount(lower, below, mass, finished, Counting.TOLD));
      sure =
          over(
              amount(upper, above, mass, finished, Counting.SURE),
              amount(lower, below, mass, finished, Counting.SURE));
    }
    return new Reading(
        value * scale,
        told * scale,
        sure * scale,
        certainty,
        deviation * scale,
        gapsAbove.spreadUnknown() || gapsBelow.spreadUnknown(),
        (above != Scenario.POOREST && gapsAbove.unbounded())
            || (below != Scenario.POOREST && gapsBelow.unbounded()),
        Math.max(gapsAbove.unknownShare(), gapsBelow.unknownShare()));
  }

  /** The balance that a sum at an end is told of: with all handling overage, or without. */
  public Balance massOf(Subject.Nutrients sum, Basis basis, Scenario end) {
    Balances balances = feed.balances();
    if (end != Scenario.RICHEST || !balances.losesOverage()) {
      return balances.at(end);
    }
    int[] of = sum.indexes();
    Reading with = sum(of, basis, end, end, balances.at(end), false);
    Reading lost = sum(of, basis, end, Scenario.POOREST, balances.richestLost(), false);
    return lost.value() > with.value() ? balances.richestLost() : balances.at(end);
  }

  /** The two sums of a ratio, per kg of the same feed as fed, each in the base of its kind. */
  public record Sides(double above, double below) {}

  /** The two sums that a ratio at an end is made of. */
  public Sides sides(Subject.Ratio ratio, Scenario end) {
    if (end == Scenario.EXPECTED) {
      return sides(ratio, end, end, end);
    }
    Scenario other = end == Scenario.POOREST ? Scenario.RICHEST : Scenario.POOREST;
    Sides lost = sides(ratio, end, other, Scenario.POOREST);
    Sides present = sides(ratio, end, other, Scenario.RICHEST);
    boolean lostIsLess = over(lost.above(), lost.below()) <= over(present.above(), present.below());
    return lostIsLess == (end == Scenario.POOREST) ? lost : present;
  }

  private Sides sides(Subject.Ratio ratio, Scenario above, Scenario below, Scenario mass) {
    double finished = feed.balances().at(mass).finished();
    int[] upper = ratio.over().indexes();
    int[] lower = ratio.under().indexes();
    return new Sides(
        amount(upper, above, mass, finished, Counting.AT_BOUNDS) / finished,
        amount(lower, below, mass, finished, Counting.AT_BOUNDS) / finished);
  }

  static double over(double above, double below) {
    return below > 0 ? above / below : above > 0 ? Double.POSITIVE_INFINITY : 0;
  }

  /** Which contents are read at the end that is asked for; the others are read as expected. */
  private enum Counting {
    /** All. */
    AT_BOUNDS,
    /** Those that are told, also as below a figure. */
    TOLD,
    /** Those that are told with a figure. */
    SURE
  }

  /** Per 100 kg of recipe; of moisture, what the feed holds and not its ingredients. */
  private double amount(
      int[] nutrients, Scenario content, Scenario mass, double finished, Counting which) {
    double amount = 0;
    for (int index : nutrients) {
      if (feed.nutrients().isMoisture(index)) {
        amount += feed.content(water(which, content, index), index) * finished;
      } else if (which == Counting.AT_BOUNDS) {
        double[] masses = mass == Scenario.RICHEST ? kgRichest : kg;
        Dense[] holds = kept(content);
        for (int i = 0; i < masses.length; i++) {
          amount += holds[i].at(index) * masses[i];
        }
      } else {
        for (Row row : rows) {
          amount += row.amount(end(which, row, content, index), mass, index);
        }
      }
    }
    return amount;
  }

  private Dense[] kept(Scenario content) {
    return switch (content) {
      case EXPECTED -> expected;
      case POOREST -> poorest;
      case RICHEST -> richest;
    };
  }

  private Scenario water(Counting which, Scenario content, int moisture) {
    if (which != Counting.AT_BOUNDS) {
      for (Row row : rows) {
        if (end(which, row, content, moisture) != content && feed.keepsItsWater(row)) {
          return Scenario.EXPECTED;
        }
      }
    }
    return content;
  }

  private static Scenario end(Counting which, Row row, Scenario content, int nutrient) {
    Composition composition = row.composition();
    return switch (which) {
      case AT_BOUNDS -> content;
      case TOLD -> composition.isUnknown(nutrient) ? Scenario.EXPECTED : content;
      case SURE ->
          content == Scenario.RICHEST && composition.mayBeLess(nutrient)
              ? Scenario.POOREST
              : composition.mayBeMore(nutrient) || composition.mayBeLess(nutrient)
                  ? Scenario.EXPECTED
                  : content;
    };
  }

  private static Reading plain(double value, Certainty certainty) {
    return new Reading(value, value, value, certainty, 0, false, false, 0);
  }
}
