package dev.pellucid.engine.figures;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Certainty;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;

/**
 * How a feed stands with one limit: {@code crude-protein 34.12 % | min 34 % in 95 % of batches |
 * kept, 0.12 points of room | CG-36}. The figure is the one that is judged, in the unit of the
 * bound in force, or what is told of it where only a bound of the rest breaks it; room is what is
 * left to that bound.
 */
final class LimitLine {
  private static final double CLOSE = 1e-9;

  /** How a feed stands with a limit, in a word. */
  enum Word {
    KEPT("kept"),
    AS_TOLD("kept as told"),
    WAIVED("waived"),
    NOT_JUDGED("not judged"),
    BROKEN("BROKEN");

    private final String text;

    Word(String text) {
      this.text = text;
    }

    String text() {
      return text;
    }
  }

  private final LimitStatus status;
  private final Limit limit;
  private final Bound.Limit written;
  private final Certainty certainty;
  private final double judged;
  private final double inForce;
  private final int decimals;

  private LimitLine(LimitStatus status) {
    Verdict verdict = status.verdict();
    this.status = status;
    this.limit = verdict.limit();
    this.written = limit.writtenInForce();
    this.certainty = verdict.shown().certainty();
    this.judged = written.fromBase(verdict.shown().figure());
    this.inForce = written.fromBase(limit.inForce());
    this.decimals = decimals(judged, inForce);
  }

  static FactLine of(LimitStatus status) {
    LimitLine line = new LimitLine(status);
    return FactLine.of(
        line.limit.subject().text(),
        line.figure() + line.written.unitAsWritten(),
        line.limit.demand().asked(),
        line.standing(),
        line.limit.origin().name());
  }

  /** Four digits that count, and more where it takes them to see on which side a figure lies. */
  private static int decimals(double judged, double bound) {
    int enough = Figures.decimals(judged);
    boolean same = Math.abs(judged - bound) <= CLOSE * Math.abs(bound);
    return same ? enough : Figures.apart(judged, bound, enough).decimals();
  }

  private String figure() {
    return certainty.sign() + (judged == 0 ? "0" : Figures.fixed(judged, decimals));
  }

  static Word word(LimitStatus status) {
    return switch (status.state()) {
      case KEPT -> Word.KEPT;
      case KEPT_AS_TOLD -> Word.AS_TOLD;
      case KEPT_BY_WAIVER, KEPT_AS_TOLD_BY_WAIVER -> Word.WAIVED;
      case BROKEN, BROKEN_BY_OVERAGE -> Word.BROKEN;
      case CONTENT_NOT_TOLD, LOSS_NOT_TOLD, CONTENT_AND_LOSS_NOT_TOLD -> Word.NOT_JUDGED;
    };
  }

  private String standing() {
    Word word = word(status);
    String waiver =
        limit
            .waiver()
            .map(one -> "to " + one.written().asWritten() + " until " + one.until())
            .orElse("");
    String waived = waiver.isEmpty() ? "" : ", waived " + waiver;
    return word.text()
        + switch (word) {
          case BROKEN -> " by " + room() + waived;
          case WAIVED -> " " + waiver + left();
          case KEPT, AS_TOLD -> waived.isEmpty() ? left() : waived;
          case NOT_JUDGED -> waived;
        };
  }

  private String left() {
    String room = room();
    return room.isEmpty() ? inForce == 0 ? "" : ", no room" : ", " + room + " of room";
  }

  /**
   * Between the figure and the bound in force, no finer than the figure is printed; empty for none.
   */
  private String room() {
    double room = Math.abs(judged - inForce);
    boolean none = room <= CLOSE * Math.abs(inForce);
    return none
        ? ""
        : Figures.fixed(room, Math.min(decimals, Figures.decimals(room))) + written.unitOfParts();
  }
}
