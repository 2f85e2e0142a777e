package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.goal.CheckReports;
import dev.pellucid.engine.goal.ReportSettings;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.maven.plugin.surefire.log.api.NullConsoleLogger;
import org.apache.maven.plugins.surefire.report.ReportTestCase;
import org.apache.maven.plugins.surefire.report.ReportTestSuite;
import org.apache.maven.plugins.surefire.report.TestSuiteXmlParser;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** One case for each limit, and for what else is found, for what reads test reports. */
class LimitsJunitTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String JUNIT = "limits-junit.xml";

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    ReportedFolder.copyTo(folder);
  }

  private String report() throws IOException {
    return text(OwnFolder.checkWithReports(folder, PrintedPaths.BELOW_FOLDER, DAY));
  }

  private static String text(CheckReports reports) {
    return ReportTexts.of(reports, JUNIT);
  }

  @Test
  void junitIsReadAsItIsMeant() throws Exception {
    List<ReportTestSuite> suites = suites();
    assertEquals(
        "[A-1 3 1 0 0, C-1 2 0 1 1, D-1 1 0 1 0, E-1 1 0 1 0, F-1 1 0 1 0, G-1 1 0 1 0, B-1 2 0 0"
            + " 0, other rules 9 2 0 0]",
        suites.stream()
            .map(
                suite ->
                    suite.getName()
                        + " "
                        + suite.getNumberOfTests()
                        + " "
                        + suite.getNumberOfFailures()
                        + " "
                        + suite.getNumberOfErrors()
                        + " "
                        + suite.getNumberOfSkipped())
            .toList()
            .toString());
    ReportTestCase broken =
        suites.get(0).getTestCases().stream().filter(ReportTestCase::hasFailure).findFirst().get();
    assertEquals("crude-protein min (grower)", broken.getName());
    assertEquals("below-minimum", broken.getFailureType());
    assertEquals("crude-protein is 8.5 %, the minimum is 9.0 %", broken.getFailureMessage());
    assertTrue(broken.getFailureDetail().contains("A-1.recipe:5:3: error: crude-protein is 8.5"));
  }

  @Test
  void everyCaseHasANameOfItsOwn() throws Exception {
    List<String> names = new ArrayList<>();
    for (ReportTestSuite suite : suites()) {
      suite.getTestCases().forEach(one -> names.add(one.getClassName() + one.getName()));
    }
    assertEquals(20, names.size());
    assertEquals(20, new HashSet<>(names).size(), names::toString);
  }

  /**
   * Elements, their order, attributes and the form of a time as the schema of Maven Surefire's test
   * reports has them (surefire-test-report.xsd); what lies around the suites is common practice.
   */
  @Test
  void eachSuiteFitsTheSchemaOfTestReports() throws Exception {
    byte[] xml = report().getBytes(StandardCharsets.UTF_8);
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(xml))
            .getDocumentElement();
    assertEquals("testsuites", root.getNodeName());
    int cases = 0;
    for (Element suite : children(root)) {
      fits(
          suite,
          "testsuite",
          Set.of("name", "tests", "errors", "skipped", "failures"),
          Set.of("time", "group"));
      for (Element one : children(suite)) {
        fits(one, "testcase", Set.of("name", "time"), Set.of("classname", "group"));
        List<String> names = new ArrayList<>();
        for (Element outcome : children(one)) {
          names.add(outcome.getNodeName());
          boolean skipped = outcome.getNodeName().equals("skipped");
          fits(
              outcome,
              outcome.getNodeName(),
              skipped ? Set.of() : Set.of("type"),
              Set.of("message"));
          assertEquals(List.of(), children(outcome));
        }
        assertTrue(List.of("failure", "skipped", "error").containsAll(names), names::toString);
        assertTrue(names.size() <= 1, names::toString);
        cases++;
      }
    }
    assertEquals(20, cases);
  }

  private static void fits(Element one, String name, Set<String> required, Set<String> optional) {
    assertEquals(name, one.getNodeName());
    Set<String> there = new HashSet<>();
    for (int i = 0; i < one.getAttributes().getLength(); i++) {
      there.add(one.getAttributes().item(i).getNodeName());
    }
    assertTrue(there.containsAll(required), name + " has " + there);
    there.removeAll(required);
    assertTrue(optional.containsAll(there), name + " has " + there);
    String time = one.getAttribute("time");
    assertTrue(time.matches("[0-9]{0,3}(,[0-9]{3})*(\\.[0-9]{0,3})?"), time);
  }

  private static List<Element> children(Element one) {
    List<Element> children = new ArrayList<>();
    for (Node child = one.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element) {
        children.add(element);
      }
    }
    return children;
  }

  private List<ReportTestSuite> suites() throws Exception {
    byte[] xml = report().getBytes(StandardCharsets.UTF_8);
    TestSuiteXmlParser parser = new TestSuiteXmlParser(new NullConsoleLogger());
    return parser.parse(
        new InputStreamReader(new ByteArrayInputStream(xml), StandardCharsets.UTF_8));
  }

  @Test
  void theExampleHasACaseForEachOfItsLimits() throws IOException {
    CheckReports example =
        OwnFolder.checkWithReports(Example.whole(), PrintedPaths.BELOW_FOLDER, DAY);
    String xml = text(example);
    long cases = xml.lines().filter(line -> line.contains("<testcase ")).count();
    // A case for each limit, one more for each recipe, and one for all of them.
    assertEquals(example.check().limits() + example.check().recipes() + 1, cases);
    assertFalse(xml.contains("<failure") || xml.contains("<error"));
    Set<String> different =
        xml.lines().filter(line -> line.contains("<testcase ")).collect(Collectors.toSet());
    assertEquals(cases, different.size());
  }

  /** What is no limit fails a case of its own, and is not told twice. */
  @Test
  void whatIsNoLimitFailsACaseOfItsOwn() throws IOException {
    String others = others(report());
    assertTrue(
        others.contains("<testcase classname=\"other rules\" name=\"A-1\" time=\"0\"/>"), others);
    assertTrue(others.contains("<failure type=\"unknown-content\""), others);
    assertTrue(others.contains("classname=\"other rules\" name=\"ingredients/oats.yaml\""), others);
    assertTrue(others.contains("<failure type=\"data-unit-missing\""), others);
    assertFalse(others.contains("below-minimum") || others.contains("total-is-off"), others);
  }

  /** As the build is set: a warning fails a case only where it fails the build. */
  @Test
  void aWarningFailsWhereItFailsTheBuild() throws IOException {
    LocalDate later = DAY.plusDays(40);
    for (Severity failsFrom : List.of(Severity.ERROR, Severity.WARNING)) {
      ReportSettings settings =
          new ReportSettings(PrintedPaths.BELOW_FOLDER, failsFrom, "", "", "");
      String others = others(text(OwnFolder.checkWithReports(folder, settings, DAY, later)));
      assertTrue(others.contains("name=\"pellucid.yaml\""), others);
      assertEquals(failsFrom == Severity.WARNING, others.contains("day-far-off"), others);
    }
  }

  @Test
  void aFolderWithoutRecipesIsRed() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    String xml = text(OwnFolder.checkWithReports(empty, PrintedPaths.BELOW_FOLDER, DAY));
    assertTrue(xml.contains("<failure type=\"no-recipe\""), xml);
  }

  private static String others(String xml) {
    return xml.substring(xml.indexOf("<testsuite name=\"other rules\""));
  }
}
