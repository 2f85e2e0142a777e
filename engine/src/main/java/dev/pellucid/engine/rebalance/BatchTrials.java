package dev.pellucid.engine.rebalance;

import dev.pellucid.engine.check.RuleContext;

/** One planned batch in each way in which it is looked at, in its own size. */
public interface BatchTrials {
  /** Its number. */
  String number();

  /** By the recipe, with what the folder says of its ingredients. */
  RuleContext written();

  /** By the shares of the recipe, with its lots; it can be tried with others. */
  RuleContext laid();

  /** With its lots and the shares that its record gives it; as before where it gives none. */
  RuleContext now();

  /** By the shares of the recipe, with all of its lots but those of one line. */
  RuleContext without(String line);
}
