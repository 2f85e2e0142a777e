package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CheckGoal;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the sheet of a premix would send a hand to ask about is told by the check before. */
class PremixOnScalesTest {
  private static final Path EXAMPLE = Example.whole();
  private static final String PLANT = "plant/river-mill.yaml";

  @Test
  void theExampleHasNone() throws IOException {
    assertEquals(List.of(), ofPremixes(""));
  }

  @Test
  void whereRecipesLackASmallerMixerTooPremixesAddNothing() throws IOException {
    assertEquals(List.of(), ofPremixes("  - {name: Bowl blender.*\n"));
  }

  @Test
  void withoutTheSmallScalesOneLineIsToldForAll() throws IOException {
    List<Finding> findings = ofPremixes("  - {name: (Gram|Premix) scale.*\n  - .*\n");
    assertEquals(1, findings.size(), findings.toString());
    assertEquals("cannot-be-weighed", findings.get(0).code().toString());
    assertTrue(findings.get(0).notes().toString().contains("more lines of premixes"));
  }

  private static List<Finding> ofPremixes(String gone) throws IOException {
    String plant = Files.readString(EXAMPLE.resolve(PLANT));
    String left = plant.replaceFirst(gone.replace("{", "\\{"), "");
    Texts folder = Texts.at(EXAMPLE).over(Map.of(PLANT, left));
    return CheckGoal.check(folder, LocalDate.of(2026, 11, 25)).findings().stream()
        .filter(one -> one.span().file().path().startsWith("premixes/"))
        .toList();
  }
}
