package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.folder.Past;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A git that hangs, prints without end, breaks off or is not there: the build goes on or says so.
 */
@DisabledOnOs(OS.WINDOWS)
@Timeout(60)
class StrangeGitTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Git.Limits SHORT =
      new Git.Limits(Duration.ofSeconds(2), Duration.ofSeconds(2), 1 << 16, 1 << 20);

  @TempDir Path root = Path.of("");
  private Path feeds = Path.of("");

  @BeforeEach
  void plant() throws IOException {
    feeds = Files.createDirectories(root.resolve("mill/feeds"));
    Files.writeString(feeds.resolve("pellucid.yaml"), "format: 1\nname: Tests\ncurrency: EUR\n");
    Files.writeString(feeds.resolve("A-1.recipe"), "recipe A-1\n");
    git("init", "-q");
    git("add", "-A");
    git("commit", "-q", "-m", "First");
  }

  private String git(String... words) throws IOException {
    return PlantedRepository.git(root.resolve("mill"), words);
  }

  /** A git that does as it is told at one command and else as git does. */
  private Git strange(String command, String script) throws IOException {
    Path git = root.resolve("git-" + command);
    Files.writeString(
        git,
        "#!/bin/sh\nfor word; do if [ \"$word\" = "
            + command
            + " ]; then echo $$ > '"
            + root.resolve("pid")
            + "'\n"
            + script
            + "\nfi; done\nexec git \"$@\"\n");
    assertTrue(git.toFile().setExecutable(true));
    return new Git(feeds.toFile(), Optional.of(git.toFile()), SHORT);
  }

  private static String trouble(Asking asking) {
    return String.valueOf(assertThrows(GitTrouble.class, asking::run).getMessage());
  }

  private interface Asking {
    void run() throws IOException;
  }

  private void assertStopped() throws Exception {
    long pid = Long.parseLong(Files.readString(root.resolve("pid")).strip());
    for (int i = 0; i < 100 && ProcessHandle.of(pid).filter(ProcessHandle::isAlive).isPresent(); ) {
      TimeUnit.MILLISECONDS.sleep(50);
      i++;
    }
    assertTrue(ProcessHandle.of(pid).filter(ProcessHandle::isAlive).isEmpty(), "still runs");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"sleep 300", "trap '' TERM INT HUP; sleep 300; sleep 300", "exec 2>&-; sleep 300"})
  void oneThatHangsIsStopped(String script) throws Exception {
    Git git = strange("rev-parse", script);
    long begun = System.nanoTime();
    String said = trouble(() -> NamedState.of(git, "HEAD"));
    assertTrue(said.startsWith("git gave no answer within 2 s and was stopped: git rev-p"), said);
    GitState state = GitState.of(git);
    assertEquals("", state.commit());
    assertTrue(state.trouble().orElse("").contains("no answer within 2 s"));
    assertTrue(Duration.ofNanos(System.nanoTime() - begun).toSeconds() < 20);
    assertStopped();
  }

  /**
   * Whether its child still holds the output when it is read is a race, so that either an empty
   * answer or none is told; it is never waited for.
   */
  @Test
  void oneThatEndsAndLeavesAChildIsNotWaitedFor() throws Exception {
    Git git = strange("rev-parse", "sleep 30 & exit 0");
    long begun = System.nanoTime();
    assertFalse(trouble(() -> NamedState.of(git, "HEAD")).isBlank());
    assertEquals("", GitState.of(git).commit());
    assertTrue(Duration.ofNanos(System.nanoTime() - begun).toSeconds() < 20);
  }

  @Test
  void oneThatHangsAmidAnArchiveIsStopped() throws Exception {
    Git git = strange("archive", "printf abc; sleep 300");
    String said = trouble(() -> compared(git, "HEAD"));
    assertTrue(said.contains("no answer within 2 s and was stopped: git archive"), said);
    assertStopped();
  }

  @ParameterizedTest
  @ValueSource(strings = {"yes", "yes >&2", "cat /dev/zero"})
  void oneThatPrintsWithoutEndIsStopped(String script) throws Exception {
    Git asked = strange("rev-parse", script);
    String said = trouble(() -> NamedState.of(asked, "HEAD"));
    assertTrue(
        said.contains("printed more than 65536 bytes and was stopped")
            || said.contains("no answer within 2 s"),
        said);
    assertStopped();
    Git packing = strange("archive", script);
    assertThrows(IOException.class, () -> compared(packing, "HEAD"));
    assertStopped();
  }

  @Test
  void anArchiveThatBreaksOffIsTold() throws Exception {
    Git failing =
        strange("archive", "git \"$@\" | head -c 700; echo 'fatal: no disk' >&2; exit 128");
    assertEquals("git archive failed: fatal: no disk", trouble(() -> compared(failing, "HEAD")));
    Git silent = strange("archive", "git \"$@\" | head -c 700; exit 0");
    IOException cut = assertThrows(IOException.class, () -> compared(silent, "HEAD"));
    assertEquals("the archive is cut off", cut.getMessage());
  }

  private void compared(Git git, String from) throws IOException {
    Pellucid.compare(NamedState.of(git, from), NamedState.of(git, ""), DAY, "full.html");
  }

  @Test
  void eachThingThatIsMissingHasItsOwnSentence() throws Exception {
    File folder = feeds.toFile();
    Git none = new Git(folder, Optional.empty(), SHORT);
    assertTrue(trouble(() -> NamedState.of(none, "HEAD")).startsWith("the program git was not"));
    assertEquals(new GitState("", Optional.empty(), Optional.empty()), GitState.of(none));

    Git git = new Git(folder);
    assertEquals(
        "no-such is neither a folder nor a revision that git knows here; git log and git branch"
            + " --all show which there are",
        trouble(() -> NamedState.of(git, "no-such")));
    for (String range : List.of("main...HEAD", "HEAD..HEAD")) {
      String said = trouble(() -> NamedState.of(git, range));
      assertTrue(said.startsWith(range + " is a range, and one revision is taken here"), said);
      assertTrue(said.contains("give -Dpellucid.from=main..."), said);
    }
    assertTrue(
        trouble(() -> NamedState.of(git, "main\u202Ex")).startsWith("main<U+202E>x is neither"));
    for (String no : List.of("^HEAD", "HEAD^{tree}", "HEAD:feeds", ":/nothing", "@{upstream}")) {
      assertTrue(trouble(() -> NamedState.of(git, no)).startsWith(no + " is neither"), no);
    }
    NamedState.of(git, ":/First");
    NamedState.of(git, "HEAD@{0}");

    Path later = Files.createDirectories(root.resolve("mill/later"));
    Git moved = new Git(later.toFile());
    assertEquals(
        "the folder "
            + later
            + " is not in the revision HEAD; where it had another place then, unpack that state"
            + " and name its folder",
        trouble(() -> NamedState.of(moved, "HEAD")));

    Path bare = Files.createDirectories(root.resolve("no-repository"));
    assertTrue(trouble(() -> NamedState.of(bare.toFile(), "HEAD")).contains("is not under git"));
    PlantedRepository.git(bare, "init", "-q");
    assertTrue(
        trouble(() -> NamedState.of(bare.toFile(), "HEAD"))
            .startsWith("nothing was committed yet"));
    assertEquals(List.of(), GitState.last(new Git(bare.toFile()), 3));
    assertEquals("", GitState.of(bare.toFile()).commit());
  }

  @Test
  void aRepositoryOfAnotherUserIsNotReadAndSaysHow() throws Exception {
    Path git = root.resolve("git-of-another");
    Files.writeString(
        git, "#!/bin/sh\nGIT_TEST_ASSUME_DIFFERENT_OWNER=1 HOME='" + root + "' exec git \"$@\"\n");
    assertTrue(git.toFile().setExecutable(true));
    Git another = new Git(feeds.toFile(), Optional.of(git.toFile()), SHORT);
    String said = trouble(() -> NamedState.of(another, "HEAD"));
    assertTrue(said.contains("belongs to another user"), said);
    assertTrue(GitState.of(another).trouble().isPresent());
    // What the user trusts by own settings stays trusted.
    Files.writeString(root.resolve(".gitconfig"), "[safe]\n\tdirectory = *\n");
    compared(another, "HEAD");
  }

  @Test
  void variablesThatLeadElsewhereAreNotHandedOnAndThoseOfTheUserAre() {
    Map<String, String> environment = new TreeMap<>();
    environment.put("HOME", "/home/miller");
    environment.put("GIT_CONFIG_GLOBAL", "/home/miller/config");
    environment.put("GIT_CONFIG_COUNT", "1");
    environment.put("GIT_CONFIG_KEY_0", "safe.directory");
    environment.put("GIT_CONFIG_VALUE_0", "*");
    environment.put("GIT_DIR", "/elsewhere/.git");
    environment.put("GIT_INDEX_FILE", "/elsewhere/index");
    environment.put("GIT_EXTERNAL_DIFF", "program");
    environment.put("GIT_SSH_COMMAND", "program");
    environment.put("GIT_CONFIG", "/elsewhere/config");
    GitSettings.into(environment, List.of("filter.a=b.smudge", "filter.a=b.required"));
    assertEquals("/home/miller", environment.get("HOME"));
    assertEquals("/home/miller/config", environment.get("GIT_CONFIG_GLOBAL"));
    assertEquals("3", environment.get("GIT_CONFIG_COUNT"));
    assertEquals("safe.directory", environment.get("GIT_CONFIG_KEY_0"));
    assertEquals("filter.a=b.smudge", environment.get("GIT_CONFIG_KEY_1"));
    assertEquals("", environment.get("GIT_CONFIG_VALUE_1"));
    assertEquals("false", environment.get("GIT_CONFIG_VALUE_2"));
    assertEquals("0", environment.get("GIT_TERMINAL_PROMPT"));
    for (String gone :
        List.of(
            "GIT_DIR", "GIT_INDEX_FILE", "GIT_EXTERNAL_DIFF", "GIT_SSH_COMMAND", "GIT_CONFIG")) {
      assertFalse(environment.containsKey(gone), gone);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sleep 60", "exec yes", "exit 3", "printf '0123 blob 99999'; exit 0"})
  void recordsOfEarlierCommitsAreToldOfIt(String script) throws Exception {
    Git git = strange("cat-file", script);
    GitPast past = new GitPast(git, "HEAD", new DataOfThen("1", Optional.empty()));
    String head = git.said("rev-parse", "HEAD").orElseThrow();
    Past.Then then = Optional.ofNullable(past.at(List.of(head), p -> true).get(head)).orElseThrow();
    assertTrue(then.texts().isEmpty());
    assertFalse(then.doubt().isEmpty());
  }
}
