package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an approved recipe, a premix, a profile or the folder leaves out, each in the example. */
class LeftOutTest {
  private static final String CG = "catfish/CG-36.recipe";
  private static final String CS = "catfish/CS-45.recipe";
  private static final String DRAFT = "catfish/CG-36I.recipe";

  @TempDir Path copy = Path.of("");

  /** One finding each, at the recipe, and none that follows from it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "  species   african-catfish | species-missing | error: CG-36 does not say for which species",
        "  fish      50 to 250 g | head-incomplete | warning: CG-36 does not say for which size",
        "  habit     sinking | head-incomplete | warning: CG-36 does not say whether it floats",
        "  status    approved reviewed by \"A. Marsh\" on 2026-11-20 | head-incomplete | warning: CG-36 has"
            + " a label and no status",
        "  meets     catfish-grower | need-missing | error: CG-36 is approved and meets no profile",
        "  meets     house-practice | fewer-than-sisters | note: CG-36 does not meet house-practice",
        "  grind      screen            1.0 mm | step-missing | warning: no step grinds maize",
        "  blend      time              12 min | step-missing | warning: no step blends the 8 lines",
        "  add-water  on-mix            18 % | step-missing | warning: the extruder gets neither",
        "  extrude    die               4.0 mm | setting-missing | warning: extrude does not say",
        "  dry        time              6 to 12 h | setting-missing | warning: dry does not say how",
        "  coat       method            hand | setting-missing | warning: coat does not say how",
        "  cool       temperature       25 °C | packed-warm | warning: the feed is packed at 55 °C",
        "  store      shelf-life        60 d | store-missing | error: the store has no shelf life",
        "  store      temperature       25 °C | setting-missing | warning: store does not say how",
      })
  void aLostLineIsTold(String line, String code, String words) throws IOException {
    SlippedFolder folder = new SlippedFolder(copy).with(CG, "  " + line + "\n", "");
    assertEquals(List.of(code), folder.codes(), folder.text());
    assertTrue(folder.text().contains(words), folder.text());
  }

  @Test
  void anApprovedFeedOfRecalledFiguresTellsWhoReviewedThem() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy).with(CG, " reviewed by \"A. Marsh\" on 2026-11-20", "");
    assertEquals(List.of("not-reviewed"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("figures that CG-36 is judged by are from memory"));
    folder.with(CG, "status    approved", "status    draft");
    assertFalse(folder.text().contains("not-reviewed"), folder.text());
  }

  @Test
  void withoutSpeciesLimitsAreOpenAndNotBroken() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy).with(CG, "  species   african-catfish\n", "");
    assertTrue(
        folder
            .text()
            .contains(
                "not judged because no species is given: digestible-protein, digestible-energy,"),
        folder.text());
    assertFalse(folder.text().contains("below-minimum"), folder.text());
  }

  @Test
  void aTroutFeedWithoutSpeciesIsNotHeldToTheLawOfOtherFish() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy).with("trout/TG-44.recipe", "  species   rainbow-trout\n", "");
    assertEquals(List.of("species-missing"), folder.codes(), folder.text());
  }

  @Test
  void aDraftIsToldOnlyWhatCouldNotBeJudged() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(DRAFT, "  fish      50 to 250 g\n", "")
            .with(DRAFT, "  habit     sinking\n", "")
            .with(DRAFT, "  cool       temperature       25 °C\n", "")
            .with(DRAFT, "  coat       method            hand\n", "");
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.with(DRAFT, "  species   african-catfish\n", "");
    assertEquals(List.of("species-missing"), folder.codes(), folder.text());
    assertTrue(
        folder.text().contains("note: CG-36I does not say for which species"), folder.text());
  }

  @Test
  void aDraftWithoutShelfLifeIsToldOfItsMinima() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy).with(DRAFT, "  store      shelf-life        60 d\n", "");
    assertEquals(List.of("store-missing"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("note: the store has no shelf life, so "), folder.text());
  }

  @Test
  void aWholeProcessLostLeavesMinimaOpen() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy).withoutSection(CG, "process");
    assertEquals(List.of("process-missing"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("its habit, sinking, needs one"), folder.text());
    assertTrue(folder.text().contains("not judged because no process is given: "), folder.text());
  }

  @Test
  void aCoolerThatLeavesTheFeedWarm() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(CS, "cool       temperature       25 °C", "cool       temperature       40 °C");
    assertEquals(List.of("packed-warm"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("at 40 °C, as cool leaves it, in air of 18 °C"));
  }

  @Test
  void aSlipInALineOfTheHeadIsNotALostLine() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy).with(CG, "  species   afr", "  speices   afr");
    assertEquals(List.of("head-line-unknown"), folder.codes(), folder.text());
  }

  @Test
  void twoWaiversOfOneLimitAreAnErrorAndTheFirstCounts() throws IOException {
    String first =
        "  crude-fibre                  max 7 %      until 2027-02-20  by \"quality manager\"";
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(
                "carp/KF-29.recipe",
                first,
                "  crude-fibre  max 9 %  until 2026-12-31  by \"a\"  because \"b\"\n" + first);
    assertEquals(List.of("waiver-twice"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("crude-fibre max is waived twice, and 9 % counts"));
  }

  @ParameterizedTest
  @CsvSource({"2027-02-23, 0", "2027-02-24, 1"})
  void aWaiverIsLongFromTheNinetyFirstDayOn(String until, int findings) throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy).with("carp/KF-29.recipe", "until 2027-02-20", "until " + until);
    assertEquals(findings, folder.codes().size(), folder.text());
    assertTrue(findings == 0 || folder.codes().contains("waiver-long"), folder.text());
  }

  /** At the file, once. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "law/eu-salmonids.limits | kind      law | profile-incomplete",
        "law/eu-salmonids.limits | jurisdiction  EU | profile-incomplete",
        "law/eu-salmonids.limits | source    eu-zinc | profile-incomplete",
        "law/eu-bans.limits | species   crustaceans | law-not-for-all",
        "limits/catfish-grower.limits | fish      20 to 250 g | profile-incomplete",
        "limits/catfish-grower.limits | source    nrc-2011 | profile-incomplete",
        "limits/catfish-grower.limits | lysine                       min 1.6 %" + " | limit-lost",
        "premixes/VIT-WW.premix | store      shelf-life        90 d | premix-incomplete",
        "premixes/VIT-WW.premix | store      temperature       15 °C | premix-incomplete",
        "premixes/VIT-WW.premix | blend      time              15 min | premix-incomplete",
      })
  void aLineLostFromASharedFileIsTold(String path, String line, String code) throws IOException {
    SlippedFolder folder = new SlippedFolder(copy).with(path, "  " + line + "\n", "");
    assertTrue(folder.codes().contains(code), folder.text());
    assertTrue(
        folder.text().contains("\n" + path) || folder.text().startsWith(path), folder.text());
    assertEquals(1, folder.codes().stream().filter(code::equals).count(), folder.text());
  }

  @Test
  void aSpeciesThatNoLawBindsIsToldOnceAtItsFile() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    folder.with("law/eu-bans.limits", "  species   crustaceans\n", "");
    for (String law : new String[] {"eu-undesirable-crustaceans", "eu-crustaceans"}) {
      folder.with("law/" + law + ".limits", "jurisdiction  EU", "jurisdiction  US");
    }
    assertTrue(folder.codes().contains("species-without-law"), folder.text());
    assertEquals(
        1, folder.codes().stream().filter("species-without-law"::equals).count(), folder.text());
  }
}
