package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.leastcost.FoundFeeds.Case;
import dev.pellucid.engine.leastcost.Reasons.FigureMove;
import dev.pellucid.syntax.Bound;
import java.util.List;
import org.junit.jupiter.api.Test;

class FigureMovesTest {
  @Test
  void whatAFeedWithoutFishMealLosesIsTold() {
    Case one = FoundFeeds.of("catfish/CG-36.recipe", Wishes.NONE);
    List<FigureMove> moves = FigureMoves.of(one.posed().recipe(), one.found().feed());
    FigureMove marine =
        moves.stream().filter(it -> it.name().startsWith("inclusion ")).findFirst().orElseThrow();
    assertEquals(16, marine.now(), 1e-9);
    assertEquals(1 + FoundFeeds.share(one.found(), "fish-meal-65"), marine.then(), 1e-9);
  }

  @Test
  void nothingIsToldThatHasALimitOnThatSide() {
    for (Case one : FoundFeeds.ofExample()) {
      for (FigureMove move : FigureMoves.of(one.posed().recipe(), one.found().feed())) {
        Bound.Side side = move.then() > move.now() ? Bound.Side.MAX : Bound.Side.MIN;
        for (LimitStatus status : one.posed().recipe().limits()) {
          assertFalse(
              status.limit().side() == side && status.limit().subject().text().equals(move.name()),
              () -> one + " " + move);
        }
      }
    }
  }

  @Test
  void nothingMovesOfAFeedThatStays() {
    Case one = FoundFeeds.of("catfish/CG-36.recipe", Wishes.NONE);
    assertTrue(
        FigureMoves.of(one.posed().recipe(), one.posed().recipe().feed().orElseThrow()).isEmpty());
  }
}
