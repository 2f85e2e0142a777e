package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.KeyFindings.shown;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;

/** What can be wrong with a plan as it is written. */
final class PlanFindings {
  private static final Code PLAN = FeedPlans.CODE;

  private PlanFindings() {}

  static Finding twice(Span again, String recipe, Span earlier) {
    return Finding.error(PLAN, again, recipe + " is planned twice for one day")
        .seeing("the other", earlier)
        .helping("write both as one quantity, or fix the recipe or the day of one");
  }

  /** Premixes have capitals, ingredients have none. */
  static Finding premix(Scalar name) {
    return Finding.error(
            PLAN, name.span(), shown(name.text()) + " is no ingredient that can be short")
        .helping(
            "of a premix, name the ingredient that is short: what premixes take of it counts too");
  }

  static Finding farFromMonth(Span quantity, String recipe, String planned, String month) {
    return Finding.warning(
            PLAN,
            quantity,
            planned + " of " + recipe + " are planned, and " + month + " are made in a month")
        .helping("look for a slipped point or t in place of kg, or mend made-per-month");
  }

  static Finding farFromOthers(Span quantity, String recipe, String planned, String most) {
    return Finding.warning(
            PLAN,
            quantity,
            planned + " of " + recipe + " are planned, and of no other feed more than " + most)
        .helping("look for a slipped point, or t in place of kg");
  }
}
