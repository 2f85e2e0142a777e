package dev.pellucid.engine.workspace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CheckGoal;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** One slip in the example is told first, at its line, and what follows from it once. */
class CausesTest {
  private static final Path EXAMPLE = Example.whole();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @Test
  void aForgottenPremixIsToldAtTheMixAndNotForEachVitamin() throws IOException {
    List<Finding> said =
        with("trout/TS-48.recipe", "  VIT-TR                       0.50 %\n", "").findings();
    Finding first = said.get(0);
    assertEquals("trout/TS-48.recipe:11:1", first.span().place());
    assertEquals("premix-forgotten", first.code().text());
    assertTrue(first.headline().endsWith("; VIT-TR does"), first.headline());
    assertEquals(List.of("write a line for it under mix: VIT-TR 0.5 %"), first.helps());
    assertEquals("broken-because-of", said.get(1).code().text());
    assertEquals(Severity.ERROR, said.get(1).severity());
    assertTrue(said.get(1).notes().get(0).startsWith("TS-48: "), said.get(1).notes().toString());
  }

  @Test
  void aSlipInWhatAllFeedsHangOnIsOneFindingAndSaysWhoWaits() throws IOException {
    for (String path :
        List.of("sources.yaml", "groups.yaml", "nutrients/6-vitamins.yaml", "pellucid.yaml")) {
      String text = Files.readString(EXAMPLE.resolve(path));
      int colon = text.indexOf(": ", text.indexOf("\n\n") + 2);
      CheckReport report =
          checked(Map.of(path, text.substring(0, colon) + text.substring(colon + 1)));
      assertEquals(1, report.findings().size(), path + report.findings());
      Finding one = report.findings().get(0);
      assertEquals(path, one.span().file().path());
      assertTrue(one.notes().contains("17 feeds wait for this file"), one.notes().toString());
      assertTrue(report.tally().contains("NOT CHECKED in KF-29, "), report.tally());
    }
  }

  @Test
  void aPriceThatIsLostIsToldOnceAtTheFileOfPrices() throws IOException {
    List<Finding> said = with("prices/2026-11.yaml", "  maize: 0.24 EUR/kg\n", "").findings();
    assertEquals("prices/2026-11.yaml", said.get(0).span().file().path());
    List<String> places = unpriced(without("prices/2026-08.yaml"));
    assertEquals(1, places.size(), places.toString());
    assertTrue(places.get(0).startsWith("prices/2026-11.yaml:"), places.toString());
  }

  @Test
  void aNameThatManyLinesUseIsUnknownOnce() throws IOException {
    List<Finding> said = unknown(with("sources.yaml", "\ntrade-grade:\n", "\nother-word:\n"));
    assertEquals(1, said.size(), said.toString());
    assertTrue(
        said.get(0).notes().stream().anyMatch(note -> note.contains("more lines of this folder")),
        said.get(0).notes().toString());
  }

  @Test
  void aMisspeltDeclarationIsToldWhereItStands() throws IOException {
    List<Finding> said =
        unknown(with("nutrients/7-watched.yaml", "\ncanthaxanthin:\n", "\ncanthaxanhin:\n"));
    assertEquals(1, said.size(), said.toString());
    assertEquals("nutrients/7-watched.yaml", said.get(0).span().file().path());
    assertEquals("canthaxanhin", said.get(0).span().text());
    assertTrue(said.get(0).headline().startsWith("canthaxanhin is used nowhere, and "));
    assertEquals("canthaxanthin", said.get(0).edits().get(0).replacement());
  }

  private static List<Finding> unknown(CheckReport report) {
    return report.findings().stream()
        .filter(one -> one.code().text().matches("(data-)?unknown-(source|nutrient)"))
        .toList();
  }

  /** The places at which a price is said to be missing. */
  private static List<String> unpriced(CheckReport report) {
    return report.findings().stream()
        .filter(one -> one.code().text().equals("unpriced"))
        .map(one -> one.span().place())
        .toList();
  }

  /** Without a file, and without maize in the other list of prices. */
  private static CheckReport without(String path) throws IOException {
    String prices = Files.readString(EXAMPLE.resolve("prices/2026-11.yaml"));
    return CheckGoal.check(
        Texts.at(EXAMPLE)
            .over(
                Map.of(
                    path,
                    "from: 2026-08-01\nsource: scenario\nprices:\n  salt: 0.14 EUR/kg\n",
                    "prices/2026-11.yaml",
                    prices.replace("  maize: 0.24 EUR/kg\n", ""))),
        DAY);
  }

  private static CheckReport with(String path, String line, String other) throws IOException {
    String text = Files.readString(EXAMPLE.resolve(path));
    assertTrue(text.contains(line), path);
    return checked(Map.of(path, text.replace(line, other)));
  }

  private static CheckReport checked(Map<String, String> edits) throws IOException {
    return CheckGoal.check(Texts.at(EXAMPLE).over(new HashMap<>(edits)), DAY);
  }
}
