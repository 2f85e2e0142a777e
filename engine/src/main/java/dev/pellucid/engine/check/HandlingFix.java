package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import java.util.List;
import java.util.Optional;

/**
 * The handling overage of a line that a broken maximum leaves room for, tried on the recipe before
 * it is offered.
 */
final class HandlingFix {
  private static final double GRAMS = 1000;
  private static final int HALVINGS = 12;

  /** In percent of the line: nobody is told to lose more than this. */
  private static final double USUAL = 20;

  private HandlingFix() {}

  /** In words; empty where no overage of this line alone would meet it. */
  static Optional<String> words(RuleContext recipe, Verdict broken, Line line) {
    boolean each = line.kgPerWeighing() > 0;
    double now = each ? line.kgPerWeighing() * GRAMS : line.onTop().part() / line.share().part();
    double whole = each ? now : now * 100;
    Proof proof = new Proof(recipe, List.of(broken.limit()));
    double good = 0;
    double bad = whole;
    boolean found = false;
    for (int i = 0; i < HALVINGS && bad - good > whole / 50; i++) {
      double middle = shorter((good + bad) / 2);
      boolean met = middle > good && meets(proof, recipe, line, middle, each);
      found |= met;
      good = met ? middle : good;
      bad = met ? bad : (good + bad) / 2;
    }
    good = each ? good : Math.min(good, USUAL);
    if (!found || !proof.holds(tried(recipe, line, good, each))) {
      return Optional.empty();
    }
    return Optional.of(
        "a handling overage of "
            + extra(good, each)
            + " on "
            + line.material().name()
            + " would meet it");
  }

  private static boolean meets(
      Proof proof, RuleContext recipe, Line line, double extra, boolean each) {
    return tried(recipe, line, extra, each)
        .flatMap(RuleContext::feed)
        .map(Readings::new)
        .filter(proof::keeps)
        .isPresent();
  }

  private static Optional<RuleContext> tried(
      RuleContext recipe, Line line, double extra, boolean each) {
    return recipe
        .fixing()
        .again()
        .withOverage(line.material().name(), extra(extra, each), "handling");
  }

  private static String extra(double figure, boolean each) {
    return Figures.plain(figure) + (each ? " g per weighing" : " %");
  }

  /** No more digits than a person writes. */
  private static double shorter(double figure) {
    double step = Math.pow(10, Math.floor(Math.log10(figure)) - 1);
    return Math.floor(figure / step + 1e-9) * step;
  }
}
