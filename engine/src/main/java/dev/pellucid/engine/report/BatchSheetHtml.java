package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;

/** The batch sheet as one HTML file that prints on A4 in black and white; it loads nothing. */
public final class BatchSheetHtml {
  private BatchSheetHtml() {}

  /** The whole file, to be written as UTF-8. */
  public static String of(BatchPlan plan) {
    return new HtmlPage()
        .render("Batch sheet " + plan.number().orElse(plan.code()), BatchSheet.of(plan));
  }
}
