package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedLines.BoundContext;
import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.Bound.Limit;
import dev.pellucid.syntax.Bound.Side;
import dev.pellucid.syntax.Numeral;
import java.util.ArrayList;
import java.util.List;

/** The min and the max of a line. */
final class Bounds {
  private final Pieces pieces;

  Bounds(Pieces pieces) {
    this.pieces = pieces;
  }

  /** A line whose bounds measure what is expected; a ratio's may be bare. */
  OnLine onLine(Expected expected, boolean mayBeBare) {
    return new OnLine(expected, mayBeBare);
  }

  /** Gathers the bounds of one line, each side once. */
  final class OnLine {
    private final Expected expected;
    private final boolean mayBeBare;
    private final List<Bound> bounds = new ArrayList<>(2);

    private OnLine(Expected expected, boolean mayBeBare) {
      this.expected = expected;
      this.mayBeBare = mayBeBare;
    }

    List<Bound> bounds() {
      return bounds;
    }

    void add(BoundContext context) {
      Side side = context.side.getType() == FeedTokens.MIN ? Side.MIN : Side.MAX;
      Bound bound = new Bound(side, limit(context), pieces.span(context));
      for (Bound other : bounds) {
        if (other.side() == side) {
          pieces.say(Complaints.boundTwice(side.word(), bound.span(), other.span()));
        }
      }
      bounds.add(bound);
    }

    private Limit limit(BoundContext context) {
      if (context.unit == null) {
        Numeral number = pieces.numeral(context.number);
        if (!mayBeBare) {
          pieces.say(Complaints.unitMissing(number));
        }
        return new Limit.Bare(number);
      }
      Amount amount = pieces.amount(context.number, context.unit);
      pieces.check(amount, expected);
      return new Limit.Measured(amount);
    }
  }
}
