package dev.pellucid.engine.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Tolerance;
import dev.pellucid.engine.judge.LabelVerdict.Outcome;
import dev.pellucid.engine.outside.Cooked;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A feed of 30 % protein and its label, by the rules of the pantry: above 24 % a declaration may
 * promise 3 points too much and 3 too little, of which 60 % are granted as rounding.
 */
class LabelClaimTest {
  private static LabelVerdict claim(String other, String claim) {
    Cooked pantry =
        new Cooked()
            .ingredient("one", "moisture: 10 %, crude-protein: 40 %, lysine: 2 %")
            .ingredient("other", "moisture: 10 %" + other);
    ComputedFeed feed = pantry.feed("mix\n  one  50 %\n  other  50 %\nlabel\n  " + claim + "\n");
    List<LabelVerdict> claims = Judgement.of(feed, pantry.tables()).claims();
    assertEquals(1, claims.size());
    return claims.get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "30 %, KEPT, BELOW",
    "31.8 %, KEPT, BELOW",
    "31.81 %, SPENDS, BELOW",
    "33 %, SPENDS, BELOW",
    "33.01 %, BEYOND, BELOW",
    "28.2 %, KEPT, BELOW",
    "28.19 %, SPENDS, ABOVE",
    "27 %, SPENDS, ABOVE",
    "26.99 %, BEYOND, ABOVE",
    "min 30 %, KEPT, BELOW",
    "min 30.01 %, SPENDS, BELOW",
    "min 33.01 %, BEYOND, BELOW",
    "max 30 %, KEPT, ABOVE",
    "max 29.99 %, SPENDS, ABOVE",
    "max 26.99 %, BEYOND, ABOVE",
  })
  void ofWhatIsTold(String said, Outcome outcome, Tolerance.Side side) {
    LabelVerdict verdict = claim(", crude-protein: 20 %", "crude-protein  " + said);
    assertEquals(outcome, verdict.outcome());
    assertEquals(side, verdict.side());
    assertEquals(0.3, verdict.figure(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"1 %, NO_TOLERANCE", "min 1 %, KEPT", "min 1.1 %, BEYOND"})
  void withoutATolerance(String said, Outcome outcome) {
    assertEquals(outcome, claim(", lysine: none", "lysine  " + said).outcome());
  }

  /** 20 % are told; the other meal could bring all that is missing. */
  @ParameterizedTest
  @CsvSource({"20 %, CANNOT_TELL", "30 %, CANNOT_TELL", "min 20 %, KEPT", "max 16.9 %, BEYOND"})
  void ofWhatIsNotTold(String said, Outcome outcome) {
    assertEquals(outcome, claim("", "crude-protein  " + said).outcome());
  }
}
