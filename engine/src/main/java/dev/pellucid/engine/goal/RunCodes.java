package dev.pellucid.engine.goal;

import dev.pellucid.engine.workspace.Causes;
import dev.pellucid.engine.workspace.Fault;
import dev.pellucid.engine.workspace.LostSections;
import dev.pellucid.engine.workspace.OwnTellsLess;
import dev.pellucid.engine.workspace.PastRecords;
import dev.pellucid.engine.workspace.Shown;
import dev.pellucid.finding.Code;
import java.util.List;

/** Codes of what a run says that no rule and no reader says. */
public final class RunCodes {
  private static final List<Code> ALL =
      List.of(
          Shown.MORE,
          FixedDay.CODE,
          Fault.CODE,
          Causes.CODE,
          Causes.FORGOTTEN,
          LostSections.CODE,
          OwnTellsLess.CODE,
          PastRecords.NOT_JUDGED,
          PastRecords.UNLIKE,
          PastRecords.WITHOUT_COMMIT,
          PastRecords.CHANGED);

  private RunCodes() {}

  public static List<Code> all() {
    return ALL;
  }
}
