package dev.pellucid.engine.figures;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.measure.Closeness;

/**
 * How a feed stands with one limit: {@code crude-protein 34.12 % | min 34 % in 95 % of batches |
 * kept, 0.12 points of room | CG-36}. The figure is the one that is judged, in the unit of the
 * bound in force, or what is told of it where only a bound of the rest breaks it; room is what is
 * left to that bound.
 */
final class LimitLine {
  /** How a feed stands with a limit, in a word. */
  enum Word {
    KEPT("kept"),
    AS_TOLD("kept as told"),
    WAIVED("waived"),
    NOT_JUDGED("not judged"),
    BEYOND_GUIDANCE("beyond guidance"),
    BROKEN("BROKEN");

    private final String text;

    Word(String text) {
      this.text = text;
    }

    String text() {
      return text;
    }
  }

  private final Held held;
  private final int decimals;

  private LimitLine(Held held) {
    this.held = held;
    this.decimals = decimals(held.shown(), held.bound());
  }

  static FactLine of(Held held) {
    LimitLine line = new LimitLine(held);
    return FactLine.of(
        held.subject(),
        line.figure() + held.unit().written(),
        held.demand().asked(),
        line.standing(),
        held.demand().by());
  }

  /** Four digits that count, and more where it takes them to see on which side a figure lies. */
  private static int decimals(double judged, double bound) {
    int enough = Figures.decimals(judged);
    return Closeness.same(judged, bound) ? enough : Figures.apart(judged, bound, enough).decimals();
  }

  private String figure() {
    return held.certainty().sign()
        + (held.shown() == 0 ? "0" : Figures.fixed(held.shown(), decimals));
  }

  static Word word(Held held) {
    return switch (held.state()) {
      case KEPT -> Word.KEPT;
      case KEPT_AS_TOLD -> Word.AS_TOLD;
      case KEPT_BY_WAIVER, KEPT_AS_TOLD_BY_WAIVER -> Word.WAIVED;
      case BROKEN, BROKEN_BY_OVERAGE ->
          held.demand().kind() == Limit.Kind.GUIDANCE ? Word.BEYOND_GUIDANCE : Word.BROKEN;
      case CONTENT_NOT_TOLD, LOSS_NOT_TOLD, CONTENT_AND_LOSS_NOT_TOLD, FEED_NOT_TOLD ->
          Word.NOT_JUDGED;
    };
  }

  private String standing() {
    Word word = word(held);
    String waiver =
        held.demand()
            .waivedUntil()
            .map(day -> "to " + held.demand().inForce() + " until " + day)
            .orElse("");
    String waived = waiver.isEmpty() ? "" : ", waived " + waiver;
    return word.text()
        + switch (word) {
          case BROKEN, BEYOND_GUIDANCE -> " by " + room() + waived;
          case WAIVED -> " " + waiver + left();
          case KEPT, AS_TOLD -> waived.isEmpty() ? left() + batches() : waived;
          case NOT_JUDGED -> waived;
        };
  }

  private String left() {
    String room = room();
    return room.isEmpty() ? held.bound() == 0 ? "" : ", no room" : ", " + room + " of room";
  }

  private String batches() {
    String batches = held.batches();
    return batches.isEmpty() ? "" : ", " + batches;
  }

  /**
   * Between the figure and the bound in force, no finer than the figure is printed; empty for none.
   */
  private String room() {
    double room = Math.abs(held.left());
    return room <= Closeness.to(held.bound())
        ? ""
        : Figures.fixed(room, Math.min(decimals, Figures.decimals(room))) + held.unit().ofParts();
  }
}
