package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.Set;

/** The step of a share in other words, or as a range. */
final class StepForm implements Slip {
  static final Code CODE = new Code("step-form");

  private static final Set<String> STEP =
      Set.of("step", "steps", "step-size", "increment", "increments", "multiple", "multiples");
  private static final Set<String> BEFORE = Set.of("in", "by", "with", "at", "a");
  private static final Set<String> BEHIND = Set.of("of", "by", "in", "is");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    int from = ShareTail.start(line);
    for (int i = from; from >= 0 && i < line.size(); i++) {
      if (line.is(i, Kind.WORD) && STEP.contains(line.at(i).text())) {
        return finding(line, from, i);
      }
    }
    return Optional.empty();
  }

  private static Optional<Finding> finding(BrokenLine line, int from, int step) {
    int first = step;
    while (first > from && BEFORE.contains(line.at(first - 1).text())) {
      first--;
    }
    int size = step + 1;
    while (size < line.size() && BEHIND.contains(line.at(size).text())) {
      size++;
    }
    if (line.is(size, Kind.NUMBER)) {
      int last = line.is(size + 1, Kind.UNIT) ? size + 1 : size;
      if (line.is(last + 1, "to")) {
        return Optional.of(range(line, first));
      }
      boolean right = first == step && size == step + 1 && line.is(step, "step");
      return right ? Optional.empty() : Optional.of(other(line, first, size, last));
    }
    return isSizeBefore(line, from, first)
        ? Optional.of(turned(line, first, size))
        : Optional.empty();
  }

  /** The {@code 0.5 % step} that is no end of a range. */
  private static boolean isSizeBefore(BrokenLine line, int from, int first) {
    return first - 2 >= from
        && line.is(first - 1, Kind.UNIT)
        && line.is(first - 2, Kind.NUMBER)
        && !line.is(first - 3, "to")
        && !line.is(first - 3, "or")
        && !line.is(first - 3, "within");
  }

  private static Finding range(BrokenLine line, int first) {
    return Finding.error(
            CODE, line.through(first, line.size() - 1), "a step is one size, and no range")
        .helping("write of what the share is a whole multiple, for example: step 0.5 %")
        .helping("how far the share may move is said by within, for example: within 2 to 10 %");
  }

  private static Finding other(BrokenLine line, int first, int size, int last) {
    String unit = last > size ? line.at(last).text() : "%";
    return finding(line.through(first, last), line.at(size).text(), unit);
  }

  private static Finding turned(BrokenLine line, int first, int size) {
    Span span = line.through(first - 2, size - 1);
    return finding(span, line.at(first - 2).text(), line.at(first - 1).text());
  }

  private static Finding finding(Span span, String size, String unit) {
    String right = "step " + size + " " + unit;
    return Finding.error(CODE, span, "a step is written " + right)
        .helping("write " + right)
        .fixing(span, right);
  }
}
