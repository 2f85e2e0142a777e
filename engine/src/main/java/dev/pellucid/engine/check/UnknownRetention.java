package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.RetentionGap;
import dev.pellucid.engine.compute.Retentions;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A step for which the folder does not say what it leaves of a stability class. A warning while all
 * minima are kept even if nothing is left; an error where one hangs on it.
 */
final class UnknownRetention implements Rule {
  private static final Code CODE = new Code("unknown-retention");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isConsequence() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (recipe.feed().isPresent() && !recipe.feed().get().retentionGaps().isEmpty()) {
      look(recipe, recipe.feed().get(), out);
    }
  }

  /** One finding for each step and temperature, however many classes it concerns. */
  private static void look(RuleContext recipe, ComputedFeed feed, Consumer<Finding> out) {
    Map<String, List<RetentionGap>> byStep = new LinkedHashMap<>();
    for (RetentionGap gap :
        feed.retentionGaps().stream().filter(gap -> !saidMissing(gap)).toList()) {
      byStep.computeIfAbsent(step(gap) + gap.span().place(), key -> new ArrayList<>()).add(gap);
    }
    List<LimitStatus> unjudged =
        recipe.limits().stream().filter(status -> status.state().hangsOnLoss()).toList();
    Retentions retentions = new Retentions(recipe.tables().practice());
    for (List<RetentionGap> same : byStep.values()) {
      List<String> classes =
          same.stream().map(RetentionGap::stability).distinct().sorted().toList();
      List<String> minima =
          unjudged.stream()
              .map(status -> status.limit().subject())
              .filter(subject -> hangs(subject, feed, retentions, classes))
              .map(Subject::text)
              .distinct()
              .toList();
      out.accept(finding(same.get(0), classes, minima));
    }
  }

  /** A dryer may go without a temperature; of every other step that heats it was asked for. */
  private static boolean saidMissing(RetentionGap gap) {
    return gap.temperature().isEmpty() && !gap.step().equals(Step.DRY.word());
  }

  /** Whether some ingredient brings it in a form of one of these classes. */
  private static boolean hangs(
      Subject subject, ComputedFeed feed, Retentions retentions, List<String> classes) {
    return subject.raisedBy().stream()
        .anyMatch(
            one ->
                feed.rows().stream()
                    .map(row -> row.composition().stability().get(one.index()))
                    .flatMap(stability -> retentions.at(stability).stream())
                    .anyMatch(retention -> classes.contains(retention.stability())));
  }

  private static String step(RetentionGap gap) {
    return gap.step()
        + gap.temperature()
            .map(told -> " at " + Figures.plain(told) + " °C")
            .orElse(" without a temperature");
  }

  private static Finding finding(RetentionGap gap, List<String> classes, List<String> minima) {
    int more = classes.size() - 1;
    String headline =
        "what "
            + step(gap)
            + " leaves of "
            + classes.get(0)
            + (more > 0 ? " and " + more + " more" : "")
            + " is not given";
    Finding finding =
        minima.isEmpty()
            ? Finding.warning(CODE, gap.span(), headline)
            : Finding.error(
                    CODE,
                    gap.span(),
                    headline
                        + ", so "
                        + (minima.size() > 1 ? minima.size() + " minima" : "a minimum")
                        + " cannot be judged")
                .noting("not judged: " + String.join(", ", minima));
    return finding
        .noting("minima count none of it as left, maxima all of it: " + String.join(", ", classes))
        .helping(
            gap.temperature().isPresent()
                ? "add rows up to this temperature to practice/retention.yaml, or take less heat"
                : "add the line: " + gap.step() + " temperature 60 °C")
        .about(new About(gap.step(), About.Side.NONE, classes));
  }
}
