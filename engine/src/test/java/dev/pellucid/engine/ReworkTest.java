package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Finished feed that is worked into a mix again. */
class ReworkTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String GROWER = "catfish/CG-36.recipe";
  private static final String SALT = "  salt                         0.30 %\n";

  @TempDir Path copy;

  /** Nothing but rework, and no process: the same feed again, figure for figure. */
  @ParameterizedTest
  @CsvSource({
    "CG-36, african-catfish",
    "TG-44, rainbow-trout",
    "SF-34, whiteleg-shrimp",
    "KF-29, common-carp"
  })
  void holdsWhatTheFinishedFeedHolds(String code, String species) throws IOException {
    new SlippedFolder(copy);
    Files.writeString(
        copy.resolve("RW-1.recipe"),
        "recipe RW-1\n  species "
            + species
            + "\nmix\n  rework "
            + code
            + "  100 %\nlimits\n  crude-protein  min 1 %\n");
    Map<String, ComputedFeed> feeds = feeds();
    assertTrue(feeds.containsKey("RW-1"), OwnFolder.check(copy, DAY).findings().toString());
    ComputedFeed source = feed(feeds, code);
    ComputedFeed again = feed(feeds, "RW-1");
    int compared = 0;
    for (Nutrient nutrient : source.nutrients().inOrder()) {
      double there = reading(source, nutrient);
      assertEquals(there, reading(again, nutrient), 1e-9 * Math.max(1e-9, there), nutrient.name());
      compared += there > 0 ? 1 : 0;
    }
    assertTrue(compared > 30, compared + " nutrients with content");
    assertEquals(
        source.costPer100() / source.balances().expected().finished(),
        again.costPer100() / again.balances().expected().finished(),
        1e-9);
  }

  /** Three parts of the feed in itself change it by little, and the rest gives way. */
  @Test
  void aFeedMayTakeItsOwnRework() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    Map<String, ComputedFeed> before = feeds();
    folder.with(GROWER, SALT, SALT + "  rework CG-36                 3.00 %\n");
    Map<String, ComputedFeed> after = feeds();
    assertTrue(folder.codes().stream().allMatch("label-spends-tolerance"::equals), folder.text());
    Nutrient protein = nutrient(feed(after, "CG-36"), "crude-protein");
    double was = reading(feed(before, "CG-36"), protein);
    double is = reading(feed(after, "CG-36"), protein);
    assertTrue(is > was && is < was * 1.03, was + " became " + is);
    double parts =
        feed(after, "CG-36").rows().stream()
            .filter(row -> row.path().get(0).equals("rework CG-36"))
            .mapToDouble(row -> row.kg())
            .sum();
    assertEquals(3, parts, 1e-9);
  }

  @Test
  void anInclusionLooksIntoIt() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    folder.with(GROWER, SALT, SALT + "  rework CG-36                 3.00 %\n");
    ComputedFeed feed = feed(feeds(), "CG-36");
    double maize = new Readings(feed).inclusion(List.of("maize"));
    assertTrue(maize > 0.143 && maize < 0.146, "14 % and its part of 3 %: " + maize);
  }

  @Test
  void ofNoRecipeIsTold() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    folder.with(GROWER, SALT, SALT + "  rework CG-63                 3.00 %\n");
    assertTrue(folder.codes().contains("rework-of-no-recipe"), folder.text());
  }

  @Test
  void inACoatOrAPremixIsTold() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    folder.with(GROWER, "  mixed-tocopherols            0.02 %\n", "  rework CG-36   0.02 %\n");
    folder.with("premixes/VIT-WW.premix", "carrier\n", "carrier\n  rework CG-36  1 %\n");
    assertEquals(
        2, folder.codes().stream().filter("rework-out-of-place"::equals).count(), folder.text());
  }

  @Test
  void tooMuchOfItIsOutsidePractice() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    folder.with(GROWER, SALT, SALT + "  rework CG-36                 10.50 %\n");
    assertTrue(
        folder.text().contains("rework in the mix is 10.94 %, practice is at most 10 %"),
        folder.text());
  }

  @Test
  void ofARecipeThatMustBeMendedSaysWhichOne() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    folder.with(GROWER, SALT, SALT + "  rework CF-31                 3.00 %\n");
    folder.with("catfish/CF-31.recipe", "  maize ", "  maise ");
    CheckReport report = OwnFolder.check(copy, DAY);
    assertTrue(
        report.notChecked().contains("CG-36 (fix CF-31.recipe first)"),
        report.notChecked().toString());
  }

  @Test
  void ofItselfAndBrokenDoesNotSayToMendItselfFirst() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    folder.with(GROWER, SALT, SALT + "  rework CG-36                 3.00 %\n");
    folder.with(GROWER, "  maize ", "  maise ");
    CheckReport report = OwnFolder.check(copy, DAY);
    assertTrue(report.notChecked().contains("CG-36"), report.notChecked().toString());
  }

  /** Each of the three is sound; what they hold is not. */
  @Test
  void twoThatTakeAThirdAndAllHoldABrokenPremixNameThePremixAlone() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    folder.with("premixes/VIT-WW.premix", "carrier\n", "carrier\n  no-such-thing  1 %\n");
    for (String code : List.of("RW-1", "RW-2", "RW-3")) {
      Files.writeString(
          copy.resolve(code + ".recipe"),
          "recipe "
              + code
              + "\n  species african-catfish\nmix\n  maize  90 %\n  VIT-WW  1 %\n"
              + (code.equals("RW-3") ? "  wheat  rest\n" : "  rework RW-3  rest\n")
              + "limits\n  crude-protein  min 1 %\n");
    }
    folder.with(GROWER, SALT, SALT + "  rework RW-1   1 %\n  rework RW-2   1 %\n");
    CheckReport report = OwnFolder.check(copy, DAY);
    String said = String.join("; ", report.notChecked());
    assertTrue(said.contains("CG-36, ") && said.endsWith(" (fix VIT-WW.premix first)"), said);
    assertEquals(1, report.notChecked().size(), said);
  }

  private Map<String, ComputedFeed> feeds() throws IOException {
    Map<String, ComputedFeed> feeds = new TreeMap<>();
    Shared shared = Shared.of(ReadFolder.of(Texts.at(copy)), Days.on(DAY));
    for (Checked one : Streamed.check(shared, checked -> checked)) {
      one.feed().filter(feed -> one.isSound()).ifPresent(feed -> feeds.put(one.code(), feed));
    }
    return feeds;
  }

  private static ComputedFeed feed(Map<String, ComputedFeed> feeds, String code) {
    return Optional.ofNullable(feeds.get(code)).orElseThrow();
  }

  private static Nutrient nutrient(ComputedFeed feed, String name) {
    return feed.nutrients().named(name).orElseThrow();
  }

  private static double reading(ComputedFeed feed, Nutrient nutrient) {
    return new Readings(feed)
        .at(
            new Subject.Nutrients(List.of(nutrient), nutrient.name()),
            new Basis.AsFed(),
            Scenario.EXPECTED)
        .value();
  }
}
