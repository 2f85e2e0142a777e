package dev.pellucid.engine.check;

import dev.pellucid.finding.Code;

/** One thing that is looked at in every recipe. Its code has a page of the same name. */
public interface Rule {
  Code code();

  /** Whether what it finds at one place is one thing, whatever recipe shows it. */
  default boolean oncePerPlace() {
    return false;
  }

  /**
   * Whether what it finds shows in the feed and is fixed elsewhere: a limit that is broken, a label
   * that holds no longer. It is told after what is wrong with the lines themselves.
   */
  default boolean isConsequence() {
    return false;
  }

  /**
   * Whether what it finds is most likely a slip in a share or a step, which moves everything in the
   * feed: of several limits that are broken beside it, it is told as the cause.
   */
  default boolean isCause() {
    return false;
  }

  /** Looks at one recipe and says what it finds; silent on what cannot be judged. */
  void look(RuleContext recipe, Remarks out);
}
