package dev.pellucid.engine.goal;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.outcome.CompareJson;
import dev.pellucid.engine.report.CompareHtml;
import dev.pellucid.engine.report.CompareMarkdown;
import dev.pellucid.engine.report.CompareText;
import dev.pellucid.text.PrintedPaths;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Tells what a change of a folder does to its feeds. */
public final class CompareGoal {
  private CompareGoal() {}

  /**
   * Compares two states.
   *
   * @param paths how files are called for scripts
   * @param day judges waivers and prices of both
   * @param fullAt where a reader of the short form finds the full one
   */
  public static CompareReport of(
      Texts from, Texts to, PrintedPaths paths, LocalDate day, String fullAt) {
    ComparedState before = ComparedState.of(from, day);
    ComparedState after = ComparedState.of(to, day);
    Comparison comparison =
        Comparison.of(
            notices(before, after), before.byCode(), after.byCode(), new TakenBack(before, after));
    String currency = after.currency();
    return new CompareReport(
        comparison,
        new CompareText(currency).text(comparison),
        new CompareMarkdown(currency, fullAt).text(comparison),
        new CompareHtml(currency).text(comparison),
        CompareJson.of(comparison, currency, paths));
  }

  private static List<String> notices(ComparedState before, ComparedState after) {
    List<String> notices = new ArrayList<>();
    before.doubt().ifPresent(doubt -> notices.add("NOT TO BE TRUSTED, before: " + doubt));
    after.doubt().ifPresent(doubt -> notices.add("NOT TO BE TRUSTED, now: " + doubt));
    if (!before.currency().equals(after.currency())) {
      notices.add(
          "the currency was "
              + before.currency()
              + " and is "
              + after.currency()
              + ": costs are not the same money");
    }
    return notices;
  }
}
