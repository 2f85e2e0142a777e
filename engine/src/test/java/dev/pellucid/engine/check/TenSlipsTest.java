package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ten slips in ten places of the example folder: one run names each where it stands. */
class TenSlipsTest {
  @TempDir Path copy = Path.of("");

  /**
   * A slip.
   *
   * @param path the file it is made in
   * @param at where it is named: file, line and column
   * @param said what the headline must hold, both numbers where there are two
   */
  private record Slip(
      String path, String from, String to, String at, String code, List<String> said) {}

  private static final List<Slip> SLIPS =
      List.of(
          new Slip(
              "catfish/CS-45.recipe",
              "min 43 %     in 95",
              "min 46 %     in 95",
              "catfish/CS-45.recipe:15:3",
              "below-minimum",
              List.of("crude-protein", "44.7 %", "46.0 %", "95 % of batches")),
          new Slip(
              "limits/carp-starter.limits",
              "lysine : crude-protein       min 6.0",
              "lysine : crude-protein       min 6.6",
              "carp/KS-42.recipe:14:3",
              "below-minimum",
              List.of("lysine : crude-protein is 6.2 %", "the minimum is 6.6 %")),
          new Slip(
              "carp/KF-29.recipe",
              "until 2027-02-20",
              "until 2026-10-31",
              "carp/KF-29.recipe:39:51",
              "waiver-expired",
              List.of("2026-10-31", "2026-11-25")),
          new Slip(
              "catfish/CF-32.recipe",
              "lines below 0.5 %            2 %          for handling",
              "MIN-WW                       300 %        for handling",
              "catfish/CF-32.recipe:23:3",
              "overage-breaks-maximum",
              List.of("selenium", "0.51 mg/kg", "0.50 mg/kg")),
          new Slip(
              "shrimp/SG-38.recipe",
              "wheat-flour                  rest  ",
              "wheat-flour                  36.27 %",
              "shrimp/SG-38.recipe:10:1",
              "total-is-off",
              List.of("99.9 %", "100 %")),
          new Slip(
              "trout/TS-48.recipe",
              "dry        moisture          9 %          accept 8 to 10 %",
              "dry        moisture          30 %         accept 29 to 31 %",
              "trout/TS-48.recipe:50:3",
              "dries-upwards",
              List.of("30 %", "22.37 %")),
          new Slip(
              "catfish/CG-36.recipe",
              "soybean-meal-48              44",
              "soybean-meal-84              44",
              "catfish/CG-36.recipe:14:3",
              "unknown-ingredient",
              List.of("soybean-meal-84")),
          new Slip(
              "shrimp/SS-41.recipe",
              "12.00 %",
              "12,00 %",
              "shrimp/SS-41.recipe:13:32",
              "decimal-comma",
              List.of("12,00")),
          new Slip(
              "premixes/MIN-SH.premix",
              "carrier\n",
              "  zinc                         1 mg/kg      from VIT-SH\n\ncarrier\n",
              "premixes/VIT-SH.premix:7:50",
              "premix-cycle",
              List.of("MIN-SH > VIT-SH > MIN-SH")),
          new Slip(
              "carp/KG-33.recipe",
              "temperature       80 °C",
              "temperature       80 %",
              "carp/KG-33.recipe:38:32",
              "unit-kind",
              List.of("80 %")));

  @Test
  void allTenShowInOneRun() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    for (Slip slip : SLIPS) {
      folder.with(slip.path(), slip.from(), slip.to());
    }
    // A ring takes two.
    folder.with(
        "premixes/VIT-SH.premix",
        "supply\n",
        "supply\n  zinc                         1 mg/kg      from MIN-SH\n");
    List<Finding> findings = folder.findings();
    List<Finding> left = new ArrayList<>(findings);
    for (Slip slip : SLIPS) {
      Finding found = named(slip, findings);
      assertEquals(Severity.ERROR, found.severity());
      for (String said : slip.said()) {
        assertTrue(found.headline().contains(said), () -> found.headline() + " lacks " + said);
      }
      assertFalse(found.helps().isEmpty(), found.headline());
      left.remove(found);
    }
    // The limit that the waiver no longer covers has figures and a fix of its own, and what is
    // weighed on top is law beside the limit. Nothing else.
    assertEquals(
        List.of(
            "carp/KF-29.recipe:14:3 above-maximum",
            "catfish/CF-32.recipe:14:3 law-without-margin",
            "catfish/CF-32.recipe:23:3 overage-breaks-maximum"),
        left.stream().map(finding -> at(finding) + " " + finding.code().text()).toList());
    Approvals.verify(FindingText.of(findings));
  }

  private static Finding named(Slip slip, List<Finding> findings) {
    return findings.stream()
        .filter(finding -> finding.code().text().equals(slip.code()))
        .filter(finding -> at(finding).equals(slip.at()))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    slip.at() + " " + slip.code() + "\n" + FindingText.of(findings)));
  }

  private static String at(Finding finding) {
    return finding.span().place();
  }
}
