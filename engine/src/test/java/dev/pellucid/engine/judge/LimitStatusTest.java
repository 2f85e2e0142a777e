package dev.pellucid.engine.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.judge.LimitStatus.State;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.measure.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Half of one meal and half of another, so few contents that each figure is reckoned in the head:
 * every way in which a feed can stand with a limit, at the bound and just beyond it.
 */
class LimitStatusTest {
  private static final String HALVES = "mix\n  one  50 %\n  other  50 %\n";

  private static LimitStatus status(Cooked pantry, String lines) {
    List<LimitStatus> limits = Judge.limits(pantry.feed(lines));
    assertEquals(1, limits.size());
    return limits.get(0);
  }

  private static LimitStatus of(String one, String other, String limit) {
    Cooked pantry =
        new Cooked()
            .ingredient("one", "moisture: 10 %, " + one)
            .ingredient("other", "moisture: 10 %" + (other.isEmpty() ? "" : ", ") + other);
    return status(pantry, HALVES + "limits\n  " + limit + "\n");
  }

  /** 40 % and 20 % make 30 %; what is within 1e-9 of a bound keeps it. */
  @ParameterizedTest
  @CsvSource({
    "min 30 %, KEPT",
    "min 30.00000001 %, KEPT",
    "min 30.0000001 %, BROKEN",
    "max 30 %, KEPT",
    "max 29.99999999 %, KEPT",
    "max 29.9999999 %, BROKEN",
  })
  void allIsTold(String bound, State expected) {
    LimitStatus status = of("crude-protein: 40 %", "crude-protein: 20 %", "crude-protein " + bound);
    assertEquals(expected, status.state());
    assertEquals(0.3, status.verdict().judged(), 1e-12);
    assertEquals(0.3, status.expected().value(), 1e-12);
    assertTrue(status.state().isJudged());
  }

  @Test
  void roomIsBelowZeroBeyondTheBound() {
    LimitStatus kept = of("crude-protein: 40 %", "crude-protein: 20 %", "crude-protein min 28 %");
    assertEquals(0.02, kept.verdict().room(), 1e-12);
    assertEquals(Scenario.POOREST, kept.verdict().end());
    LimitStatus broken = of("crude-protein: 40 %", "crude-protein: 20 %", "crude-protein max 28 %");
    assertEquals(-0.02, broken.verdict().room(), 1e-12);
    assertEquals(Scenario.RICHEST, broken.verdict().end());
  }

  /** Of a sum of two, 2 % and 0 % make 1 %; 1.644854 times of it is asked for on top. */
  @Test
  void confidenceIsAMargin() {
    String limit = "crude-protein  min 28 %  in 95 % of batches";
    LimitStatus status = of("crude-protein: 40 ± 2 %", "crude-protein: 20 ± 0 %", limit);
    assertEquals(-0.01644854, status.verdict().margin(), 1e-8);
    assertEquals(0.3 - 0.01644854, status.verdict().judged(), 1e-8);
    assertEquals(0.3, status.expected().value(), 1e-12);
    assertEquals(State.KEPT, status.state());
  }

  private static LimitStatus waived(String contents, String limit, String waiver) {
    Cooked pantry =
        new Cooked()
            .ingredient("one", "moisture: 10 %, " + contents)
            .ingredient("other", "moisture: 10 %");
    return status(
        pantry,
        HALVES
            + ("limits\n  " + limit + "\nwaivers\n  " + waiver)
            + "  until 2027-03-31  by \"the shop\"  because \"of the season\"\n");
  }

  /** 2000 IU are told of a vitamin that nothing bounds where it is not told. */
  @ParameterizedTest
  @CsvSource({
    "1999, 2000, KEPT_AS_TOLD_BY_WAIVER",
    "2000, 2100, KEPT_AS_TOLD",
    "1900, 1999, BROKEN",
  })
  void nothingBoundsWhatIsNotToldAndAWaiverHelpsOrNot(
      String written, String waiver, State expected) {
    LimitStatus status =
        waived(
            "vitamin-d3: 4000 IU/kg",
            "vitamin-d3  max " + written + " IU/kg",
            "vitamin-d3  max " + waiver + " IU/kg");
    assertEquals(expected, status.state());
    assertEquals(expected == State.KEPT_AS_TOLD_BY_WAIVER, status.isLetPass());
  }

  /** 20 % are there; a minimum of 30 % is waived. */
  @ParameterizedTest
  @CsvSource({
    "30, 20, KEPT_BY_WAIVER, BROKEN",
    "30, 20.1, BROKEN, BROKEN",
    "20, 15, KEPT, KEPT",
    "20.1, 15, KEPT_BY_WAIVER, BROKEN",
  })
  void aWaiver(String written, String waiver, State expected, State without) {
    LimitStatus status =
        waived(
            "crude-protein: 40 %",
            "crude-protein  min " + written + " %", "crude-protein  min " + waiver + " %");
    assertEquals(expected, status.state());
    assertEquals(without, status.asWritten().state());
    assertEquals(expected == State.KEPT_BY_WAIVER, status.isLetPass());
    assertTrue(status.asWritten().limit().waiver().isEmpty());
    assertEquals(status.verdict().reading(), status.asWritten().verdict().reading());
  }

  @Test
  void withoutWaiversEachStandsAsItWasWritten() {
    Cooked pantry = new Cooked().ingredient("meal", "moisture: 10 %, crude-protein: 20 %");
    Judgement judgement =
        Judgement.ofLimits(
            pantry.feed(
                """
                mix
                  meal  100 %
                limits
                  crude-protein  min 30 %
                  moisture       max 11 %
                waivers
                  crude-protein  min 20 %  until 2027-03-31  by "the shop"  because "a trial"
                """));
    assertEquals(List.of(State.KEPT_BY_WAIVER, State.KEPT), states(judgement));
    assertEquals(List.of(State.BROKEN, State.KEPT), states(judgement.withoutWaivers()));
  }

  private static List<State> states(Judgement judgement) {
    return judgement.limits().stream().map(LimitStatus::state).toList();
  }

  /** What cannot be judged without its waiver is kept by it and let pass by nobody. */
  @Test
  void aWaiverOfWhatCannotBeJudged() {
    LimitStatus status = waived("selenium: 4 mg/kg", "selenium  max 3 mg/kg", "selenium  max 90 %");
    assertEquals(State.KEPT_BY_WAIVER, status.state());
    assertEquals(State.CONTENT_NOT_TOLD, status.asWritten().state());
    assertFalse(status.isLetPass());
  }

  /** 10 kg of 10 mg/kg in 100 kg are 1 mg/kg; with one kg on top 110 mg in 101 kg. */
  @ParameterizedTest
  @CsvSource({
    "1.0892, KEPT",
    "1.0891, BROKEN_BY_OVERAGE",
    "1, BROKEN_BY_OVERAGE",
    "0.9999, BROKEN",
  })
  void overage(String max, State expected) {
    Cooked pantry =
        new Cooked()
            .ingredient("meal", "moisture: 10 %, selenium: none")
            .ingredient("spice", "moisture: 10 %, selenium: 10 mg/kg");
    LimitStatus status =
        status(
            pantry,
            "mix\n  meal  90 %\n  spice  10 %\noverage\n  spice  10 %  for handling\n"
                + ("limits\n  selenium  max " + max + " mg/kg\n"));
    assertEquals(expected, status.state());
    assertEquals(Unit.MG_PER_KG.toBase(110.0 / 101), status.verdict().judged(), 1e-15);
    assertEquals(expected == State.BROKEN_BY_OVERAGE, status.withoutOverage().isPresent());
    status.withoutOverage().ifPresent(lost -> assertEquals(Unit.MG_PER_KG.toBase(1), lost, 1e-15));
  }

  /** 2 mg/kg are told; of the rest only the ash of its meal bounds how much there may be. */
  @ParameterizedTest
  @CsvSource({
    "1.9999, BROKEN",
    "2, CONTENT_NOT_TOLD",
    "51.9999, CONTENT_NOT_TOLD",
    "52, KEPT",
  })
  void aBoundOfAContentThatIsNotTold(String max, State expected) {
    LimitStatus status =
        of(
            "crude-ash: 1 %, selenium: 4 mg/kg",
            "crude-ash: 0.01 %", "selenium  max " + max + " mg/kg");
    assertEquals(expected, status.state());
    assertEquals(expected == State.CONTENT_NOT_TOLD, status.state().hangsOnContent());
    assertFalse(status.state().hangsOnLoss());
  }

  /** What is not told can only help a minimum, and counts as nothing there. */
  @Test
  void aMinimumOfWhatIsNotToldIsBroken() {
    assertEquals(State.BROKEN, of("selenium: 4 mg/kg", "", "selenium min 2.1 mg/kg").state());
    assertEquals(State.KEPT, of("selenium: 4 mg/kg", "", "selenium min 2 mg/kg").state());
  }

  /**
   * The store is warmer than the last row of the table, so that nothing is told of what it leaves.
   */
  @ParameterizedTest
  @CsvSource({
    "vitamin-c  min 100 mg/kg, LOSS_NOT_TOLD",
    "vitamin-c  min 100.001 mg/kg, BROKEN",
    "vitamin-c  max 100 mg/kg, KEPT",
    "vitamin-c  max 99.999 mg/kg, BROKEN",
    "vitamin-c + zinc : selenium  min 10, CONTENT_AND_LOSS_NOT_TOLD",
    "vitamin-c + zinc : selenium  min 10.001, LOSS_NOT_TOLD",
    "zinc : selenium  min 10, CONTENT_NOT_TOLD",
    "zinc : selenium  min 10.001, BROKEN",
  })
  void aLossThatIsNotTold(String limit, State expected) {
    Cooked pantry =
        new Cooked()
            .ingredient(
                "one",
                "moisture: 10 %, crude-ash: 1 %, zinc: 40 mg/kg, selenium: 4 mg/kg,"
                    + " vitamin-c: 200 mg/kg")
            .ingredient("other", "moisture: 10 %, crude-ash: 1 mg/kg, zinc: none, vitamin-c: none");
    LimitStatus status =
        status(
            pantry,
            HALVES
                + ("limits\n  " + limit + "\n")
                + "process\n  store  shelf-life  60 d\n  store  temperature  45 °C\n");
    assertEquals(expected, status.state());
    assertEquals(
        expected == State.LOSS_NOT_TOLD || expected == State.CONTENT_AND_LOSS_NOT_TOLD,
        status.state().hangsOnLoss());
  }

  @Test
  void noneIsBornThatContradictsItself() {
    LimitStatus kept = of("crude-protein: 40 %", "crude-protein: 20 %", "crude-protein min 28 %");
    OptionalDouble none = OptionalDouble.empty();
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new LimitStatus(kept.verdict(), kept.readings(), State.BROKEN, none, Optional.empty()));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new LimitStatus(kept.verdict(), kept.readings(), State.KEPT, none, Optional.of(kept)));
  }
}
