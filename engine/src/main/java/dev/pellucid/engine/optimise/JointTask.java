package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.optimise.Requirement.OfStock.Counted;
import java.util.List;

/**
 * What is to be found: the shares of several feeds that take of the same ingredients, of which
 * there is only so much, so that all of them together cost least.
 *
 * @param feeds each with how much of it is made
 * @param scarce what is short
 */
public record JointTask(List<Made> feeds, List<Scarce> scarce) {
  public JointTask {
    feeds = List.copyOf(feeds);
    scarce = List.copyOf(scarce);
  }

  /**
   * So much of one feed.
   *
   * @param kg that are made
   * @param counted whether these are kg in the bags, or kg of recipe as batches are written down
   */
  public record Made(Task task, double kg, Counted counted) {
    private static final double WHOLE = 100;

    /**
     * What a sum over lines comes to in all that is made of it.
     *
     * @param sum for 100 kg of recipe
     */
    public Slope all(Slopes feed, Slope sum) {
      if (counted == Counted.WEIGHED) {
        return times(sum.now(), sum, kg / WHOLE);
      }
      Slope bagged = feed.bagged();
      double perKg = sum.now() / bagged.now();
      return times(sum.now(), sum.minus(perKg, bagged), kg / bagged.now());
    }

    private static Slope times(double now, Slope one, double times) {
      double[] per = one.perPoint().clone();
      for (int i = 0; i < per.length; i++) {
        per[i] *= times;
      }
      return new Slope(now * times, per);
    }

    /** So much of it. */
    public Made of(double otherKg) {
      return new Made(task, otherKg, counted);
    }

    /** The same with another task. */
    public Made with(Task other) {
      return new Made(other, kg, counted);
    }
  }

  /**
   * An ingredient of which there is only so much.
   *
   * @param kg that may be taken by all together
   * @param until what of it may be taken by some alone; none where all may take all of it
   * @param elsewhere money per kg, beside its price, at which more of it can be had; infinite where
   *     it cannot
   */
  public record Scarce(String ingredient, double kg, List<Until> until, double elsewhere) {
    public Scarce {
      until = List.copyOf(until);
    }

    /** The same of which there is so much more, for whomever. */
    public Scarce plus(double more) {
      return new Scarce(ingredient, kg + more, until, elsewhere);
    }

    /** The same that can be had at such a price beside its own. */
    public Scarce at(double money) {
      return new Scarce(ingredient, kg, until, money);
    }
  }

  /**
   * That those who are made late may take less, since some is spoilt by then.
   *
   * @param lessKg what of all is spoilt
   * @param parts of each feed, the part that is made so late
   */
  public record Until(double lessKg, List<Double> parts) {
    public Until {
      parts = List.copyOf(parts);
    }
  }

  /** The same with other amounts of what is short. */
  public JointTask with(List<Scarce> others) {
    return new JointTask(feeds, others);
  }

  /** The same with other amounts that are made. */
  public JointTask making(List<Made> others) {
    return new JointTask(others, scarce);
  }
}
