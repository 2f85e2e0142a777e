package dev.pellucid.engine.goal;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.RecipeState;
import dev.pellucid.engine.compare.Standing;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.outcome.CompareJson;
import dev.pellucid.engine.report.CompareHtml;
import dev.pellucid.engine.report.CompareMarkdown;
import dev.pellucid.engine.report.CompareText;
import dev.pellucid.text.PrintedPaths;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

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
    ComparedState after = ComparedState.ruled(to, day);
    Comparison comparison = comparison(from, after, Optional.empty());
    String currency = after.currency();
    // Each form is made by itself, so that they can be made side by side.
    List<Supplier<String>> forms =
        List.of(
            () -> new CompareHtml(currency).text(comparison),
            () -> CompareJson.of(comparison, currency, paths),
            () -> new CompareText(currency).text(comparison),
            () -> new CompareMarkdown(currency, fullAt).text(comparison));
    List<String> made = forms.parallelStream().map(Supplier::get).toList();
    return new CompareReport(
        comparison, currency, made.get(2), made.get(3), made.get(0), made.get(1));
  }

  /**
   * What is different where recipes alone were edited, in no form; nothing else can have moved one,
   * so no cause is sought.
   *
   * @param edited their paths
   */
  static Comparison ofEdited(Texts from, Texts to, Set<String> edited, LocalDate day) {
    return comparison(from, ComparedState.ruled(to, day), Optional.of(new Edited(edited)));
  }

  /** Recipes that were edited, each the cause of its own change. */
  private record Edited(Set<String> differing) implements Comparison.Causes {
    @Override
    public String note() {
      return "";
    }

    @Override
    public List<RecipeChange.Cause> of(RecipeState before, RecipeState after) {
      return List.of();
    }
  }

  private static Comparison comparison(
      Texts from, ComparedState after, Optional<Comparison.Causes> causes) {
    Standing now = after.standing();
    // What came of the later state by then is not worked out again.
    ComparedState before = after.other(from);
    return Comparison.of(
        notices(before, after),
        before.standing(),
        now,
        causes.orElseGet(() -> new TakenBack(before, after)));
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
