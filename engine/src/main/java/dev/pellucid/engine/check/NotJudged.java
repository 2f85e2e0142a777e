package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.LimitStatus.State;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;

/** Words for limits that stay open because a recipe does not tell something. */
final class NotJudged {
  private static final int NAMED = 6;

  private NotJudged() {}

  /** What the limits of a recipe that stand so are about, each once. */
  static List<String> names(RuleContext recipe, State state) {
    List<String> names = new ArrayList<>();
    for (LimitStatus status : recipe.limits()) {
      String name = status.limit().subject().text();
      if (status.state() == state && !names.contains(name)) {
        names.add(name);
      }
    }
    return names;
  }

  /** The same of minima that hang on a loss that is not told. */
  static List<String> byLoss(RuleContext recipe) {
    List<String> names = new ArrayList<>();
    for (LimitStatus status : recipe.limits()) {
      String name = status.limit().subject().text();
      if (status.state().hangsOnLoss() && !names.contains(name)) {
        names.add(name);
      }
    }
    return names;
  }

  /** {@code 3 limits are not}. */
  static String count(List<String> names) {
    return Plural.of(names.size(), "limit") + (names.size() == 1 ? " is" : " are") + " not";
  }

  /** {@code not judged because no species is told: digestible-protein, lysine}. */
  static String words(String because, List<String> names) {
    int more = names.size() - NAMED;
    return "not judged because "
        + because
        + ": "
        + String.join(", ", names.subList(0, Math.min(NAMED, names.size())))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
