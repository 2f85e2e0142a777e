package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** {@code or none} in other words, at another place, or without the range it belongs to. */
final class NoneForm implements Slip {
  static final Code CODE = new Code("none-form");

  private static final String MODEL = "within 2 to 10 % or none";
  private static final Set<String> NONE =
      Set.of("none", "nothing", "zero", "nil", "null", "no", "not", "out", "optional", "absent");

  /** What may stand between the parts of the phrase without a meaning of its own. */
  private static final Set<String> BESIDE =
      Set.of("within", "to", "or", "and", "between", "from", "either", "at", "all", "be");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    int from = ShareTail.start(line);
    if (from < 0) {
      return Optional.empty();
    }
    for (int i = from; i < line.size(); i++) {
      if (isNone(line, i)) {
        return isRight(line, i) ? Optional.empty() : Optional.of(finding(line, from, i));
      }
    }
    return bareOr(line, from);
  }

  private static boolean isNone(BrokenLine line, int at) {
    if (line.is(at, Kind.NUMBER)) {
      boolean zero = new BigDecimal(line.at(at).text()).signum() == 0;
      boolean before = line.is(at + 1, "or") || (line.is(at + 1, "%") && line.is(at + 2, "or"));
      return zero && !line.is(at - 1, "to") && (line.is(at - 1, "or") || before);
    }
    return line.is(at, Kind.WORD) && NONE.contains(lower(line, at));
  }

  /** As it is to be, so that something else is wrong with the line. */
  private static boolean isRight(BrokenLine line, int none) {
    int within = none - 2;
    while (within > 0 && !line.is(within, "within") && !line.is(within, "step")) {
      within--;
    }
    return line.is(none, "none")
        && line.is(none - 1, "or")
        && (line.is(none - 2, Kind.UNIT)
            || (line.is(none - 2, Kind.NUMBER) && !line.is(none + 1, Kind.UNIT)))
        && line.is(within, "within");
  }

  private static Finding finding(BrokenLine line, int from, int none) {
    boolean strange = isStrange(line, none - 1) && line.is(none - 2, Kind.UNIT);
    int first = line.is(none - 1, "or") || strange ? none - 1 : none;
    int last = line.is(none, Kind.NUMBER) && line.is(none + 1, Kind.UNIT) ? none + 1 : none;
    Span said = line.through(first, last);
    boolean same = line.is(none, "none") && !strange;
    Loose range = Loose.of(line, from, none, strange);
    if (range.isEmpty()) {
      return Finding.error(CODE, said, said.text() + " has no range before it")
          .helping("write how far the share may move, and or none behind it: " + MODEL)
          .helping("a share that is always zero is no line: put # before it");
    }
    Finding finding =
        Finding.error(
            CODE,
            said,
            same
                ? "or none stands behind the range and its unit"
                : "a share that may also be zero is written or none, not " + said.text());
    return range.isWhole()
        ? finding
            .helping("write " + range.right(line))
            .fixing(line.through(range.first, range.last), range.right(line))
        : finding.helping("for example: " + MODEL);
  }

  /** An {@code or} behind a whole range that nothing, or another figure, follows. */
  private static Optional<Finding> bareOr(BrokenLine line, int from) {
    for (int i = from; i < line.size(); i++) {
      if (line.is(i, "or") && line.is(i - 1, Kind.UNIT)) {
        boolean ends = i + 1 == line.size() || line.is(i + 1, "step");
        boolean near = !ends && !NearNames.of(line.at(i + 1).text(), List.of("none")).isEmpty();
        Span said = line.through(i, near ? i + 1 : i);
        Finding finding = Finding.error(CODE, said, "or is followed by none, and by nothing else");
        if (ends || near) {
          return Optional.of(finding.helping("write or none").fixing(said, "or none"));
        }
        return Optional.of(
            finding
                .helping("for example: " + MODEL + "; a share moves within one range")
                .helping("leave it out where the share is never zero"));
      }
    }
    return Optional.empty();
  }

  /** A word that cannot stand beside the phrase, as a slip of {@code or} may be. */
  private static boolean isStrange(BrokenLine line, int at) {
    return line.is(at, Kind.WORD) && !BESIDE.contains(lower(line, at));
  }

  private static String lower(BrokenLine line, int at) {
    return line.at(at).text().toLowerCase(Locale.ROOT);
  }

  /** The range of a line, wherever its parts stand, with the words for none among them. */
  private static final class Loose {
    private int first;
    private int last;
    private int numbers;
    private String low = "";
    private String high = "";
    private String unit = "";
    private boolean clear = true;
    private int stepAt = -1;

    /**
     * @param strange whether the word before that for none is let pass
     */
    static Loose of(BrokenLine line, int from, int none, boolean strange) {
      Loose range = new Loose();
      range.first = none;
      range.last = none;
      for (int i = from; i < line.size(); i++) {
        if (line.is(i, "step") && line.is(i + 1, Kind.NUMBER) && line.is(i + 2, Kind.UNIT)) {
          range.stepAt = i;
          i += 2;
        } else if (!strange || i != none - 1) {
          range.take(line, i, none);
        }
      }
      return range;
    }

    private void take(BrokenLine line, int i, int none) {
      first = Math.min(first, i);
      last = Math.max(last, i);
      if (line.is(i, Kind.NUMBER)) {
        if (i != none) {
          low = numbers == 0 ? line.at(i).text() : low;
          high = line.at(i).text();
          numbers++;
        }
      } else if (line.is(i, Kind.UNIT) || line.is(i, "%,")) {
        String read = line.is(i, "%,") ? "%" : line.at(i).text();
        clear &= unit.isEmpty() || unit.equals(read);
        unit = read;
      } else {
        clear &= BESIDE.contains(lower(line, i)) || NONE.contains(lower(line, i));
      }
    }

    boolean isEmpty() {
      return numbers == 0;
    }

    boolean isWhole() {
      return clear && numbers == 2 && !unit.isEmpty();
    }

    /** With the step behind it, where that stood between its parts. */
    String right(BrokenLine line) {
      String phrase = "within " + low + " to " + high + " " + unit + " or none";
      return stepAt < first || stepAt > last
          ? phrase
          : phrase + "  " + line.through(stepAt, stepAt + 2).text();
    }
  }
}
