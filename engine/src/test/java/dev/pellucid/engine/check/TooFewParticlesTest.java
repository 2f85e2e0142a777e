package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Grains in the meal of the smallest fish, on slips in the example folder. */
class TooFewParticlesTest {
  private static final String SELENITE = "ingredients/selenite-1.yaml";

  @TempDir Path copy = Path.of("");

  @Test
  @DisplayName(
      "CG-36 by hand: 50 g x 3.5 % x 5 mg/kg over balls of 1.41 µg, per 0.987 kg: 6.27 grains")
  void fewGrains() throws IOException {
    String text = folder().with(SELENITE, "diameter: 15 µm", "diameter: 100 µm").text();
    assertTrue(
        text.contains("CG-36.recipe:21:3: warning: meals differ in selenite-1 by 39.94"), text);
    assertTrue(text.contains("% at the least, practice is at most 10 %"), text);
    assertTrue(text.contains("a day's meal of 1.75 g holds 6.269"), text);
    assertTrue(text.contains("no mixing time and no pre-blend changes"), text);
    assertTrue(text.contains("help: take a grade of selenite-1 with grains of at most "), text);
  }

  @Test
  void severalOfOneLineAreToldOnce() throws IOException {
    SlippedFolder slipped =
        folder()
            .with(SELENITE, "diameter: 15 µm", "diameter: 100 µm")
            .with("ingredients/calcium-iodate-10.yaml", "diameter: 15 µm", "diameter: 100 µm");
    long ofLine =
        slipped.findings().stream()
            .filter(it -> it.span().file().path().endsWith("CG-36.recipe"))
            .count();
    assertEquals(1, ofLine);
    assertTrue(slipped.text().contains("so do calcium-iodate-10 ("), slipped.text());
  }

  @Test
  void grainsByTheirMass() throws IOException {
    String text =
        folder().with(SELENITE, "diameter: 15 µm\n  density: 2.7 kg/L", "mass: 0.002 mg").text();
    assertTrue(text.contains("grains of at most 0.000"), text);
  }

  @Test
  void silentWhereNoMealIsTold() throws IOException {
    SlippedFolder slipped =
        folder()
            .with(SELENITE, "diameter: 15 µm", "diameter: 100 µm")
            .with("species/african-catfish.yaml", "    daily-meal: 3.5 %\n", "")
            .with("species/common-carp.yaml", "    daily-meal:", "    # daily-meal:");
    assertTrue(
        slipped.findings().stream()
            .noneMatch(it -> it.span().file().path().endsWith("CG-36.recipe")),
        slipped.text());
  }

  @Test
  void silentWhereNoParticleIsToldOrPracticeHasNoBound() throws IOException {
    SlippedFolder slipped =
        folder()
            .with(SELENITE, "diameter: 15 µm", "diameter: 900 µm")
            .with("practice/bounds.yaml", "mixing-variation: ", "# ");
    assertEquals(List.of(), slipped.codes(), slipped.text());
  }

  private SlippedFolder folder() throws IOException {
    return new SlippedFolder(copy);
  }
}
