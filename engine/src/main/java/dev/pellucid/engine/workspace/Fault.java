package dev.pellucid.engine.workspace;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;

/** A fault of this program, told to a person who cannot fix it. */
public final class Fault {
  /** The code of such a finding. */
  public static final Code CODE = new Code("fault-of-pellucid");

  private Fault() {}

  static Finding finding(SourceFile file, Throwable fault) {
    return Finding.error(
            CODE,
            file.beginning(),
            "a fault of pellucid, and none of yours, kept this file from being checked")
        .noting("it broke with " + fault.getClass().getSimpleName())
        .helping("take back what was changed last in this file, and check again")
        .helping("run the goal with -X and send what it prints to those who look after pellucid");
  }
}
