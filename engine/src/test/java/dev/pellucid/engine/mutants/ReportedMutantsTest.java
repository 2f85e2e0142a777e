package dev.pellucid.engine.mutants;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import dev.pellucid.engine.CheckReportsTest;
import dev.pellucid.engine.Example;
import dev.pellucid.engine.ReportTexts;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CheckGoal;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.CheckReports;
import dev.pellucid.engine.goal.ReportSettings;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * One slip somewhere in the example, a few dozen times: the report of tests is red where the build
 * is, and where the build is not it is not either; SARIF fits its schema.
 *
 * <p>{@code -Dpellucid.reported=500} makes so many.
 */
class ReportedMutantsTest {
  private static final Path EXAMPLE = Example.whole();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final List<Mutation> MUTATIONS = List.of(Mutation.values());
  private static final Pattern HEAD =
      Pattern.compile(
          "<testsuites name=\"feeds\" tests=\"(\\d+)\" failures=\"(\\d+)\" errors=\"(\\d+)\"");

  @Test
  void junitIsRedWhereTheBuildIs() throws IOException {
    int count = Integer.getInteger("pellucid.reported", 24);
    Texts example = Texts.at(EXAMPLE);
    List<String> paths = paths();
    Schema schema = CheckReportsTest.sarifSchema();
    int red = 0;
    for (int i = 0; i < count; i++) {
      Random random = new Random(i);
      String path = paths.get(random.nextInt(paths.size()));
      Mutation mutation = MUTATIONS.get(random.nextInt(MUTATIONS.size()));
      Severity failsFrom = random.nextBoolean() ? Severity.ERROR : Severity.WARNING;
      String text = mutation.of(Files.readString(EXAMPLE.resolve(path)), random);
      String slip = mutation + " in " + path + ", number " + i;
      ReportSettings settings =
          new ReportSettings(PrintedPaths.BELOW_FOLDER, failsFrom, "1.2.3", "", "");
      CheckReports reports =
          CheckGoal.withReports(example.over(Map.of(path, text)), settings, DAY, DAY);
      boolean fails = fails(reports.check(), failsFrom);
      assertEquals(fails, isRed(text(reports, "limits-junit.xml")), slip);
      red += fails ? 1 : 0;
      List<Error> told = schema.validate(text(reports, "findings.sarif"), InputFormat.JSON);
      assertEquals(List.of(), told, slip);
    }
    assertTrue(red > count / 4 && red < count, red + " of " + count + " are red");
  }

  private static boolean fails(CheckReport check, Severity failsFrom) {
    return check.findings().stream()
        .anyMatch(finding -> finding.severity().compareTo(failsFrom) <= 0);
  }

  /** By the numbers of its head, which are those of its cases. */
  private static boolean isRed(String junit) {
    Matcher head = HEAD.matcher(junit);
    assertTrue(head.find(), junit);
    assertEquals(cases(junit, "<testcase "), Integer.parseInt(head.group(1)));
    assertEquals(cases(junit, "<failure "), Integer.parseInt(head.group(2)));
    assertEquals(cases(junit, "<error "), Integer.parseInt(head.group(3)));
    return cases(junit, "<failure ") + cases(junit, "<error ") > 0;
  }

  private static long cases(String junit, String element) {
    return junit.lines().filter(line -> line.strip().startsWith(element)).count();
  }

  private static String text(CheckReports reports, String name) {
    return ReportTexts.of(Objects.requireNonNull(reports.files().get(name), name));
  }

  private static List<String> paths() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> EXAMPLE.relativize(file).toString().replace('\\', '/'))
          .filter(path -> path.matches(".*\\.(yaml|recipe|premix|limits)"))
          .filter(path -> !path.startsWith("target/"))
          .sorted()
          .toList();
    }
  }
}
