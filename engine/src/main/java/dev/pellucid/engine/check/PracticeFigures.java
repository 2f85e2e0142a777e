package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.PracticeFigure;
import java.util.List;

/** The figures of a feed that hang on its shares and that practice bounds. */
public final class PracticeFigures {
  private PracticeFigures() {}

  /** None where the feed has no figures. */
  public static List<PracticeFigure> of(RuleContext recipe) {
    return recipe.feed().isPresent()
        ? FeedOutsidePractice.figures(recipe, recipe.feed().get())
        : List.of();
  }
}
