package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is wanted in the next weeks, as a file of {@code plans/} tells it, and what is short.
 *
 * @param name of its file
 * @param feeds in the order of the file
 * @param available what there is of ingredients that are short, in the order of the file
 * @param declared where the file begins
 */
public record FeedPlan(String name, List<Planned> feeds, List<Available> available, Span declared) {
  public FeedPlan {
    feeds = List.copyOf(feeds);
    available = List.copyOf(available);
  }

  /**
   * So much of a feed by a day.
   *
   * @param recipe its code
   * @param kg in the bags
   * @param place where the code stands
   * @param quantity where the quantity stands
   * @param due where the day stands
   */
  public record Planned(
      String recipe, double kg, LocalDate by, Span place, Span quantity, Span due) {}

  /**
   * An ingredient that is short.
   *
   * @param kg that there is; empty where it is what the lots of the store hold
   * @param place where its name stands
   * @param amount where the amount stands
   */
  public record Available(String ingredient, OptionalDouble kg, Span place, Span amount) {}
}
