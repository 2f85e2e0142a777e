package dev.pellucid.engine.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The scripts that write the comparison into a review, run in earnest against programs that stand
 * for the build servers: one comment, replaced and never added to. Skipped where a machine has no
 * bash or jq.
 */
class ReplacedCommentTest {
  private static final String MARK = "<!-- pellucid: comparison of the feeds -->";

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void programs() throws IOException {
    assumeTrue(onPath("bash") && onPath("jq"));
    Files.createDirectories(folder.resolve("bin"));
    program(
        "gh",
        """
        echo "$*" >> "$LOG"
        case "$*" in
          *--paginate*) cat "$ANSWER" ;;
        esac
        """);
    program(
        "curl",
        """
        echo "$*" >> "$LOG"
        case "$*" in
          */user) echo '{"id": 7}' ;;
          *"&page=1") printf 'HTTP/2 200\\r\\nx-next-page: 2\\r\\n' > head.txt; cat "$ANSWER" ;;
          *"&page=2") printf 'HTTP/2 200\\r\\nx-next-page: \\r\\n' > head.txt; cat "$ANSWER.2" ;;
        esac
        """);
    Files.createDirectories(folder.resolve("target/comparison"));
    Files.writeString(folder.resolve("target/comparison/compare.md"), "# Feeds\n/merge\n");
  }

  private static boolean onPath(String program) {
    for (String place : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1)) {
      if (Files.isExecutable(Path.of(place, program))) {
        return true;
      }
    }
    return false;
  }

  private void program(String name, String script) throws IOException {
    Path file = folder.resolve("bin").resolve(name);
    Files.writeString(file, "#!/usr/bin/env bash\n" + script);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private String ran(String script, Map<String, String> variables)
      throws IOException, InterruptedException {
    Files.writeString(folder.resolve("script.sh"), script);
    ProcessBuilder builder =
        new ProcessBuilder("bash", "-e", "-o", "pipefail", "script.sh")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("out.txt").toFile());
    builder.environment().putAll(variables);
    builder.environment().put("LOG", folder.resolve("log.txt").toString());
    builder.environment().put("ANSWER", folder.resolve("answer").toString());
    builder
        .environment()
        .merge("PATH", folder.resolve("bin").toString(), (old, ours) -> ours + ":" + old);
    Process process = builder.start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    assertEquals(0, process.exitValue(), () -> read("out.txt"));
    return read("log.txt");
  }

  private String read(String name) {
    try {
      Path file = folder.resolve(name);
      return Files.exists(file) ? Files.readString(file) : "";
    } catch (IOException broken) {
      throw new AssertionError(broken);
    }
  }

  private String comment() throws IOException, InterruptedException {
    JsonNode step = BuildServersTest.read(BuildServersTest.WORKFLOW).at("/jobs/comment/steps/1");
    Map<String, String> variables = new TreeMap<>();
    variables.put("COMMENTS", "repos/mill/feeds/issues/3/comments");
    variables.put("COMMENT", "repos/mill/feeds/issues/comments");
    variables.put("MARK", step.at("/env/MARK").asString());
    variables.put("FOLDER", folder.resolve("target/comparison").toString());
    assertEquals(MARK, variables.get("MARK"));
    return ran(step.get("run").asString(), variables);
  }

  private String note() throws IOException, InterruptedException {
    JsonNode job = BuildServersTest.read(BuildServersTest.PIPELINE).get("note");
    Map<String, String> variables = new TreeMap<>();
    variables.put("CI_API_V4_URL", "https://server/api");
    variables.put("NOTES", "https://server/api/notes");
    variables.put("PELLUCID_NOTE_TOKEN", "token");
    variables.put("FEEDS", ".");
    variables.put("MARK", job.at("/variables/MARK").asString());
    assertEquals(MARK, variables.get("MARK"));
    return ran(job.get("script").get(0).asString(), variables);
  }

  private static String comment(int id, String login, String body) {
    return "{\"id\": %d, \"user\": {\"login\": \"%s\"}, \"body\": \"%s\"}"
        .formatted(id, login, body);
  }

  private static String note(int id, int author, String body) {
    return "{\"id\": %d, \"author\": {\"id\": %d}, \"body\": \"%s\"}".formatted(id, author, body);
  }

  @Test
  void theFirstCommentIsWritten() throws IOException, InterruptedException {
    Files.writeString(
        folder.resolve("answer"),
        "["
            + comment(1, "someone", MARK + "\\nquoted")
            + "]["
            + comment(2, "github-actions[bot]", "x")
            + "]");
    String asked = comment();
    assertTrue(asked.contains("--method POST repos/mill/feeds/issues/3/comments"), asked);
    assertFalse(asked.contains("PATCH"), asked);
    assertEquals(MARK + "\n# Feeds\n/merge\n", read("comment.md"));
  }

  @Test
  void aLaterOneTakesItsPlace() throws IOException, InterruptedException {
    Files.writeString(
        folder.resolve("answer"),
        "["
            + comment(1, "someone", MARK)
            + "]["
            + comment(22, "github-actions[bot]", MARK + "\\nold")
            + "]");
    String asked = comment();
    assertTrue(asked.contains("--method PATCH repos/mill/feeds/issues/comments/22"), asked);
    assertFalse(asked.contains("POST"), asked);
  }

  @Test
  void withoutAComparisonNothingIsWrittenAndNothingFails()
      throws IOException, InterruptedException {
    Files.delete(folder.resolve("target/comparison/compare.md"));
    assertEquals("", comment());
    assertTrue(read("out.txt").contains("::warning::There is no comparison"), read("out.txt"));
  }

  @Test
  void theFirstNoteIsWritten() throws IOException, InterruptedException {
    Files.writeString(folder.resolve("answer"), "[" + note(1, 8, MARK) + "]");
    Files.writeString(folder.resolve("answer.2"), "[" + note(2, 7, "other") + "]");
    String asked = note();
    assertTrue(asked.contains("--request POST"), asked);
    assertFalse(asked.contains("PUT"), asked);
    assertEquals(
        MARK + "\n# Feeds\n /merge\n",
        new JsonMapper().readTree(read("note.json")).get("body").asString());
  }

  @Test
  void aLaterNoteTakesItsPlaceFromAnyPage() throws IOException, InterruptedException {
    Files.writeString(folder.resolve("answer"), "[" + note(1, 8, MARK) + "]");
    Files.writeString(folder.resolve("answer.2"), "[" + note(33, 7, MARK + "\\nold") + "]");
    String asked = note();
    assertTrue(asked.contains("--request PUT"), asked);
    assertTrue(asked.contains("https://server/api/notes/33"), asked);
    assertFalse(asked.contains("POST"), asked);
  }
}
