package dev.pellucid.engine.explain;

import java.util.List;
import java.util.Optional;

/**
 * A figure of one feed, down to its sources.
 *
 * @param code of the recipe
 * @param subject as it was asked for
 * @param finishedKg what 100 kg of recipe come to, on target
 * @param sums one sum, or the two of a ratio
 * @param ratio what the first comes to over the second, in words, where it is a ratio
 */
public record Explanation(
    String code, String subject, double finishedKg, List<Sum> sums, Optional<String> ratio) {
  public Explanation {
    sums = List.copyOf(sums);
  }

  /**
   * Figures per kg of finished feed as fed, in {@code unit}.
   *
   * @param figure on target and fresh, with the digits that are printed; the parts add up to it
   * @param poorest where a minimum is judged; empty where there are no ends
   * @param richest where a maximum is judged; empty as well
   * @param varies one standard deviation between lots; empty where there is none
   * @param taken what the step takes that sets the figure, whatever the lots are; empty where the
   *     lots tell it
   * @param none ingredients that hold none of it
   * @param untold ingredients that do not tell it and count as nothing here
   * @param assumed ingredients whose deviation is the one of practice
   * @param still ingredients of which nothing says how they vary
   * @param formulas of what follows from others, with their source
   */
  public record Sum(
      String title,
      String unit,
      String figure,
      String poorest,
      String richest,
      String varies,
      Optional<String> taken,
      List<Part> parts,
      List<String> none,
      List<String> untold,
      List<String> assumed,
      List<String> still,
      List<String> formulas) {
    public Sum {
      none = List.copyOf(none);
      untold = List.copyOf(untold);
      assumed = List.copyOf(assumed);
      still = List.copyOf(still);
      parts = List.copyOf(parts);
      formulas = List.copyOf(formulas);
    }
  }

  /**
   * What one ingredient of one line brings, or one step where it brings water.
   *
   * @param line of the recipe, and through what it comes: {@code VIT-WW > retinyl-acetate}
   * @param kg per 100 kg of recipe
   * @param holds its content as it is written, or where it is not, what counts
   * @param kept percent of it that the process leaves; empty where there is nothing to keep
   * @param varies one standard deviation of what it brings; empty where it does not vary
   * @param amount what it brings to a kg of feed in the unit of the sum, to the last digit of the
   *     figure
   * @param brings the same in words; {@code <0.001} where it is less than that digit
   * @param source of the content, with its standing
   */
  public record Part(
      String line,
      String kg,
      String holds,
      String kept,
      String varies,
      double amount,
      String brings,
      String source) {}
}
