package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.Reading;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.plan.Expectation.Held;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.engine.resolve.Waiver;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Groups limits by what they are about. Cost has no place on the floor, and an inclusion is no
 * analysis; both stay out.
 */
public final class Expectations {
  private Expectations() {}

  /** What is told of a feed by its limits, in their order. */
  public static List<Expectation> of(List<LimitStatus> limits) {
    Map<String, List<LimitStatus>> bySubject = new LinkedHashMap<>();
    for (LimitStatus status : limits) {
      Subject subject = status.limit().subject();
      if (!subject.nutrients().isEmpty()) {
        String key = subject.text() + status.limit().basis().words();
        bySubject.computeIfAbsent(key, none -> new ArrayList<>()).add(status);
      }
    }
    return bySubject.values().stream().map(Expectations::expectation).toList();
  }

  private static Expectation expectation(List<LimitStatus> group) {
    Limit first = group.get(0).limit();
    Reading reading = group.get(0).expected();
    Bound.Limit written = first.writtenInForce();
    return new Expectation(
        first.subject().title(),
        first.basis().words(),
        written.unit(),
        written.fromBase(reading.value()),
        reading.certainty(),
        group.stream().map(Expectations::held).toList());
  }

  private static Held held(LimitStatus status) {
    Verdict verdict = status.verdict();
    Limit limit = status.limit();
    Bound.Limit written = limit.writtenInForce();
    return new Held(
        limit.side().word() + " " + written.asWritten() + batches(limit),
        written.fromBase(verdict.judged()),
        written.fromBase(verdict.shown().figure()),
        verdict.shown().certainty(),
        written.fromBase(limit.inForce()),
        written.unit(),
        limit.origin().kind().word(),
        limit.origin().name(),
        limit.waiver().map(Waiver::until),
        verdict.keeps());
  }

  private static String batches(Limit limit) {
    return limit.inBatches().isPresent()
        ? " in " + Figures.plain(limit.inBatches().getAsDouble(), Unit.PERCENT) + " of batches"
        : "";
  }

  /** The limits that another stands in for. */
  static List<Waived> waived(List<LimitStatus> limits) {
    return limits.stream()
        .map(LimitStatus::limit)
        .flatMap(limit -> limit.waiver().stream().map(waiver -> waived(limit, waiver)))
        .toList();
  }

  private static Waived waived(Limit limit, Waiver waiver) {
    String side = limit.side().word() + " ";
    return new Waived(
        limit.subject().title() + limit.basis().words(),
        side + waiver.written().asWritten(),
        side + limit.written().asWritten(),
        waiver.until(),
        waiver.by(),
        waiver.because());
  }
}
