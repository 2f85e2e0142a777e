package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Pellucid;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A repository whose configuration names programs has none of them run: each leaves a mark where it
 * is run. That the marks are left at all is shown with git as it is.
 */
@DisabledOnOs(OS.WINDOWS)
@Timeout(60)
class HostileRepositoryTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @TempDir Path root = Path.of("");
  private Path feeds = Path.of("");
  private Path mark = Path.of("");
  private Path program = Path.of("");

  @BeforeEach
  void plant() throws IOException {
    mark = root.resolve("mark");
    program = root.resolve("program");
    Files.writeString(program, "#!/bin/sh\necho ran >> '" + mark + "'\nexec cat\n");
    assertTrue(program.toFile().setExecutable(true));
    feeds = Files.createDirectories(root.resolve("mill/feeds"));
    Files.writeString(feeds.resolve("pellucid.yaml"), "format: 1\nname: Tests\ncurrency: EUR\n");
    Files.writeString(feeds.resolve("A-1.recipe"), "recipe A-1\n# $Format:%G? %GS$\n");
    Files.writeString(
        feeds.resolve(".gitattributes"),
        "*.recipe export-subst diff=evil merge=evil filter=evil\n*.yaml filter=e=v.il\n");
    git("init", "-q");
    git("add", "-A");
    git("commit", "-q", "-m", "First");
    sign();
    Files.deleteIfExists(mark);
  }

  private String git(String... words) throws IOException {
    return PlantedRepository.git(root.resolve("mill"), words);
  }

  /** Gives the last commit a signature, so that who asks for it runs a program. */
  private void sign() throws IOException {
    Path text = root.resolve("commit");
    String commit = git("cat-file", "commit", "HEAD");
    int headEnds = commit.indexOf("\n\n");
    Files.writeString(
        text,
        commit.substring(0, headEnds)
            + "\ngpgsig -----BEGIN PGP SIGNATURE-----\n \n abcd\n -----END PGP SIGNATURE-----"
            + commit.substring(headEnds));
    String signed = git("hash-object", "-w", "-t", "commit", text.toString()).strip();
    git("reset", "-q", "--soft", signed);
  }

  static List<String> settings() {
    return List.of(
        "core.fsmonitor",
        "core.pager",
        "core.editor",
        "core.sshCommand",
        "core.gitProxy",
        "core.askPass",
        "core.alternateRefsCommand",
        "credential.helper",
        "diff.external",
        "diff.evil.command",
        "diff.evil.textconv",
        "filter.evil.clean",
        "filter.evil.smudge",
        "filter.evil.process",
        "filter.e=v.il.smudge",
        "filter.e=v.il.process",
        "merge.evil.driver",
        "gpg.program",
        "gpg.openpgp.program",
        "gpg.x509.program",
        "gpg.ssh.program",
        "gpg.ssh.defaultKeyCommand",
        "tar.tar.command",
        "tar.zip.command",
        "tar.tgz.command",
        "tar.tar.gz.command",
        "pager.log",
        "pager.archive",
        "pager.rev-list",
        "pager.rev-parse",
        "pager.ls-tree",
        "pager.config",
        "sequence.editor",
        "uploadpack.packObjectsHook",
        "uploadarchive.command",
        "trace2.eventTarget",
        "interactive.diffFilter");
  }

  /** Everything that is ever asked of git. */
  private List<String> askEverything() throws IOException {
    List<String> troubles = new ArrayList<>();
    Git git = new Git(feeds.toFile());
    GitState.of(git).trouble().ifPresent(troubles::add);
    for (GitState.Commit commit : GitState.last(git, 5)) {
      NamedState.of(git, commit.name());
    }
    GitPast past = new GitPast(git, "HEAD", new DataOfThen("1", Optional.empty()));
    String head = git.said("rev-parse", "HEAD").orElse("0123456789");
    past.at(List.of(head, "0123456789"), path -> true);
    past.history(".");
    for (String name : List.of("HEAD", "HEAD~0", "no-such-revision", "HEAD:A-1.recipe")) {
      try {
        Pellucid.compare(NamedState.of(git, name), NamedState.of(git, ""), DAY, "full.html");
      } catch (GitTrouble told) {
        troubles.add(String.valueOf(told.getMessage()));
      }
    }
    return troubles;
  }

  @ParameterizedTest
  @MethodSource("settings")
  void noProgramIsRun(String setting) throws IOException {
    git("config", setting, program.toString());
    git("config", "log.showSignature", "true");
    if (setting.startsWith("filter.")) {
      git("config", setting.substring(0, setting.lastIndexOf('.')) + ".required", "true");
    }
    if (setting.startsWith("gpg.ssh") || setting.startsWith("gpg.x509")) {
      git("config", "gpg.format", setting.split("\\.", -1)[1]);
    }
    assertEquals(2, askEverything().size(), "only what is no revision is refused");
    assertFalse(Files.exists(mark), setting);
    assertEquals("#!/bin/sh", Files.readAllLines(program).get(0));
  }

  @Test
  void noHookIsRunAndNoAlias() throws IOException {
    git("config", "alias.archive", "!" + program);
    git("config", "alias.rev-parse", "!" + program);
    Path hooks = Files.createDirectories(root.resolve("mill/.git/hooks"));
    for (String hook :
        List.of(
            "post-index-change", "fsmonitor-watchman", "reference-transaction", "post-checkout")) {
      Files.copy(program, hooks.resolve(hook));
      assertTrue(hooks.resolve(hook).toFile().setExecutable(true));
    }
    askEverything();
    assertFalse(Files.exists(mark));
    git("config", "core.hooksPath", hooks.toString());
    askEverything();
    assertFalse(Files.exists(mark));
  }

  @Test
  void whatIsNotThereIsNotFetched() throws IOException {
    promise();
    List<String> troubles = askEverything();
    assertTrue(troubles.get(0).startsWith("git archive failed: "), troubles.toString());
    assertFalse(Files.exists(mark));
  }

  /** Takes a recipe out of the store of objects and names a program that would bring it. */
  private void promise() throws IOException {
    String blob = git("rev-parse", "HEAD:feeds/A-1.recipe").strip();
    Files.delete(
        root.resolve("mill/.git/objects").resolve(blob.substring(0, 2)).resolve(blob.substring(2)));
    git("config", "core.repositoryFormatVersion", "1");
    git("config", "extensions.partialClone", "origin");
    git("config", "remote.origin.promisor", "true");
    // It says nothing, or git would go on talking to it.
    Files.writeString(program, "#!/bin/sh\necho ran >> '" + mark + "'\n");
    git("config", "remote.origin.url", "ext::" + program);
    git("config", "protocol.allow", "always");
    git("config", "protocol.ext.allow", "always");
  }

  /** The commands that the goals would be without this care, so that the tests above can fail. */
  static Stream<List<String>> careless() {
    return Stream.of(
        List.of("core.fsmonitor", "status"),
        List.of("filter.evil.smudge", "archive", "--format=tar", "HEAD"),
        List.of("filter.evil.process", "archive", "--format=tar", "HEAD"),
        List.of("filter.e=v.il.smudge", "archive", "--format=tar", "HEAD"),
        List.of("gpg.program", "log", "--show-signature", "-1"),
        List.of("tar.zip.command", "archive", "--format=zip", "HEAD"));
  }

  @ParameterizedTest
  @MethodSource("careless")
  void gitAsItIsRunsThem(List<String> words) throws Exception {
    git("config", words.get(0), program.toString());
    asItIs(words.subList(1, words.size()));
    assertTrue(Files.exists(mark), words.toString());
  }

  @Test
  void gitAsItIsFetchesWhatIsNotThere() throws Exception {
    promise();
    asItIs(List.of("archive", "--format=tar", "HEAD"));
    assertTrue(Files.exists(mark));
  }

  private void asItIs(List<String> words) throws Exception {
    List<String> command = new ArrayList<>(List.of("git"));
    command.addAll(words);
    ProcessBuilder git = new ProcessBuilder(command).directory(feeds.toFile());
    git.environment().remove("GIT_NO_LAZY_FETCH");
    Process run = git.redirectErrorStream(true).start();
    run.getOutputStream().close();
    run.getInputStream().readAllBytes();
    run.waitFor();
  }

  @Test
  void aBareRepositoryAmongTheFilesIsNotTakenForOne() throws IOException {
    Path bare = Files.createDirectories(feeds.resolve("bare"));
    PlantedRepository.git(bare, "init", "-q", "--bare");
    PlantedRepository.git(bare, "config", "core.fsmonitor", program.toString());
    PlantedRepository.git(bare, "config", "core.bare", "false");
    PlantedRepository.git(bare, "config", "core.worktree", ".");
    Files.writeString(bare.resolve("pellucid.yaml"), "format: 1\n");
    GitTrouble told =
        assertThrows(GitTrouble.class, () -> NamedState.of(new Git(bare.toFile()), "HEAD"));
    assertTrue(String.valueOf(told.getMessage()).contains("is not under git"), told.getMessage());
    assertEquals("", GitState.of(new Git(bare.toFile())).commit());
    assertFalse(Files.exists(mark));
  }

  @Test
  void aWorkTreeThatIsSaidToBeElsewhereIsNotTheFolder() throws IOException {
    Path elsewhere = Files.createDirectories(root.resolve("elsewhere"));
    git("config", "core.worktree", elsewhere.toString());
    GitTrouble told =
        assertThrows(GitTrouble.class, () -> NamedState.of(new Git(feeds.toFile()), "HEAD"));
    assertTrue(String.valueOf(told.getMessage()).contains("is not under git"), told.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--output=FILE",
        "-oFILE",
        "--remote=ext::FILE",
        "--exec=FILE",
        "--add-file=FILE",
        "--all",
        "-",
        "HEAD\n--output=FILE",
        "HEAD\u0007",
        "\u0000"
      })
  void noNameIsAnOption(String name) throws IOException {
    Path file = Files.writeString(root.resolve("kept"), "kept\n", StandardCharsets.UTF_8);
    String planted = name.replace("FILE", file.toString());
    GitTrouble told =
        assertThrows(GitTrouble.class, () -> NamedState.of(new Git(feeds.toFile()), planted));
    String said = String.valueOf(told.getMessage());
    assertTrue(said.contains("cannot be the name of a revision"), said);
    assertTrue(said.chars().noneMatch(Character::isISOControl), said);
    assertEquals("kept\n", Files.readString(file));
  }
}
