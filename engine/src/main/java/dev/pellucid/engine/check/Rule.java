package dev.pellucid.engine.check;

import dev.pellucid.finding.Code;

/** One thing that is looked at in every recipe. Its code has a page of the same name. */
public interface Rule {
  Code code();

  /** Whether what it finds at one place is one thing, whatever recipe shows it. */
  default boolean oncePerPlace() {
    return false;
  }

  /** Looks at one recipe and says what it finds; silent on what cannot be judged. */
  void look(RuleContext recipe, Remarks out);
}
