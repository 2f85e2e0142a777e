package dev.pellucid.engine.compare;

import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.compare.RecipeChange.Moved;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How far a feed may move at once. What a waiver in force is about may move further.
 *
 * @param costRise percent that the cost of a kg in the bags may rise by; empty for any
 * @param nutrientMove percent that a nutrient with a limit on it may rise or fall by; empty for any
 */
public record Allowance(OptionalDouble costRise, OptionalDouble nutrientMove) {
  /**
   * What moves further, a sentence each. A new feed does not move, so that it is not allowed to
   * break a limit; one that is gone is nobody's loss.
   */
  public List<String> beyond(Comparison comparison) {
    List<String> beyond = new ArrayList<>();
    for (RecipeChange change : comparison.changes()) {
      alone(change, beyond);
      change
          .effect()
          .ifPresent(
              effect -> {
                cost(change, effect, beyond);
                effect.moved().forEach(moved -> nutrient(change, effect, moved, beyond));
                effect.judged().forEach(limit -> limit(change, effect, limit, beyond));
                effect.broken().forEach(limit -> limit(change, effect, limit, beyond));
              });
    }
    return beyond;
  }

  /**
   * Of a new feed there is nothing to rise or move from; where a gate is set it is held to its own
   * limits, or it would pass every gate.
   */
  private void alone(RecipeChange change, List<String> beyond) {
    if (!change.isNew() || (costRise.isEmpty() && nutrientMove.isEmpty())) {
      return;
    }
    if (change.isLost()) {
      beyond.add(change.code() + " is new and cannot be computed: " + change.obstacle());
    }
    change
        .effectOrNone()
        .broken()
        .forEach(
            limit ->
                beyond.add(
                    change.code()
                        + " is new and does not keep "
                        + limit.after().demand().lineNow()));
  }

  private void cost(RecipeChange change, Effect effect, List<String> beyond) {
    if (costRise.isEmpty() || effect.waived().contains("cost")) {
      return;
    }
    double rise = 100 * change.costMoved() / change.costBefore().orElse(0);
    double allowed = costRise.getAsDouble();
    if (rise > allowed + Closeness.PART) {
      beyond.add(
          sentence(change.code() + ": cost rises by ", rise, allowed)
              + " without a waiver of a limit on cost");
    }
  }

  private void nutrient(RecipeChange change, Effect effect, Moved moved, List<String> beyond) {
    if (nutrientMove.isEmpty()
        || moved.nearest().isEmpty()
        || effect.waived().contains(moved.nutrient())) {
      return;
    }
    double by = 100 * (moved.after() - moved.before()) / moved.before();
    double allowed = nutrientMove.getAsDouble();
    if (Math.abs(by) > allowed + Closeness.PART) {
      String how = by > 0 ? " rises by " : " falls by ";
      beyond.add(
          sentence(change.code() + ": " + moved.nutrient() + how, Math.abs(by), allowed)
              + " without a waiver of a limit on it");
    }
  }

  /** Where a nutrient is judged it may move further than fresh: by its spread, or in the store. */
  private void limit(RecipeChange change, Effect effect, LimitMoved limit, List<String> beyond) {
    String subject = limit.after().subject();
    boolean told = beyond.stream().anyMatch(one -> one.startsWith(change.code() + ": " + subject));
    if (nutrientMove.isEmpty()
        || effect.waived().contains(subject)
        || subject.equals("cost")
        || told
        || !limit.after().unit().symbol().equals(limit.before().unit().symbol())) {
      return;
    }
    double by = 100 * (limit.after().shown() - limit.before().shown()) / limit.before().shown();
    double allowed = nutrientMove.getAsDouble();
    if (Math.abs(by) > allowed + Closeness.PART) {
      String how = by > 0 ? " rises by " : " falls by ";
      beyond.add(
          sentence(
                  change.code()
                      + ": "
                      + subject
                      + " as judged by "
                      + limit.after().demand().askedNow()
                      + how,
                  Math.abs(by),
                  allowed)
              + " without a waiver of a limit on it");
    }
  }

  private static String sentence(String what, double by, double allowed) {
    String percent =
        Double.isInfinite(by) ? "more than can be told" : Figures.plainBeside(by, allowed) + " %";
    return what + percent + ", allowed is " + Figures.plain(allowed) + " %";
  }
}
