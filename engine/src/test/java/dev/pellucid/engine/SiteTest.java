package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.account.Account.Inclusion;
import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.PastState;
import dev.pellucid.engine.goal.SiteReport;
import dev.pellucid.engine.judge.Judgement;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.site.FeedView.Figured;
import dev.pellucid.engine.site.FeedView.Flow;
import dev.pellucid.engine.site.FeedView.FlowKind;
import dev.pellucid.engine.site.FeedViews;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages about a folder, as files. */
class SiteTest {
  private static final Path EXAMPLE = Example.whole();
  private static final Path SMALL = Path.of("src", "test", "resources", "reported");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String GROWER = "catfish/CG-36.recipe";
  private static final Pattern LINK = Pattern.compile("href=\"([^\"#]+)\"");

  @TempDir Path copy = Path.of("");
  @TempDir Path out = Path.of("");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "index.html",
        "feeds/A-1.html",
        "feeds/B-1.html",
        "feeds/D-1.html",
        "ingredients/maize.html",
        "limits/grower.html"
      })
  void readsAsAccepted(String page) throws IOException {
    OwnFolder.report(SMALL, new PrintedPaths("farm/"), DAY, List.of(), out);
    Approvals.verify(
        Inlined.byName(Files.readString(out.resolve(page))),
        Approvals.NAMES
            .withParameters(page.replace('/', '-').replace(".html", ""))
            .forFile()
            .withExtension(".html"));
  }

  @Test
  void everyFeedIngredientAndProfileHasAPageAndEveryLinkLeadsToOne() throws IOException {
    SiteReport report =
        OwnFolder.report(EXAMPLE, new PrintedPaths("recipes/"), DAY, List.of(), out);
    Map<Path, String> pages = pages();
    assertEquals(report.pages() + 2, pages.size(), "a style sheet and a script beside them");
    int links = 0;
    for (Map.Entry<Path, String> page : pages.entrySet()) {
      Matcher link = LINK.matcher(page.getValue());
      while (link.find()) {
        Path to = page.getKey().resolveSibling(link.group(1)).normalize();
        assertTrue(pages.containsKey(to), page.getKey() + " leads to " + to);
        links++;
      }
      assertFalse(page.getValue().contains("http:") || page.getValue().contains("https:"));
    }
    assertTrue(links > 500, links + " links");
    for (String kind : List.of("ingredients", "limits")) {
      try (Stream<Path> files = Files.list(EXAMPLE.resolve(kind))) {
        for (Path file : files.toList()) {
          String name = file.getFileName().toString().replaceAll("\\.[a-z]+$", "");
          assertTrue(pages.containsKey(out.resolve(kind).resolve(name + ".html")), name);
        }
      }
    }
  }

  @Test
  void theMassOfEachStepFollowsFromTheOnesBefore() throws IOException {
    for (Map.Entry<String, Figured> feed : figured(EXAMPLE).entrySet()) {
      double kg = 0;
      int wholes = 0;
      for (Flow step : feed.getValue().flow()) {
        if (step.kind() == FlowKind.WHOLE) {
          if (wholes++ > 0) {
            assertEquals(kg, step.kg(), 1e-9, feed.getKey() + " " + step.words());
          }
          assertTrue(step.water() > 0 && step.water() < step.kg(), step.words());
          kg = step.kg();
        } else {
          boolean comes = step.kind() == FlowKind.COMES;
          assertEquals(comes ? kg : kg - step.kg(), step.from(), 1e-9, step.words());
          kg += comes ? step.kg() : -step.kg();
        }
      }
      assertTrue(wholes >= 3, feed.getKey());
    }
  }

  @Test
  void whatIngredientsCostAndLinesCostIsTheCost() throws IOException {
    figured(EXAMPLE)
        .forEach(
            (code, feed) -> {
              double cost = feed.taken().account().costPerKg();
              assertEquals(
                  cost,
                  feed.taken().account().inclusions().stream().mapToDouble(Inclusion::money).sum(),
                  1e-9,
                  code);
              assertEquals(
                  cost,
                  feed.taken().account().costs().values().stream()
                      .mapToDouble(one -> one.perKgBagged())
                      .sum(),
                  1e-9,
                  code);
            });
  }

  /** What the page of maize says of its price is what comes when the price does rise. */
  @Test
  void aTenthOnAPriceDoesWhatThePageSays() throws IOException {
    SlippedFolder.withRecords(copy).with("prices/2026-11.yaml", "maize: 0.24", "maize: 0.264");
    Map<String, Figured> feeds = figured(EXAMPLE);
    int compared = 0;
    for (RecipeChange change :
        Pellucid.compare(FolderState.at(EXAMPLE), FolderState.at(copy), DAY, "x")
            .comparison()
            .changes()) {
      double money =
          feeds.entrySet().stream()
              .filter(feed -> feed.getKey().equals(change.code()))
              .flatMap(feed -> feed.getValue().taken().account().inclusions().stream())
              .filter(use -> use.ingredient().equals("maize"))
              .mapToDouble(Inclusion::money)
              .sum();
      assertEquals(change.costMoved(), money * 0.1, 1e-9, change.code());
      compared++;
    }
    assertTrue(compared > 3, compared + " feeds hold maize");
  }

  @Test
  void historyTellsTheStatesWithOtherFigures() throws IOException {
    SlippedFolder.withRecords(copy).with("prices/2026-11.yaml", "maize: 0.24", "maize: 0.20");
    List<PastState> past =
        List.of(
            new PastState("cccccc1", "2026-11-24", FolderState.at(EXAMPLE)),
            new PastState("bbbbbb1", "2026-11-20", FolderState.at(copy)),
            new PastState("aaaaaa1", "2026-11-10", FolderState.at(copy)));
    OwnFolder.report(EXAMPLE, new PrintedPaths("recipes/"), DAY, past, out);
    String grower = Files.readString(out.resolve("feeds/CG-36.html"));
    assertTrue(grower.contains("bbbbbb1</th><td class=\"t\">2026-11-20</td>"), "the other state");
    assertFalse(grower.contains("cccccc1"), "a state with the same figures as now");
    assertFalse(grower.contains("aaaaaa1"), "a state with the same figures as the one after it");
    assertTrue(
        Files.readString(out.resolve("feeds/SF-34.html"))
            .contains("No other figures in the commits that were looked at."));
  }

  @Test
  void whatARecipeSaysIsNeverMarkup() throws IOException {
    new SlippedFolder(copy)
        .with(GROWER, "\"African catfish grower, 4 mm\"", "\"<script>alert(1)</script> & 'co'\"")
        .with("pellucid.yaml", "name: ", "name: <b>x</b> ");
    OwnFolder.report(copy, new PrintedPaths("<i>/"), DAY, List.of(), out);
    for (Map.Entry<Path, String> page : pages().entrySet()) {
      String text = page.getValue();
      assertFalse(
          text.contains("<script>alert") || text.contains("<b>x"), page.getKey().toString());
      assertFalse(text.contains("<i>"), page.getKey().toString());
    }
    assertTrue(
        Files.readString(out.resolve("feeds/CG-36.html"))
            .contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; &#x27;co&#x27;"));
  }

  @Test
  void aBrokenRecipeIsThereWithItsFindings() throws IOException {
    new SlippedFolder(copy).with(GROWER, "  maize ", "  maise ");
    OwnFolder.report(copy, new PrintedPaths("recipes/"), DAY, List.of(), out);
    assertTrue(
        Files.readString(out.resolve("feeds/CG-36.html")).contains("maise is not an ingredient")
            || Files.readString(out.resolve("feeds/CG-36.html")).contains("[unknown-ingredient]"));
    assertTrue(
        Files.readString(out.resolve("index.html")).contains("data-standing=\"not checked\""));
  }

  /** A feed with an error elsewhere, and one of which nothing is asked, have not simply passed. */
  @Test
  void keptIsSaidOnlyOfWhatWasAskedAndHasNoErrors() throws IOException {
    new SlippedFolder(copy)
        .with(GROWER, "44.00 %      within 30 to 48 %", "44.00 %      within 45 to 48 %")
        .with("pellucid.yaml", "jurisdiction: EU", "jurisdiction: none");
    Files.writeString(copy.resolve("A-1.recipe"), "recipe A-1\nmix\n  maize 100 %\n");
    OwnFolder.report(copy, new PrintedPaths("recipes/"), DAY, List.of(), out);
    assertTrue(standing("CG-36").contains(">kept, with other errors</span>"), standing("CG-36"));
    assertTrue(standing("A-1").contains(">nothing asked</span>"), standing("A-1"));
    assertTrue(standing("TG-44").contains("<span>kept</span>"), standing("TG-44"));
  }

  private String standing(String code) throws IOException {
    String page = Files.readString(out.resolve("feeds/" + code + ".html"));
    return page.substring(page.indexOf("Limits: "), page.indexOf("</p>", page.indexOf("Limits: ")));
  }

  @Test
  void anIngredientTellsWhatToMind() throws IOException {
    OwnFolder.report(EXAMPLE, new PrintedPaths("recipes/"), DAY, List.of(), out);
    String cassava = Files.readString(out.resolve("ingredients/cassava-meal.html"));
    assertTrue(cassava.contains("What to mind") && cassava.contains("At most "), cassava);
    assertFalse(
        Files.readString(out.resolve("ingredients/ascorbyl-phosphate-35.html"))
            .contains("What to mind"));
  }

  @Test
  void whatCannotBeJudgedHasNoPriceOrHoldsNoneIsSaid() throws IOException {
    new SlippedFolder(copy)
        .with("trout/TG-44.recipe", "temperature       115 °C", "temperature       140 °C")
        .with("trout/TG-44.recipe", "limits\n", "limits\n  calcium : astaxanthin  max 100\n")
        .with("prices/2026-08.yaml", "  fish-meal-65:", "  fish-meal-99:")
        .with("prices/2026-11.yaml", "  fish-meal-65:", "  fish-meal-99:");
    OwnFolder.report(copy, new PrintedPaths("recipes/"), DAY, List.of(), out);
    String page = Files.readString(out.resolve("feeds/TG-44.html"));
    assertTrue(page.contains("CANNOT BE JUDGED</span> "), "limits on vitamins");
    assertTrue(page.contains("NO PRICE</span> fish-meal-65: the cost leaves it out"), "the price");
    assertFalse(page.contains("NaN"), "a ratio over nothing");
    assertFalse(Files.readString(out.resolve("index.html")).contains("100.0 % beyond"));
  }

  @Test
  void errorsOfSharedFilesStandOnEachPage() throws IOException {
    new SlippedFolder(copy).with("nutrients/1-whole.yaml", "unit: \"%\"", "unit: \"%%\"");
    OwnFolder.report(copy, new PrintedPaths("recipes/"), DAY, List.of(), out);
    assertTrue(Files.readString(out.resolve("feeds/TG-44.html")).contains("NOT TO BE TRUSTED"));
  }

  @Test
  @ResourceLock(Resources.LOCALE)
  void sameBytesInAnotherLocale() throws IOException {
    OwnFolder.report(SMALL, new PrintedPaths("farm/"), DAY, List.of(), out);
    Map<Path, String> here = pages();
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      OwnFolder.report(SMALL, new PrintedPaths("farm/"), DAY, List.of(), out);
    } finally {
      Locale.setDefault(usual);
    }
    assertEquals(here, pages());
  }

  private Map<Path, String> pages() throws IOException {
    Map<Path, String> pages = new TreeMap<>();
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        pages.put(file, Files.readString(file));
      }
    }
    return pages;
  }

  private static Map<String, Figured> figured(Path folder) throws IOException {
    Map<String, Figured> figured = new TreeMap<>();
    Shared shared = Shared.of(ReadFolder.of(Texts.at(folder)), Days.on(DAY));
    for (Checked one : Streamed.check(shared, checked -> checked)) {
      if (one.isSound()) {
        ComputedFeed feed = one.feed().orElseThrow();
        Judgement judgement = one.recipe().orElseThrow().judgement();
        figured.put(one.code(), FeedViews.of(feed, judgement, shared.tables()));
      }
    }
    assertTrue(figured.size() > 10, figured.keySet().toString());
    return figured;
  }
}
