package dev.pellucid.engine.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.judge.LimitStatus.State;
import dev.pellucid.engine.outside.Cooked;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Half of one meal and half of another. Parts of batches are those of a table of the normal
 * distribution: 69.15 % lie up to half a deviation above the mean, 84.13 % up to one, 97.72 % up to
 * two.
 */
class KeptTogetherTest {
  private static final double HALF = 0.6915;
  private static final double ONE = 0.8413;
  private static final double TWO = 0.9772;

  /** Of so many batches; where lucks meet by chance, two points. */
  private static final double NEAR = 0.02;

  /** Where one luck alone decides, the steps fall as the table says. */
  private static final double EXACT = 0.0006;

  private static final String HALVES = "mix\n  one  50 %\n  other  50 %\n";

  private static Cooked cooked(String one, String other) {
    return new Cooked()
        .ingredient("one", "moisture: 10 %, " + one)
        .ingredient("other", "moisture: 10 %" + (other.isEmpty() ? "" : ", ") + other);
  }

  private static KeptTogether of(String one, String other, String limits) {
    return together(cooked(one, other).feed(HALVES + "limits\n  " + limits + "\n"));
  }

  private static KeptTogether together(ComputedFeed feed) {
    return KeptTogether.of(feed, Judge.limits(feed));
  }

  /** 40 ± 2 % and 20 ± 0 % make 30 ± 1 %. */
  @Test
  void oneLuckOfOneLimit() {
    String one = "crude-protein: 40 ± 2 %";
    String other = "crude-protein: 20 ± 0 %";
    assertEquals(0.5, of(one, other, "crude-protein min 30 %").all(), EXACT);
    assertEquals(HALF, of(one, other, "crude-protein min 29.5 %").all(), EXACT);
    assertEquals(ONE, of(one, other, "crude-protein min 29 %").all(), EXACT);
    assertEquals(TWO, of(one, other, "crude-protein max 32 %").all(), EXACT);
    assertEquals(1, of(one, other, "crude-protein max 34 %").all());
  }

  /** 3 and 4 tenths of a percent are half a percent together: 30 ± 0.5 %. */
  @Test
  void twoIngredientsMoveApart() {
    KeptTogether kept =
        of("crude-protein: 40 ± 0.6 %", "crude-protein: 20 ± 0.8 %", "crude-protein min 29.5 %");
    assertEquals(ONE, kept.all(), NEAR);
    assertEquals(kept.all(), kept.limits().get(0).kept());
  }

  @Test
  void theSameLimitTwiceIsOne() {
    ComputedFeed feed =
        cooked("crude-protein: 40 ± 0.6 %", "crude-protein: 20 ± 0.8 %")
            .feed(HALVES + "limits\n  crude-protein  min 29.5 %\n");
    LimitStatus limit = Judge.limits(feed).get(0);
    KeptTogether once = KeptTogether.of(feed, List.of(limit));
    KeptTogether twice = KeptTogether.of(feed, List.of(limit, limit));
    assertEquals(once.all(), twice.all());
    assertEquals(2, twice.limits().size());
  }

  /** Two contents of one ingredient, each by itself. */
  @Test
  void limitsOfTheirOwnLuckMultiply() {
    KeptTogether kept =
        of(
            "crude-protein: 40 ± 2 %, crude-fat: 10 ± 2 %",
            "crude-protein: 20 ± 0 %, crude-fat: 10 ± 0 %",
            "crude-protein  min 29 %\n  crude-fat  max 10.5 %");
    assertEquals(ONE * HALF, kept.all(), NEAR);
    assertEquals(ONE, kept.limits().get(0).kept(), EXACT);
    assertEquals(HALF, kept.limits().get(1).kept(), EXACT);
    assertEquals("crude-fat", kept.failsMost().orElseThrow().status().limit().subject().text());
  }

  /** A batch that is too poor is not too rich, and the other way round: what fails adds up. */
  @Test
  void limitsShareTheirLuck() {
    KeptTogether kept =
        of(
            "crude-protein: 40 ± 2 %",
            "crude-protein: 20 ± 0 %", "crude-protein  min 29 %  max 30.5 %");
    assertEquals(1 - (1 - ONE) - (1 - HALF), kept.all(), EXACT);
  }

  /** 90 % of the protein of one meal is digested: a batch that keeps the one keeps the other. */
  @Test
  void whatFollowsFromOneContentSharesItsLuck() {
    Cooked pantry = cooked("crude-protein: 40 ± 2 %", "crude-protein: none");
    pantry.with(
        "ingredients/one.yaml",
        """
        name: one
        groups: []
        form: meal
        contents:
          - source: workshop
            moisture: 10 %
            crude-protein: 40 ± 2 %
        digestibility:
          - source: workshop
            crude-protein: 90 %
        """);
    KeptTogether kept =
        together(
            pantry.feed(
                "  species  african-catfish\n"
                    + HALVES
                    + "process\n  blend  time  10 min\nlimits\n  crude-protein  min 19 %\n"
                    + "  digestible-protein  min 17.55 %\n"));
    assertEquals(ONE, kept.limits().get(0).kept(), EXACT);
    assertEquals(HALF, kept.limits().get(1).kept(), EXACT);
    assertEquals(HALF, kept.all(), EXACT);
  }

  /** Calcium and phosphorus of 2 ± 0.2 % over 1 ± 0 %: the quotient of what is drawn. */
  @Test
  void aRatioIsTheQuotientOfWhatIsDrawn() {
    String other = "calcium: none, phosphorus: none";
    String limit = "calcium : phosphorus min 1.9";
    assertEquals(HALF, of("calcium: 2 ± 0.2 %, phosphorus: 1 ± 0 %", other, limit).all(), EXACT);
    // 2 over 1 ± 0.1 is at least 1.9 while the phosphorus is up to 1.0526, 0.526 deviations.
    assertEquals(
        Normal.below(1 / 0.95 / 0.1 - 10),
        of("calcium: 2 ± 0 %, phosphorus: 1 ± 0.1 %", other, limit).all(),
        EXACT);
  }

  @Test
  void aLimitThatTheFeedBreaksOnAverageMakesItZero() {
    KeptTogether kept =
        of(
            "crude-protein: 40 ± 2 %, crude-fat: 10 ± 2 %",
            "crude-protein: 20 ± 0 %, crude-fat: 10 ± 0 %",
            "crude-protein  min 30.5 %\n  crude-fat  max 10.5 %");
    assertEquals(0, kept.all());
    assertEquals(1 - HALF, kept.limits().get(0).kept(), EXACT);
    assertEquals("crude-protein", kept.failsMost().orElseThrow().status().limit().subject().text());
  }

  @Test
  void aLimitInBatchesCountsByItsBareBound() {
    KeptTogether kept =
        of(
            "crude-protein: 40 ± 2 %",
            "crude-protein: 20 ± 0 %", "crude-protein  min 29 %  in 95 % of batches");
    assertEquals(State.BROKEN, kept.limits().get(0).status().state());
    assertEquals(ONE, kept.all(), EXACT);
  }

  @Test
  void whatIsWeighedDoesNotVary() {
    String contents = "crude-protein: 40 ± 2 %";
    assertEquals(1, of(contents, "crude-protein: 20 %", "inclusion one  max 50 %").all());
    KeptTogether broken = of(contents, "crude-protein: 20 %", "inclusion one  max 49 %");
    assertEquals(0, broken.all());
    assertEquals(0, broken.limits().get(0).kept());
    assertTrue(
        of(contents, "crude-protein: 20 %", "inclusion one  max 50 %").failsMost().isEmpty());
  }

  /** 2 mg/kg are told; of the rest only the ash of its meal bounds how much there may be. */
  @Test
  void whatCannotBeJudgedIsLeftOutAndTold() {
    KeptTogether kept =
        of("crude-ash: 1 %, selenium: 4 mg/kg", "crude-ash: 0.01 %", "selenium max 3 mg/kg");
    assertEquals(1, kept.all());
    assertEquals(List.of(), kept.limits());
    assertEquals(State.CONTENT_NOT_TOLD, kept.notJudged().get(0).state());
  }

  /**
   * 12 ± 1 % and 8 ± 0 % make 10 ± 0.5 %; out of a dryer the feed holds what the dryer is set to.
   */
  @Test
  void waterThatIsDriedAwayDoesNotCount() {
    Cooked pantry =
        new Cooked()
            .ingredient("one", "moisture: 12 ± 1 %")
            .ingredient("other", "moisture: 8 ± 0 %");
    String limits = "limits\n  moisture  max 10.5 %\n";
    assertEquals(ONE, together(pantry.feed(HALVES + limits)).all(), EXACT);
    String dried = "process\n  add-water  on-mix  5 %\n  dry  moisture  10 %\n";
    assertEquals(1, together(pantry.feed(HALVES + dried + limits)).all());
  }

  /**
   * 10 kg of 10 ± 1 mg/kg in 100 kg are 1 ± 0.1 mg/kg. With one kg on top there are 110 mg in 101
   * kg: 1.0891 ± 0.1089 mg/kg, of which 84 % are below 1.198.
   */
  @Test
  void aMaximumTakesAllHandlingOverage() {
    Cooked pantry =
        new Cooked()
            .ingredient("meal", "moisture: 10 %, selenium: none")
            .ingredient("spice", "moisture: 10 %, selenium: 10 ± 1 mg/kg");
    String lines =
        "mix\n  meal  90 %\n  spice  10 %\noverage\n  spice  10 %  for handling\nlimits\n";
    assertEquals(ONE, together(pantry.feed(lines + "  selenium max 1.198 mg/kg\n")).all(), 0.001);
    assertEquals(ONE, together(pantry.feed(lines + "  selenium min 0.9 mg/kg\n")).all(), EXACT);
  }

  /** The lots of what stays are the same, whatever else goes in. */
  @Test
  void theSameLotsMeetInAnotherFeed() {
    Cooked pantry =
        cooked("crude-protein: 40 ± 0.6 %", "crude-protein: 20 ± 0.8 %")
            .ingredient("third", "moisture: 10 %, crude-protein: none");
    String limits = "limits\n  crude-protein  min %s %%\n";
    KeptTogether two = together(pantry.feed(HALVES + limits.formatted("29.5")));
    KeptTogether three =
        together(
            pantry.feed(
                "mix\n  third  50 %\n  other  25 %\n  one  25 %\n" + limits.formatted("14.75")));
    assertEquals(two.all(), three.all());
    assertEquals(two.all(), together(pantry.feed(HALVES + limits.formatted("29.5"))).all());
  }
}
