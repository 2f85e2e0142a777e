package dev.pellucid.engine.data;

import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * One thing that can be told of a feed.
 *
 * @param index its place in every dense array of nutrients
 * @param title for people: "Crude protein"
 * @param unit the unit in which we print it
 * @param partOf the nutrient whose mass it is a part of, if any; the parts of nothing (moisture,
 *     protein, fat, fibre, ash, NFE) with {@code of-the-whole: yes} add up to the whole
 * @param ofTheWhole whether it is one of the parts that add up to 100 %
 * @param whereTold whether it is judged only by the ingredients that tell it: a substance for which
 *     an ingredient has a figure where there is a reason to look, such as a contaminant; what is
 *     not told counts as nothing
 * @param analysed whether a laboratory can find it in a feed; what fish digest of a feed it cannot
 * @param stability the class by which it decays, or {@link #STABLE}
 * @param formula how it follows from others, where it is not told directly
 * @param digestibleOf the nutrient of which it is the digestible part, where it is one
 * @param standsIn the nutrient whose coefficient of digestion counts for it where an ingredient
 *     tells none of its own; then that is told as such
 * @param usualMinimum where minima of it in complete feed usually lie
 * @param usualMaximum where maxima of it do
 * @param usual how much of it ingredients usually hold; the first row that is for one counts
 */
public record Nutrient(
    int index,
    String name,
    String title,
    Unit unit,
    Optional<String> partOf,
    boolean ofTheWhole,
    boolean whereTold,
    boolean analysed,
    String stability,
    Optional<Formula> formula,
    Optional<String> digestibleOf,
    Optional<String> standsIn,
    Optional<UsualBound> usualMinimum,
    Optional<UsualBound> usualMaximum,
    List<Usual> usual,
    Span declared) {
  public Nutrient {
    usual = List.copyOf(usual);
  }

  /**
   * Where figures of it usually lie, in the base of its kind.
   *
   * @param name of the nutrient
   */
  public record UsualBound(String name, double low, double high, String asWritten, Span place) {
    /** Of both together: no less than of either, no more than of both. */
    public UsualBound with(UsualBound other) {
      return new UsualBound(
          name + " and " + other.name,
          Math.max(low, other.low),
          high + other.high,
          asWritten + " and " + other.asWritten,
          place);
    }
  }

  /** The word for what never decays. */
  public static final String STABLE = "stable";

  /**
   * A sum of nutrients with factors: {@code 23.6 MJ/kg crude-protein + 39.5 MJ/kg crude-fat}, or
   * {@code 100 % - moisture - crude-protein}. Every figure is in the base of its kind.
   *
   * @param constant the part that no nutrient brings
   * @param source of the formula
   */
  public record Formula(
      double constant, List<Term> terms, String asWritten, Optional<Source> source) {
    public Formula {
      terms = List.copyOf(terms);
    }

    /** {@code factor × nutrient}. */
    public record Term(double factor, String nutrient) {}
  }
}
