package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Products that are unfit and plans that cannot be meant: each slip in the example folder is one
 * finding at its own line, and what is on the right side of it is none.
 */
class UnfitProductsTest {
  @TempDir Path copy = Path.of("");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "carp/KF-29.recipe|habit     sinking|habit     floating|6:13: error|floating-not-expanded",
        "catfish/CG-36.recipe|habit     sinking|habit     floating|6:13: warning"
            + "|floating-not-expanded",
        "catfish/CF-32.recipe|temperature       120 °C|temperature       70 °C|6:13: warning"
            + "|floating-not-expanded",
        "catfish/CG-36.recipe|screen            1.0 mm|screen            5.0 mm|39:3: error"
            + "|screen-wider-than-die",
        "catfish/CG-36.recipe|screen            1.0 mm|screen            2.0 mm|39:3: warning"
            + "|process-outside-practice",
        "catfish/CG-36.recipe|die               4.0 mm|die               40 mm|45:3: error"
            + "|die-for-fish",
        "catfish/CG-36.recipe|die               4.0 mm|die               0.4 mm|45:3: error"
            + "|die-for-fish",
        "catfish/CG-36.recipe|die               4.0 mm|die               5.0 mm|45:3: warning"
            + "|die-for-fish",
        "trout/TG-44.recipe|blend      time              4 min|blend time 30 s|41:3: warning"
            + "|blend-time",
        "trout/TG-44.recipe|blend      time              4 min|blend time 12 s|41:3: error"
            + "|blend-time",
        "trout/TG-44.recipe|blend      time              4 min|blend time 150 min|41:3: warning"
            + "|blend-time",
        "carp/KF-29.recipe|1000 kg weighed|100 t weighed|9:13: warning|batch-takes-long",
        "trout/TF-40.recipe|1000 kg weighed|100 kg weighed|8:13: warning|blend-time",
        "premixes/VIT-WW.premix|blend      time              15 min|blend time 150 min"
            + "|32:3: warning|process-outside-practice",
        "premixes/VIT-WW.premix|pack       bag               5 kg|condition temperature 80 °C"
            + "|33:3: error|premix-not-dry",
        "catfish/CG-36.recipe|50 to 250 g|50 to 250 kg|5:13: error|fish-beyond-species",
        "limits/catfish-grower.limits|20 to 250 g|20 to 250 kg|4:13: error|fish-beyond-species",
        "limits/catfish-grower.limits|20 to 250 g|20 to 2500 g|4:13: warning|fish-beyond-species",
        "catfish/CF-31.recipe|100 kg weighed|6000 kg weighed|10:13: warning|batch-takes-long",
        "carp/KS-42.recipe|500 kg weighed|19 kg weighed|50:3: error|bag-larger-than-batch",
        "catfish/CF-31.recipe|bag               25 kg|bag               250 kg|52:3: warning"
            + "|bag-not-at-plant",
        "plant/river-mill.yaml|evenness: 3.6 %|evenness: 36 %|14:92: warning|mixer-uneven",
        "catfish/CF-31.recipe|accept 8 to 10 %|accept 10 to 12 %|49:32: error|aim-not-accepted",
        "catfish/CG-36.recipe|grind      soybean-meal-48|grind      soybean-meel-48|41:14: error"
            + "|grind-of-none",
        "catfish/CG-36.recipe|grind      soybean-meal-48|grind      fish-oil|41:14: error"
            + "|grind-of-none",
      })
  void isToldOnceAtItsOwnLine(String path, String from, String to, String place, String code)
      throws IOException {
    SlippedFolder folder = new SlippedFolder(copy).with(path, from, to);
    String told = folder.text();
    assertEquals(path.substring(path.indexOf('/') + 1) + ":" + place, begin(told, path), told);
    assertEquals(code, String.join(" ", folder.codes()), told);
  }

  private static String begin(String told, String path) {
    String first = told.substring(told.indexOf(path.substring(path.indexOf('/') + 1)));
    return first.substring(0, first.indexOf(": ", first.indexOf(": ") + 1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "catfish/CF-32.recipe|temperature       120 °C|temperature       95 °C",
        "catfish/CG-36.recipe|screen            1.0 mm|screen            1.2 mm",
        "trout/TG-44.recipe|die               4.0 mm|die               4.5 mm",
        "trout/TG-44.recipe|blend      time              4 min|blend      time   60 s",
        "trout/TG-44.recipe|blend      time              4 min|blend      time   6 min",
        "catfish/CF-31.recipe|blend      time              15 min|blend time 10 min",
        "premixes/VIT-WW.premix|blend      time              15 min|blend time 20 min",
        "premixes/VIT-WW.premix|pack       bag               5 kg|grind screen 0.8 mm",
        "catfish/CF-32.recipe|250 to 1200 g|250 to 1500 g",
        "catfish/CF-31.recipe|100 kg weighed|150 kg weighed",
        "catfish/CF-31.recipe|100 kg weighed|75 kg weighed",
        "catfish/CF-31.recipe|bag               25 kg|bag               10 kg",
        "trout/TG-44.recipe|method            vacuum|method            vacuum",
        "plant/river-mill.yaml|evenness: 3.6 %|evenness: 10 %",
        "plant/river-mill.yaml|, evenness: 3.6 %, tested: 2026-09-15|",
        "plant/river-mill.yaml|bags: [5 kg, 10 kg, 20 kg, 25 kg]|# No bag is told.",
        "catfish/CF-31.recipe|accept 8 to 10 %|accept 9 to 10 %",
        "catfish/CG-36.recipe|grind      soybean-meal-48|grind      maize",
        "premixes/VIT-WW.premix|shelf-life        90 d|shelf-life        120 d",
      })
  void isNotToldOnTheRightSide(String path, String from, String to) throws IOException {
    SlippedFolder folder = new SlippedFolder(copy).with(path, from, to == null ? "" : to);
    assertEquals("", folder.text());
  }

  @Test
  void aVacuumCoatOfAPlantThatCoatsInADrum() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy).with("plant/river-mill.yaml", "coater: vacuum", "coater: drum");
    assertEquals("coater-not-at-plant", folder.codes().get(0), folder.text());
  }

  @Test
  void aFeedThatKeepsFarLongerThanItsPremix() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with("premixes/VIT-TR.premix", "shelf-life        90 d", "shelf-life        45 d");
    assertEquals(List.of("feed-outlives-premix"), folder.codes().stream().distinct().toList());
  }

  @Test
  void aMixerThatTellsNoTimeIsLeftToPractice() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with("plant/river-mill.yaml", "time: 1 to 6 min, ", "")
            .with("trout/TG-44.recipe", "blend      time              4 min", "blend time 2 min");
    assertEquals("process-outside-practice", String.join(" ", folder.codes()), folder.text());
  }
}
