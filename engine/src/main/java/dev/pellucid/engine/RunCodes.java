package dev.pellucid.engine;

import dev.pellucid.finding.Code;
import java.util.List;

/** Codes of what a run says that no rule and no reader says. */
public final class RunCodes {
  private static final List<Code> ALL = List.of(Shown.MORE, FixedDay.CODE);

  private RunCodes() {}

  public static List<Code> all() {
    return ALL;
  }
}
