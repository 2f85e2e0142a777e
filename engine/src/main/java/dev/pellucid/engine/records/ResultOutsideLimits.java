package dev.pellucid.engine.records;

import dev.pellucid.engine.check.LimitWords;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Since;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.trend.Measured;
import dev.pellucid.engine.trend.MeasuredBatch;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What a laboratory found of a batch is beyond a limit of its recipe: each result by itself, held
 * against the limit as it is written, also where that asks for a part of all batches only. Of
 * several limits on one figure the gravest is told, and the others with it.
 *
 * <p>As soon as somebody has decided in the knowledge of it, it is no error any more: of what was
 * rejected or called back nothing is said, and of what was let go with a reason only what is beyond
 * the law.
 */
final class ResultOutsideLimits {
  static final Code CODE = new Code("result-outside-limits");

  private final BatchRecord record;
  private final ComputedFeed ordered;
  private final Optional<String> jurisdiction;
  private final List<Measured> measured;

  /**
   * Of one record.
   *
   * @param ordered the feed by which it was made, with its limits
   * @param jurisdiction of the folder
   * @param measured what was found of it beside what was expected, by which slips show
   */
  ResultOutsideLimits(
      BatchRecord record,
      ComputedFeed ordered,
      Optional<String> jurisdiction,
      Optional<MeasuredBatch> measured) {
    this.record = record;
    this.ordered = ordered;
    this.jurisdiction = jurisdiction;
    this.measured = measured.map(MeasuredBatch::figures).orElse(List.of());
  }

  void look(Consumer<Finding> out) {
    if (record.isRejected()) {
      return;
    }
    for (Since.Result result : record.since().results()) {
      if (!LabResults.isBefore(result, record)) {
        look(result, out);
      }
    }
  }

  private void look(Since.Result result, Consumer<Finding> out) {
    SampleMoisture moisture =
        SampleMoisture.of(record, result, ordered, it -> isSlip(Nutrients.MOISTURE, it));
    Map<String, List<FoundFigure>> bySubject = new LinkedHashMap<>();
    for (Limit limit : ordered.recipe().limits()) {
      FoundFigure.of(limit, result.found(), moisture)
          .filter(FoundFigure::isBeyond)
          .filter(one -> isLaw(limit) || !isSlip(limit, result))
          .ifPresent(
              one ->
                  bySubject
                      .computeIfAbsent(limit.demand().about(), none -> new ArrayList<>())
                      .add(one));
    }
    boolean released = isReleasedSince(result);
    for (List<FoundFigure> beyond : bySubject.values()) {
      FoundFigure first = gravest(beyond);
      if (!released || isLaw(first.limit())) {
        out.accept(finding(result, first, beyond));
      }
    }
  }

  private static boolean isLaw(Limit limit) {
    return limit.origin().kind() == Limit.Kind.LAW;
  }

  private static FoundFigure gravest(List<FoundFigure> beyond) {
    for (FoundFigure one : beyond) {
      if (isLaw(one.limit())) {
        return one;
      }
    }
    return beyond.get(0);
  }

  /** Whether the figure with its point moved would be what was expected; this is told already. */
  private boolean isSlip(String nutrient, Content content) {
    return measured.stream()
        .filter(one -> one.what().ofLaboratory() && one.name().equals(nutrient))
        .anyMatch(one -> ResultOff.isSlip(one, content.low()));
  }

  private boolean isSlip(Limit limit, Since.Result result) {
    for (Nutrient nutrient : limit.subject().nutrients()) {
      Content content = result.found().get(nutrient.name());
      if (content != null && isSlip(nutrient.name(), content)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it was let go, with the reason, on the day of the result or later. */
  private boolean isReleasedSince(Since.Result result) {
    return Inside.isDecided(record, result.signed().day())
        || record
            .release()
            .filter(it -> it.decision() == Decision.RELEASED && !it.because().isEmpty())
            .flatMap(BatchRecord.Release::day)
            .filter(day -> !day.isBefore(result.signed().day()))
            .isPresent();
  }

  private Finding finding(Since.Result result, FoundFigure first, List<FoundFigure> beyond) {
    Limit limit = first.limit();
    LimitWords words = new LimitWords(limit);
    Finding finding =
        Finding.of(
                CODE,
                severity(result, limit),
                first.at().place(),
                "found in "
                    + record.number()
                    + ": "
                    + limit.subject().text()
                    + (first.at().isBound() ? " below " : " ")
                    + words.against(jurisdiction, first.figure(), limit.basis().words()))
            .seeing("limit written", limit.origin().span());
    if (first.moisture().isPresent()) {
      finding = finding.noting(first.moisture().get().words());
    }
    for (FoundFigure other : beyond) {
      if (!other.equals(first)) {
        Limit its = other.limit();
        finding =
            finding.noting(
                "beyond " + its.demand().lineNow() + " of " + its.origin().name() + " too");
      }
    }
    return helped(finding, result, limit)
        .about(
            new About(
                limit.subject().text(),
                limit.side() == Bound.Side.MIN ? About.Side.MIN : About.Side.MAX,
                List.of(record.number())));
  }

  private Severity severity(Since.Result result, Limit limit) {
    if (record.isHeld() || isReleasedSince(result)) {
      return Severity.NOTE;
    }
    return isLaw(limit) ? Severity.ERROR : Severity.WARNING;
  }

  private Finding helped(Finding finding, Since.Result result, Limit limit) {
    Finding told = finding;
    if (record.isHeld()) {
      told = told.helping("the batch is held: decide what becomes of it");
    } else if (isReleasedSince(result)) {
      told = told.noting("it was released all the same, with a reason");
    } else {
      told =
          told.helping(
              "hold what is left of "
                  + record.number()
                  + ", and write decided-later: with on-hold"
                  + (isLaw(limit) ? "" : ", or with released and the reason"));
    }
    told =
        told.helping(
            "mvn pellucid:recall -Dpellucid.batch=" + record.number() + " says who has it");
    return isLaw(limit)
        ? told.helping("local law may ask that the authority is told at once: ask it")
        : told;
  }
}
