package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.CheckReports;
import dev.pellucid.engine.goal.ReportSettings;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import org.approvaltests.Approvals;
import org.approvaltests.core.Options;
import org.approvaltests.namer.NamerWrapper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The reports of a check for machines, of a small folder: a broken limit, a waived one, one that
 * cannot be judged, one that is kept as far as it is told, a recipe whose lines do not add up, one
 * whose ingredient must be fixed first, and one that cannot be read.
 */
@ResourceLock(Resources.LOCALE)
public class CheckReportsTest {
  private static final Path GOLDENS = Path.of("src", "test", "resources", "reported-goldens");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String SARIF = "findings.sarif";
  private static final String JUNIT = "limits-junit.xml";

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    ReportedFolder.copyTo(folder);
  }

  private SortedMap<String, String> reports(String before) throws IOException {
    return ReportTexts.of(OwnFolder.checkWithReports(folder, new PrintedPaths(before), DAY));
  }

  private String report(String name) throws IOException {
    return text(OwnFolder.checkWithReports(folder, PrintedPaths.BELOW_FOLDER, DAY), name);
  }

  private static String text(CheckReports reports, String name) {
    return ReportTexts.of(reports, name);
  }

  private void change(String path, String from, String to) throws IOException {
    Path file = folder.resolve(path);
    String text = Files.readString(file);
    assertTrue(text.contains(from), () -> path + " has no " + from);
    Files.writeString(file, text.replace(from, to));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        SARIF,
        "findings-without-waived.sarif",
        JUNIT,
        "findings.json",
        "summary.md",
        "annotations.txt",
        "code-quality.json"
      })
  void readsAsAccepted(String name) throws IOException {
    String stem = GOLDENS.resolve(name).toAbsolutePath().toString();
    Approvals.verify(
        text(OwnFolder.checkWithReports(folder, new PrintedPaths("farm/"), DAY), name),
        new Options().forFile().withNamer(new NamerWrapper(() -> stem, () -> "")));
  }

  @Test
  void noFileMore() throws IOException {
    assertEquals(
        Set.of(
            SARIF,
            "findings-without-waived.sarif",
            JUNIT,
            "findings.json",
            "summary.md",
            "annotations.txt",
            "code-quality.json"),
        reports("").keySet());
  }

  @Test
  void theCheckItselfSaysTheSameAsWithoutReports() throws IOException {
    CheckReport plain = OwnFolder.check(folder, DAY);
    CheckReport reported =
        OwnFolder.checkWithReports(folder, new PrintedPaths("farm/"), DAY).check();
    assertEquals(plain.tally(), reported.tally());
    assertEquals(plain.findings().toString(), reported.findings().toString());
    assertTrue(reported.findings().size() > 4, reported::tally);
  }

  /** What a finding is known by stays the same wherever the reader stands. */
  @Test
  void onlyAddressesChangeWithTheReader() throws IOException {
    SortedMap<String, String> here = reports("");
    SortedMap<String, String> fromTheRoot = reports("mill/trial feeds/");
    for (Map.Entry<String, String> file : fromTheRoot.entrySet()) {
      String before =
          file.getKey().endsWith(".sarif") ? "mill/trial%20feeds/" : "mill/trial feeds/";
      assertTrue(file.getValue().contains(before), file::getKey);
      assertEquals(here.get(file.getKey()), file.getValue().replace(before, ""));
      assertFalse(file.getValue().contains("|" + before), file::getKey);
    }
    String sarif = String.valueOf(fromTheRoot.get(SARIF));
    for (String address : sarif.split("\"uri\": \"", -1)) {
      assertTrue(address.startsWith("mill/") || address.startsWith("{"), address);
    }
    String json = String.valueOf(fromTheRoot.get("findings.json"));
    for (String place : json.split("\"file\": \"", -1)) {
      assertTrue(place.startsWith("mill/") || place.startsWith("{"), place);
    }
  }

  @Test
  void sameBytesInAnotherLocaleAndRun() throws IOException {
    SortedMap<String, String> here = reports("");
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(here, reports(""));
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals(here, reports(""));
    } finally {
      Locale.setDefault(usual);
    }
    here.values().forEach(text -> assertFalse(text.contains("\r") || text.contains(folder + "")));
  }

  /** Against the schema that OASIS published with the standard. */
  @ParameterizedTest
  @ValueSource(strings = {SARIF, "findings-without-waived.sarif"})
  void sarifFitsItsSchema(String name) throws IOException {
    Schema schema = sarifSchema();
    String log = report(name);
    assertEquals(List.of(), told(schema, log));
    assertNotEquals(List.of(), told(schema, log.replace("\"startLine\": ", "\"startLine\": -")));
    assertNotEquals(List.of(), told(schema, log.replace("\"ruleId\"", "\"rule\"")));
  }

  private static List<String> told(Schema schema, String log) {
    return schema.validate(log, InputFormat.JSON).stream().map(Error::toString).toList();
  }

  /** The schema that OASIS published. */
  public static Schema sarifSchema() throws IOException {
    try (InputStream text =
        CheckReportsTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
          .getSchema(new String(text.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
    }
  }

  /** Section 3.27.23 of the standard: of all results or of none. */
  @Test
  void everyResultSaysWhetherItIsSuppressed() throws IOException {
    int suppressed = 0;
    for (JsonNode result : results(SARIF)) {
      assertTrue(result.has("suppressions"), result::toString);
      suppressed += result.get("suppressions").size();
    }
    assertEquals(1, suppressed);
    assertEquals(results(SARIF).size() - 1, results("findings-without-waived.sarif").size());
  }

  @Test
  void everyRuleIsToldOnceAndEveryResultFindsItsOwn() throws IOException {
    JsonNode run = JsonMapper.shared().readTree(report(SARIF)).at("/runs/0");
    JsonNode rules = run.at("/tool/driver/rules");
    Set<String> ids = new HashSet<>();
    rules.forEach(rule -> assertTrue(ids.add(rule.get("id").asString())));
    for (JsonNode result : run.get("results")) {
      JsonNode rule = rules.get(result.get("ruleIndex").asInt());
      assertEquals(rule.get("id"), result.get("ruleId"));
      assertEquals(1, result.get("locations").size());
    }
  }

  private List<JsonNode> results(String name) throws IOException {
    List<JsonNode> results = new ArrayList<>();
    JsonMapper.shared().readTree(report(name)).at("/runs/0/results").forEach(results::add);
    assertTrue(results.size() > 4, () -> results.size() + " results");
    return results;
  }

  private Set<String> fingerprints() throws IOException {
    List<String> all =
        results(SARIF).stream()
            .map(result -> result.at("/partialFingerprints/pellucid~1v1").asString())
            .toList();
    Set<String> different = new TreeSet<>(all);
    assertEquals(all.size(), different.size(), all::toString);
    return different;
  }

  @Test
  void fingerprintsStayWhenLinesMoveAndFiguresChange() throws IOException {
    Set<String> before = fingerprints();
    List<JsonNode> results = results(SARIF);
    change("A-1.recipe", "recipe A-1\n", "# moved\n# down\nrecipe A-1\n");
    change("A-1.recipe", "  maize  ", "      maize  ");
    change("ingredients/maize.yaml", "crude-protein: 8.5 %", "crude-protein: 8.1 %");
    change("limits/grower.limits", "min 9 %", "min 9.5 %");
    change("limits/grower.limits", "profile", "# moved\nprofile");
    change("trial pond/B-1.recipe", "max 6 %", "max 7 %");
    change("D-1.recipe", "99.9 %", "99.8 %");
    assertNotEquals(results, results(SARIF));
    assertEquals(before, fingerprints());
  }

  @Test
  void aFingerprintIsAnotherForAnotherRecipeSubjectOrSide() throws IOException {
    Set<String> before = fingerprints();
    change("C-1.recipe", "zinc                         max 100 mg/kg", "crude-protein  min 40 %");
    Set<String> after = fingerprints();
    after.removeAll(before);
    assertEquals("[below-minimum|C-1.recipe|crude-protein|min]", after.toString());
  }

  /** A waiver that has ended makes the same finding one that is not suppressed. */
  @Test
  void theFingerprintOutlivesItsWaiver() throws IOException {
    change("trial pond/B-1.recipe", "until 2027-02-20", "until 2026-03-31");
    String known = "above-maximum|trial pond/B-1.recipe|crude-fibre|max";
    assertTrue(fingerprints().contains(known), () -> known);
    for (JsonNode result : results(SARIF)) {
      assertEquals(0, result.get("suppressions").size());
    }
  }

  @Test
  void aWaiverThatNothingNeedsSuppressesNothing() throws IOException {
    change("limits/grower.limits", "max 4 %", "max 5.5 %");
    assertEquals(results(SARIF), results("findings-without-waived.sarif"));
  }

  /** What is known of the program and of a rule is told; an address that nobody gave is not. */
  @Test
  void sarifTellsWhatIsKnownOfTheProgram() throws IOException {
    JsonNode bare = JsonMapper.shared().readTree(report(SARIF)).at("/runs/0");
    assertFalse(bare.at("/tool/driver").has("informationUri"));
    assertFalse(bare.at("/tool/driver/rules/0").has("helpUri"));
    assertEquals("pellucid/", bare.at("/automationDetails/id").asString());
    ReportSettings settings =
        new ReportSettings(
            new PrintedPaths("trial feeds/"),
            Severity.ERROR,
            "1.2.3",
            "https://feeds.example/pellucid",
            "https://feeds.example/rules/");
    String told = text(OwnFolder.checkWithReports(folder, settings, DAY, DAY), SARIF);
    assertEquals(List.of(), told(sarifSchema(), told));
    JsonNode run = JsonMapper.shared().readTree(told).at("/runs/0");
    assertEquals("1.2.3", run.at("/tool/driver/version").asString());
    assertEquals(
        "https://feeds.example/pellucid", run.at("/tool/driver/informationUri").asString());
    JsonNode rule = run.at("/tool/driver/rules/0");
    assertEquals("https://feeds.example/rules/above-maximum.md", rule.at("/helpUri").asString());
    assertEquals("error", rule.at("/defaultConfiguration/level").asString());
    assertEquals("limit", rule.at("/properties/tags/0").asString());
    assertEquals("pellucid/trial%20feeds/", run.at("/automationDetails/id").asString());
  }

  /** Some readers show no other place than those that the message links to. */
  @Test
  void everyOtherPlaceIsLinkedFromItsMessage() throws IOException {
    int linked = 0;
    for (JsonNode result : results(SARIF)) {
      String message = result.at("/message/text").asString();
      for (JsonNode place : result.path("relatedLocations")) {
        String text = place.at("/message/text").asString();
        assertTrue(message.contains("note: [" + text + "](" + place.get("id") + ")"), message);
        linked++;
      }
    }
    assertTrue(linked > 1, linked + " places");
  }

  @Test
  void thePageOfTheGoalNamesEveryFileAndKey() throws IOException {
    String page = Files.readString(Path.of("..", "maven-plugin", "docs", "goals", "check.md"));
    Set<String> names = new TreeSet<>(reports("").keySet());
    keys(JsonMapper.shared().readTree(report("findings.json")), names);
    assertTrue(names.size() > 40, names::toString);
    names.removeIf(name -> page.contains("`" + name + "`"));
    assertEquals(Set.of(), names);
  }

  private static void keys(JsonNode node, Set<String> keys) {
    keys.addAll(node.propertyNames());
    node.forEach(child -> keys(child, keys));
  }

  @Test
  void anEmptyFolderHasReportsToo() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    CheckReports reports = OwnFolder.checkWithReports(empty, PrintedPaths.BELOW_FOLDER, DAY);
    assertEquals(List.of(), told(sarifSchema(), text(reports, SARIF)));
    reports.write(folder.resolve("out"));
    assertEquals(text(reports, "summary.md"), Files.readString(folder.resolve("out/summary.md")));
  }
}
