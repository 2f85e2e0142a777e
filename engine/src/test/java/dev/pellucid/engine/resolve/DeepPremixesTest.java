package dev.pellucid.engine.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Premixes in premixes: as deep as is made, and as deep as only a machine writes. */
class DeepPremixesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void oneMeal() throws IOException {
    folder = new SmallFolder(root).ingredient("lean", "moisture: 12 %, crude-protein: 10 %");
    folder.ingredient("other", "moisture: 10 %, crude-protein: 20 %");
  }

  @Test
  void eightInEachOtherAreMade() throws IOException {
    chain(8);
    feedWith("P-1");
    assertEquals(List.of(), folder.codes());
    assertTrue(sheets().withheld().isEmpty());
  }

  @Test
  void nineAreOneFindingThatNamesTheWay() throws IOException {
    chain(9);
    feedWith("P-1");
    Finding finding = folder.findings().get(0);
    assertEquals(List.of("premix-too-deep"), folder.codes());
    assertEquals(
        "premixes stand in each other 9 deep, at most 8: "
            + "P-1 > P-2 > P-3 > P-4 > P-5 > P-6 > P-7 > P-8 > P-9",
        finding.headline());
    assertTrue(finding.span().place().endsWith("P-1.premix:3:3"), finding.span().place());
    assertEquals(List.of("A-1", "P-1"), sheets().withheld().stream().sorted().toList());
  }

  /** Once 2,000 were too deep for the sheets and 3,000 for the check, and 300 took long. */
  @Test
  void thousandsInAChainAreOneFindingAndTakeNoTime() throws IOException {
    chain(3000);
    feedWith("P-1");
    assertTimeout(
        Duration.ofSeconds(60), () -> assertEquals(List.of("premix-too-deep"), folder.codes()));
    assertTrue(sheets().withheld().contains("A-1"));
  }

  @Test
  void thousandsInACircleAreOneFindingThatCanBeRead() throws IOException {
    chain(3000);
    folder.with("P-3000.premix", premix("P-3000", "P-1"));
    Finding finding = folder.findings().get(0);
    assertEquals(List.of("premix-cycle"), folder.codes());
    assertTrue(finding.headline().length() < 200, finding.headline());
    assertTrue(finding.headline().contains(" > 2990 more > "), finding.headline());
  }

  /** Ten in each of ten, five times over: 100,000 ingredients out of 41 files. */
  @Test
  void wideAndDeepIsTooManyIngredients() throws IOException {
    for (int level = 1; level <= 5; level++) {
      for (int one = 0; one < 10; one++) {
        StringBuilder text =
            new StringBuilder("premix L" + level + "-" + one + "\nmix\n  lean 1 %\n");
        for (int part = 0; part < 10 && level < 5; part++) {
          text.append("  L").append(level + 1).append('-').append(part).append(" 5 %\n");
        }
        folder.with(
            "L" + level + "-" + one + ".premix", text.append("carrier\n  other rest\n").toString());
      }
    }
    List<String> codes = folder.codes();
    assertTrue(codes.stream().allMatch("premix-too-deep"::equals), codes.toString());
    assertEquals(10, codes.size());
  }

  /** The file to be fixed is the one that the finding is in, not one that holds it. */
  @Test
  void whatHoldsOneThatIsTooDeepIsNotNamedAsTheFileToMend() throws IOException {
    chain(12);
    feedWith("P-1");
    assertEquals(List.of("premix-too-deep"), folder.codes());
    assertTrue(folder.findings().get(0).span().place().endsWith("P-4.premix:3:3"));
    assertEquals(List.of("A-1 (fix P-4.premix first)"), notChecked());
  }

  @Test
  void whatHoldsACircleIsNotNamedAsTheFileToMend() throws IOException {
    chain(4);
    folder.with("P-4.premix", premix("P-4", "P-3"));
    feedWith("P-1");
    assertEquals(List.of("premix-cycle"), folder.codes());
    assertTrue(folder.findings().get(0).span().place().endsWith("P-4.premix:3:3"));
    assertEquals(List.of("A-1 (fix P-4.premix first)"), notChecked());
  }

  private List<String> notChecked() throws IOException {
    return OwnFolder.check(root, DAY).notChecked();
  }

  private void chain(int length) throws IOException {
    for (int i = 1; i <= length; i++) {
      folder.with("P-" + i + ".premix", premix("P-" + i, i == length ? "" : "P-" + (i + 1)));
    }
  }

  private static String premix(String code, String part) {
    String line = part.isEmpty() ? "  other  50 %\n" : "  " + part + "  50 %\n";
    return "premix " + code + "\nmix\n" + line + "carrier\n  lean  rest\n";
  }

  private void feedWith(String premix) throws IOException {
    folder.recipe("mix\n  lean  99 %\n  " + premix + "  1 %\nlimits\n  crude-protein  min 1 %\n");
  }

  private SheetReport sheets() throws IOException {
    return OwnFolder.batchSheets(root, DAY, Version.committed("1a2b3c4"));
  }
}
