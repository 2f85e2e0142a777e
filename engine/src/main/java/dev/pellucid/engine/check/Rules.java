package dev.pellucid.engine.check;

import java.util.List;

/** Every rule, in the order in which they look. */
public final class Rules {
  public static final List<Rule> ALL = List.of();

  private Rules() {}
}
