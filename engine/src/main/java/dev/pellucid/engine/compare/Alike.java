package dev.pellucid.engine.compare;

/** Whether two feeds come out the same, without making a list of all that is different. */
public final class Alike {
  private Alike() {}

  /** As {@link Effect#isNone} of the effect between them: the first difference ends it. */
  public static boolean are(FeedFigures was, FeedFigures is) {
    return Effect.costs(was.account(), is.account()).isEmpty()
        && Effect.shares(was.account().shares(), is.account().shares()).isEmpty()
        && Effect.moved(was.account(), is.account()).isEmpty()
        && Turns.bounds(was.account().limits(), is.account().limits()).isEmpty()
        && Effect.prices(was.account().unpriced(), is.account().unpriced()).isEmpty()
        && noLimitTurned(was, is)
        && Effect.waivers(was, is).isEmpty()
        && Effect.label(was, is).isEmpty()
        && Effect.reprint(was, is).isEmpty()
        && Effect.weights(was.weighings(), is.weighings()).isEmpty()
        && Effect.portions(was.weighings(), is.weighings()).isEmpty();
  }

  private static boolean noLimitTurned(FeedFigures was, FeedFigures is) {
    return Turns.of(was, is, Turns::isBroken).isEmpty()
        && Turns.of(was, is, Turns::isMet).isEmpty()
        && Turns.of(was, is, Turns::isByWaiver).isEmpty()
        && Turns.of(was, is, Turns::isTight).isEmpty()
        && Turns.of(was, is, Turns::isUntold).isEmpty()
        && Turns.of(was, is, Turns::isMoved).isEmpty();
  }
}
