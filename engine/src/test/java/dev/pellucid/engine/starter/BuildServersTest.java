package dev.pellucid.engine.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.pellucid.engine.outcome.ReportFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The workflows that a new folder gets, against the published schemas of their build servers. */
class BuildServersTest {
  static final String WORKFLOW = "dot-github/workflows/feeds.yml";
  static final String PIPELINE = "dot-gitlab-ci.yml";

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7);

  static String template(String name) throws IOException {
    return resource("/dev/pellucid/starter/common/" + name);
  }

  static JsonNode read(String name) throws IOException {
    return new YAMLMapper().readTree(template(name));
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = BuildServersTest.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static List<String> told(String schema, String yaml) throws IOException {
    return REGISTRY
        .getSchema(resource("/build-servers/" + schema), InputFormat.JSON)
        .validate(yaml, InputFormat.YAML)
        .stream()
        .map(Error::toString)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({"workflow.schema.json, " + WORKFLOW, "pipeline.schema.json, " + PIPELINE})
  void fitsThePublishedSchema(String schema, String name) throws IOException {
    assertEquals(List.of(), told(schema, template(name)));
  }

  /** So that it is known that the schemas see something. */
  @ParameterizedTest
  @CsvSource({
    "workflow.schema.json, dot-github/workflows/feeds.yml, runs-on:, run-on:",
    "workflow.schema.json, dot-github/workflows/feeds.yml, contents: read, contents: reads",
    "workflow.schema.json, dot-github/workflows/feeds.yml, pull_request:, pull_requests:",
    "workflow.schema.json, dot-github/workflows/feeds.yml, timeout-minutes: 30, time: 30",
    "pipeline.schema.json, dot-gitlab-ci.yml, expire_in: 3 months, expires_in: 3 months",
    "pipeline.schema.json, dot-gitlab-ci.yml, image: alpine:3, image: 3",
    "pipeline.schema.json, dot-gitlab-ci.yml, when: always, when: ever",
    "pipeline.schema.json, dot-gitlab-ci.yml, GIT_DEPTH: \"0\", GIT_DEPTH: [0]"
  })
  void whatIsWrongDoesNotFit(String schema, String name, String right, String wrong)
      throws IOException {
    String text = template(name);
    assertTrue(text.contains(right), right);
    assertNotEquals(List.of(), told(schema, text.replace(right, wrong)));
  }

  @Test
  void whatRunsTheFilesOfAPullRequestMayOnlyRead() throws IOException {
    JsonNode workflow = read(WORKFLOW);
    assertEquals("{\"contents\":\"read\"}", workflow.get("permissions").toString());
    assertFalse(template(WORKFLOW).contains("pull_request_target"));
    int writing = 0;
    for (JsonNode job : workflow.get("jobs")) {
      boolean writes =
          job.has("permissions") && job.get("permissions").toString().contains("write");
      if (writes) {
        writing++;
        assertFalse(job.toString().contains("mvn"), job::toString);
        assertTrue(job.get("if").asString().contains("head.repo.full_name == github.repository"));
      }
    }
    assertEquals(2, writing);
  }

  /**
   * What somebody else named, as a branch, comes into a command as a variable and never as text.
   */
  @Test
  void noWordOfAPullRequestBecomesPartOfACommand() throws IOException {
    for (JsonNode job : read(WORKFLOW).get("jobs")) {
      for (JsonNode step : job.get("steps")) {
        assertFalse(step.has("run") && step.get("run").asString().contains("${{"), step::toString);
      }
    }
  }

  @Test
  void actionsAreOfTheServersOwnersAndFixedToAMajorVersion() throws IOException {
    Matcher uses = Pattern.compile("uses: (\\S+)").matcher(template(WORKFLOW));
    int found = 0;
    while (uses.find()) {
      found++;
      assertTrue(uses.group(1).matches("(actions|github)/[a-z/-]+@v\\d+"), uses.group(1));
    }
    assertTrue(found > 5);
  }

  /** Each file of target that they take, one of our goals writes by that name. */
  @Test
  void takeOnlyWhatIsWritten() throws IOException {
    List<String> ours = List.of("check-reports", "comparison", "batch-sheets", "pages");
    List<String> names =
        List.of(
            ReportFiles.ANNOTATIONS,
            ReportFiles.SUMMARY,
            ReportFiles.SARIF,
            ReportFiles.JUNIT,
            ReportFiles.CODE_QUALITY,
            "compare.md");
    for (String name : List.of(WORKFLOW, PIPELINE)) {
      String text = template(name);
      assertTrue(found("target/([a-z-]+)", text).stream().allMatch(ours::contains), text);
      List<String> files = found("(?:/|reports\")([a-z-]+\\.(?:md|json|txt|sarif|xml))", text);
      files.removeIf(file -> file.equals("pom.xml"));
      assertTrue(names.containsAll(files), files::toString);
      assertTrue(found("pellucid:([a-z-]+) ", text).contains("compare"), text);
      assertTrue(text.contains("pellucid:report"), text);
    }
  }

  /** Without the commit where the branch began nothing can be compared. */
  @Test
  void allOfTheHistoryIsFetched() throws IOException {
    JsonNode steps = read(WORKFLOW).get("jobs").get("check").get("steps");
    assertEquals(0, steps.get(0).get("with").get("fetch-depth").asInt());
    assertEquals("0", read(PIPELINE).get("variables").get("GIT_DEPTH").asString());
  }

  private static List<String> found(String pattern, String text) {
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }
}
