package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.WaiverLine;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Puts waivers in the place of the limits they name, while their day lasts. A waiver without a day,
 * a name or a reason, or of law, replaces nothing; that a day is none the parser has said.
 */
final class Waivers {
  static final Code EXPIRED = new Code("waiver-expired");
  static final Code UNUSED = new Code("waiver-unused");
  static final Code INCOMPLETE = new Code("waiver-incomplete");
  static final Code OF_LAW = new Code("law-not-waived");
  static final Code TWICE = new Code("waiver-twice");
  static final Code LONG = new Code("waiver-long");

  /** What is let pass for longer than a season's quarter is no exception any more. */
  private static final int LONGEST_DAYS = 90;

  private final Limits names;
  private final LocalDate day;
  private final List<Finding> findings;

  Waivers(Limits names, LocalDate day, List<Finding> findings) {
    this.names = names;
    this.day = day;
    this.findings = findings;
  }

  List<Limit> applied(List<WaiverLine> lines, List<Limit> limits) {
    List<Limit> now = new ArrayList<>(limits);
    for (WaiverLine line : lines) {
      Optional<Subject> subject = names.subject(line.left());
      Optional<LocalDate> until = until(line, inForceAgain(subject, line, now));
      if (subject.isPresent() && until.isPresent() && complete(line)) {
        line.bounds().forEach(bound -> apply(line, subject.get(), bound, until.get(), now));
      }
    }
    return now;
  }

  private boolean complete(WaiverLine line) {
    if (line.by().isPresent() && line.because().isPresent()) {
      return true;
    }
    String missing = line.by().isEmpty() ? "name" : "reason";
    findings.add(
        Finding.error(
                INCOMPLETE,
                line.left().span(),
                "the waiver for " + line.left().text() + " has no " + missing)
            .helping("end it with: by \"quality manager\" because \"why it is safe\""));
    return false;
  }

  private static List<Limit> inForceAgain(
      Optional<Subject> subject, WaiverLine line, List<Limit> limits) {
    return limits.stream()
        .filter(limit -> subject.stream().anyMatch(s -> s.text().equals(limit.subject().text())))
        .filter(limit -> line.bounds().stream().anyMatch(b -> b.side() == limit.side()))
        .filter(limit -> limit.basis().equals(Limits.basis(line.basis())))
        .toList();
  }

  private Optional<LocalDate> until(WaiverLine line, List<Limit> inForceAgain) {
    if (line.until().isEmpty()) {
      findings.add(
          Finding.error(
                  INCOMPLETE,
                  line.left().span(),
                  "the waiver for " + line.left().text() + " has no last day")
              .helping("say until when: until 2027-03-31"));
      return Optional.empty();
    }
    String written = line.until().get().text();
    try {
      LocalDate until = LocalDate.parse(written);
      if (!until.isBefore(day)) {
        if (isLong(until)) {
          findings.add(tooLong(line, written));
        }
        return Optional.of(until);
      }
      Finding expired =
          Finding.error(
                  EXPIRED,
                  line.until().get().span(),
                  "the waiver for "
                      + line.left().text()
                      + " ended on "
                      + written
                      + ", today is "
                      + day)
              .helping("meet the limit again, or have the waiver renewed by someone who may");
      for (Limit limit : inForceAgain) {
        expired = expired.seeing("the limit that holds again", limit.origin().span());
      }
      findings.add(expired);
    } catch (DateTimeException saidByTheParser) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  /** As it is written, on no day, nothing is far off. */
  private boolean isLong(LocalDate until) {
    return !day.equals(Days.AS_WRITTEN.waivers()) && until.isAfter(day.plusDays(LONGEST_DAYS));
  }

  private Finding tooLong(WaiverLine line, String written) {
    return Finding.warning(
            LONG,
            line.until().orElseThrow().span(),
            "the waiver for "
                + line.left().text()
                + " lasts until "
                + written
                + ", more than "
                + LONGEST_DAYS
                + " days from today, "
                + day)
        .noting(
            "what is allowed for so long is no exception any more, and nobody looks at it again")
        .helping("end it by " + day.plusDays(LONGEST_DAYS) + " and have it renewed if it must be")
        .helping("or change the limit itself, where it is its owner's to change");
  }

  private static Finding twice(WaiverLine line, Bound bound, Waiver first) {
    return Finding.error(
            TWICE,
            line.left().span().through(bound.span()),
            line.left().text()
                + " "
                + bound.side().word()
                + " is waived twice, and "
                + first.written().asWritten()
                + " counts")
        .seeing("first waived", first.span())
        .helping("keep the one that was granted, and take the other out");
  }

  private void apply(
      WaiverLine line, Subject subject, Bound bound, LocalDate until, List<Limit> now) {
    OptionalDouble base = names.base(subject, bound);
    if (base.isEmpty()) {
      return;
    }
    Waiver waiver =
        new Waiver(
            base.getAsDouble(),
            bound.limit(),
            until,
            line.by().orElseThrow().text(),
            line.because().orElseThrow().text(),
            line.left().span().through(bound.span()));
    Basis basis = Limits.basis(line.basis());
    boolean used = false;
    Optional<Waiver> again = Optional.empty();
    List<Limit> passed = new ArrayList<>();
    for (int i = 0; i < now.size(); i++) {
      Limit limit = now.get(i);
      if (!limit.subject().text().equals(subject.text()) || limit.side() != bound.side()) {
        continue;
      }
      if (limit.waiver().isPresent() && limit.basis().equals(basis)) {
        used = true;
        again = limit.waiver();
      } else if (limit.origin().kind() != Limit.Kind.LAW && limit.basis().equals(basis)) {
        now.set(i, waived(limit, waiver));
        used = true;
      } else {
        passed.add(limit);
      }
    }
    if (again.isPresent()) {
      findings.add(twice(line, bound, again.get()));
    }
    if (!used) {
      boolean law = passed.stream().anyMatch(limit -> limit.origin().kind() == Limit.Kind.LAW);
      findings.add(law ? ofLaw(line) : unused(line, bound, basis, passed));
    }
  }

  private static Limit waived(Limit limit, Waiver waiver) {
    return new Limit(
        limit.subject(),
        limit.side(),
        limit.bound(),
        limit.written(),
        limit.basis(),
        limit.inBatches(),
        limit.origin(),
        Optional.of(waiver));
  }

  private static Finding ofLaw(WaiverLine line) {
    return Finding.error(
            OF_LAW,
            line.left().span(),
            line.left().text() + " is bounded by law, and law cannot be waived")
        .helping("take the waiver out and keep the legal limit");
  }

  private static Finding unused(WaiverLine line, Bound bound, Basis basis, List<Limit> passed) {
    String waived = "the waiver for " + line.left().text() + " " + bound.side().word();
    if (passed.isEmpty()) {
      return Finding.warning(
              UNUSED,
              line.left().span(),
              waived + " replaces nothing, the recipe has no such limit")
          .helping("take it out, or name the limit as its profile does");
    }
    Limit limit = passed.get(0);
    return Finding.warning(
            UNUSED,
            line.left().span(),
            waived + " replaces nothing, the limit stands " + limit.basis().name())
        .labelled("told " + basis.name())
        .seeing("limit written", limit.origin().span())
        .helping("give the figure on the basis of the limit, and write that basis");
  }
}
