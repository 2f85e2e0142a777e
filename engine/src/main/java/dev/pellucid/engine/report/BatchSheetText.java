package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;

/** The batch sheet as plain text; lines end in {@code \n}. */
public final class BatchSheetText {
  private BatchSheetText() {}

  /** The whole sheet. */
  public static String of(BatchPlan plan) {
    return new TextPage().render(BatchSheet.of(plan));
  }
}
