package dev.pellucid.engine.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SmallFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Amounts that cannot be: each is told once, on its own line, and none in silence. */
class SlipsOfAmountTest {
  private static final String LIMITS = "limits\n  crude-fat  max 20 %\n";

  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void twoMeals() throws IOException {
    folder =
        new SmallFolder(root)
            .ingredient("rich", "moisture: 10 %, crude-protein: 40 %, crude-fat: 10 %, zinc: 9 %")
            .ingredient("lean", "moisture: 12 %, crude-protein: 10 %, crude-fat: 2 %");
  }

  @Test
  void aSecondCarrierWithRestDoesNotPushTheFirstOut() throws IOException {
    folder
        .with("PM.premix", premix("10 g/kg", "  lean  rest\n  rich  rest\n"))
        .recipe("mix\n  lean  99 %\n  PM  1 %\n" + LIMITS);
    assertEquals(List.of("two-rests"), folder.codes());
  }

  @Test
  void aDoseOfNothingIsNoDose() throws IOException {
    folder
        .with("PM.premix", premix("0 g/kg", "  lean  rest\n"))
        .recipe("mix\n  lean  99 %\n  PM  1 %\n" + LIMITS);
    assertEquals(List.of("dose-missing"), folder.codes());
  }

  @Test
  void aBatchOfNothingIsToldAndDividesNothing() throws IOException {
    folder.recipe("  batch  0 kg weighed\nmix\n  rich  50 %\n  lean  50 %\n" + LIMITS);
    assertEquals(List.of("figure-out-of-bounds"), folder.codes());
  }

  @Test
  void aMissingBatchIsAskedForOnceHoweverManyLinesNeedIt() throws IOException {
    String mix = "mix\n  rich  50 %\n  lean  50 %\n";
    folder.recipe(mix + "overage\n  lines below 60 %  2 g per weighing  for handling\n" + LIMITS);
    assertEquals(List.of("overage-needs-batch"), folder.codes());
  }

  @Test
  void aBatchThatCouldNotBeReadIsNotMissing() throws IOException {
    String mix = "mix\n  rich  50 %\n  lean  50 %\n";
    folder.recipe(
        "  batch  60 KG weighed\n"
            + mix
            + "overage\n  rich  2 g per weighing  for handling\n"
            + LIMITS);
    assertEquals(List.of("unit-spelling"), folder.codes());
  }

  @Test
  void whatDecaysIsNotToldPerWeighing() throws IOException {
    String mix = "  batch  60 kg weighed\nmix\n  rich  50 %\n  lean  rest\n";
    folder.recipe(mix + "overage\n  rich  2 g per weighing  for stability\n" + LIMITS);
    assertEquals(List.of("stability-per-weighing"), folder.codes());
  }

  @Test
  void overageForStabilityChangesNothingOnTheRestAndThatIsSaid() throws IOException {
    String mix = "mix\n  rich  50 %\n  lean  rest\n";
    folder.recipe(mix + "overage\n  lean  5 %  for stability\n" + LIMITS);
    assertEquals(
        "overage for stability changes nothing on the rest: it gives way to that of others",
        folder.findings().get(0).headline());
    folder.recipe(mix + "overage\n  lines below 60 %  5 %  for stability\n" + LIMITS);
    assertEquals(List.of(), folder.codes());
  }

  @Test
  void aSecondOverageOfOneLineForOnePurposeIsNotDroppedInSilence() throws IOException {
    String mix = "mix\n  rich  50 %\n  lean  50 %\noverage\n  rich  1 %  for handling\n";
    folder.recipe(mix + "  rich  9 %  for handling\n" + LIMITS);
    assertEquals(List.of("listed-twice"), folder.codes());
    folder.recipe(mix + "  lean  9 %  for handling\n" + LIMITS);
    assertEquals(List.of(), folder.codes());
  }

  @Test
  void aTotalThatHoldsOverageForStabilityNeedsNoFreedom() throws IOException {
    String mix = "mix\n  rich  50 %\n  lean  45 %\noverage\n  rich  10 %  for stability\n";
    folder.recipe(mix + LIMITS);
    assertEquals(List.of(), folder.codes());
  }

  @Test
  void anOldNameStandsInOverageAndInclusionToo() throws IOException {
    String mix = "mix\n  lean  100 %\noverage\n  old-lean  1 %  for handling\nlimits\n";
    folder
        .with(
            "ingredients/lean.yaml",
            """
            name: lean
            formerly: [old-lean]
            groups: []
            form: meal
            contents:
              - source: workshop
                moisture: 12 %
            """)
        .recipe(mix + "  inclusion old-lean  max 40 %\n");
    assertEquals(List.of("above-maximum", "renamed"), folder.codes());
  }

  @Test
  void aLimitInAnotherUnitIsNeitherLooserNorAContradiction() throws IOException {
    folder
        .with(
            "own.limits",
            """
            profile own
              kind    need
              source  workshop

            limits
              crude-protein  min 35.1 %
              zinc           max 150.1 mg/kg
            """)
        .ingredient("lean", "moisture: 12 %, crude-protein: 40 %, zinc: 20 mg/kg")
        .recipe(
            """
              meets  own
            mix
              lean  100 %
            limits
              crude-protein  min 351 g/kg
              zinc           max 0.01501 %
            """);
    assertEquals(List.of(), folder.codes());
    folder.recipe("  meets  own\nmix\n  lean  100 %\nlimits\n  crude-protein  min 350.9 g/kg\n");
    assertTrue(folder.codes().contains("looser-than-profile"));
  }

  private static String premix(String dose, String carrier) {
    return "premix PM\n  dose  "
        + dose
        + "\nsupply\n  zinc  100 mg/kg  from rich\ncarrier\n"
        + carrier;
  }
}
