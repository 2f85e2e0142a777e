package dev.pellucid.engine.explain;

import java.util.List;
import java.util.Optional;

/**
 * A figure of one feed, down to its sources.
 *
 * @param code of the recipe
 * @param title of the figure, for people
 * @param finishedKg what 100 kg of recipe come to, on target
 * @param sums one sum, or the two of a ratio; none of the yield
 * @param ratio what the first comes to over the second, in words, where it is a ratio
 * @param judged how it stands with each limit on it, step by step
 */
public record Explanation(
    String code,
    String title,
    double finishedKg,
    List<Sum> sums,
    Optional<String> ratio,
    List<Worked> judged) {
  public Explanation {
    sums = List.copyOf(sums);
    judged = List.copyOf(judged);
  }

  /**
   * Figures per kg of finished feed as fed, in {@code unit}.
   *
   * @param title for people
   * @param name as one writes it
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
   * @param words what the parts are, where their heads do not say it
   * @param worked how contents follow from others, and what is lost of them
   */
  public record Sum(
      String title,
      String name,
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
      List<String> words,
      List<Worked> worked) {
    public Sum {
      none = List.copyOf(none);
      untold = List.copyOf(untold);
      assumed = List.copyOf(assumed);
      still = List.copyOf(still);
      parts = List.copyOf(parts);
      words = List.copyOf(words);
      worked = List.copyOf(worked);
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
