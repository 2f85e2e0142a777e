package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.folder.Past;
import dev.pellucid.engine.folder.Past.Then;
import dev.pellucid.engine.folder.Past.Written;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder in a real repository: what git tells of its earlier commits, and what it cannot. */
class GitPastTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String RECIPE = "R-1.recipe";
  private static final String RECORD = "batches/R-1-2026-11-18-1.yaml";

  @TempDir static Path root = Path.of("");
  private static Path feeds = Path.of("");
  private static String first = "";
  private static String released = "";

  @BeforeAll
  static void plant() throws Exception {
    feeds = root.resolve("mill/feeds");
    PlantedRepository.git(root, "init", "-q");
    write(
        feeds,
        "pellucid.yaml",
        "format: 1\nname: Mill of the test\ncurrency: EUR\njurisdiction: none\n");
    write(feeds, RECIPE, recipe("60"));
    first = commit("The recipe");
    write(feeds, RECORD, record("60.0 kg", first) + "release: {decision: released, by: lead}\n");
    released = commit("A batch");
    write(feeds, RECIPE, recipe("50"));
    commit("Another recipe");
  }

  private static String recipe(String maize) {
    return """
        recipe R-1 "Mash"
          status    draft
          species   common-carp
          fish      30 to 800 g
          habit     sinking
          batch     100 kg weighed

        mix
          maize                        %s.00 %%
          wheat                        rest

        process
          grind      screen            1.0 mm
          blend      time              15 min
        """
        .formatted(maize);
  }

  private static String record(String weight, String commit) {
    return """
        size: 100 kg
        made-from: {commit: %s}
        weighed:
          - {line: maize, weight: %s}
          - {line: wheat, weight: 40.0 kg}
        """
        .formatted(commit, weight);
  }

  private static void write(Path folder, String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(Optional.ofNullable(file.getParent()).orElseThrow());
    Files.writeString(file, text);
  }

  private static String commit(String words) throws Exception {
    PlantedRepository.git(root, "add", "-A");
    PlantedRepository.git(root, "commit", "-q", "-m", words);
    return new Git(root.toFile()).said("rev-parse", "--short=10", "HEAD").orElseThrow();
  }

  private static GitPast past(Path folder) {
    return past(new Git(folder.toFile()));
  }

  private static GitPast past(Git git) {
    return new GitPast(git, "HEAD", new DataOfThen("1", Optional.empty()));
  }

  private static Then then(Past past, String commit) {
    return Optional.ofNullable(past.at(List.of(commit), path -> true).get(commit)).orElseThrow();
  }

  private static List<Finding> findings(Path folder) throws IOException {
    FolderState state = ComingAlong.under(FolderState.at(folder)).knowing(past(folder));
    return Pellucid.check(state, DAY).findings().stream()
        .filter(it -> it.span().file().path().startsWith("batches/"))
        .toList();
  }

  private static String codes(Path folder) throws IOException {
    return findings(folder).stream()
        .map(it -> it.code().text())
        .sorted()
        .distinct()
        .toList()
        .toString();
  }

  @Test
  void aCommitIsReadAsItWas() {
    Then then = then(past(feeds), first);
    assertEquals("", then.doubt());
    String text =
        then.texts()
            .flatMap(it -> it.read(RECIPE, new ArrayList<>()))
            .map(SourceFile::text)
            .orElse("");
    assertEquals(recipe("60"), text);
    assertFalse(then.texts().orElseThrow().has(RECORD));
    assertTrue(
        then.texts().orElseThrow().tells("nutrients/nutrients.yaml")
            || !then.texts().orElseThrow().comingAlong().isEmpty());
  }

  @Test
  void onlyWhatIsWantedIsRead() {
    Past past = past(feeds);
    Then then =
        Optional.ofNullable(past.at(List.of(first), path -> !path.endsWith(".recipe")).get(first))
            .orElseThrow();
    assertFalse(then.texts().orElseThrow().has(RECIPE));
    assertTrue(then(past, first).texts().orElseThrow().has(RECIPE));
  }

  @Test
  void theRecordIsJudgedByItsCommit() throws IOException {
    assertFalse(codes(feeds).contains("weight-off-target"), codes(feeds));
    assertFalse(codes(feeds).contains("record-not-judged"), findings(feeds).toString());
  }

  @Test
  void whatACommitWroteIsTold() {
    Past.History history = past(feeds).history("batches");
    assertEquals("", history.doubt());
    assertEquals(List.of(RECORD), history.written().stream().map(Written::path).toList());
    assertEquals(released, history.written().get(0).commit());
    assertTrue(history.written().get(0).text().orElse("").contains("decision: released"));
  }

  @Test
  void aShallowCloneSaysWhatItCannotKnow(@TempDir Path elsewhere) throws Exception {
    Path shallow = elsewhere.resolve("shallow");
    PlantedRepository.git(
        elsewhere, "clone", "-q", "--depth", "1", root.toUri().toString(), shallow.toString());
    List<Finding> found = findings(shallow.resolve("mill/feeds"));
    Finding note =
        found.stream()
            .filter(it -> it.code().text().equals("record-not-judged"))
            .findFirst()
            .orElseThrow(() -> new AssertionError(found.toString()));
    assertTrue(note.headline().contains("the history of this clone ends early"), note.headline());
    assertTrue(note.helps().get(0).startsWith("git fetch --unshallow"), note.helps().toString());
    assertTrue(
        found.stream().noneMatch(it -> it.code().text().equals("weight-off-target")),
        found.toString());
  }

  @Test
  void aSquashedCommitIsNotThere(@TempDir Path elsewhere) throws Exception {
    Path squashed = elsewhere.resolve("squashed");
    PlantedRepository.git(elsewhere, "init", "-q", squashed.toString());
    Path folder = squashed.resolve("feeds");
    write(
        folder,
        "pellucid.yaml",
        "format: 1\nname: Mill of the test\ncurrency: EUR\njurisdiction: none\n");
    write(folder, RECIPE, recipe("50"));
    write(folder, RECORD, record("60.0 kg", first));
    PlantedRepository.git(squashed, "add", "-A");
    PlantedRepository.git(squashed, "commit", "-q", "-m", "All in one");
    Finding note = findings(folder).get(0);
    assertEquals("record-not-judged", note.code().text());
    assertTrue(note.headline().contains("was rewritten, or never came here"), note.headline());
  }

  @Test
  void aFolderThatWasElsewhereThenIsTold(@TempDir Path elsewhere) throws Exception {
    Path clone = elsewhere.resolve("moved");
    PlantedRepository.git(elsewhere, "clone", "-q", root.toUri().toString(), clone.toString());
    PlantedRepository.git(clone, "mv", "mill/feeds", "feeds");
    PlantedRepository.git(clone, "commit", "-q", "-m", "Move");
    Then then = then(past(clone.resolve("feeds")), first);
    assertTrue(then.doubt().contains("had another place then"), then.doubt());
    assertEquals("[record-not-judged]", codes(clone.resolve("feeds")));
  }

  @Test
  void aRepositoryInARepositoryIsAskedItself(@TempDir Path elsewhere) throws Exception {
    Path outer = elsewhere.resolve("outer");
    PlantedRepository.git(elsewhere, "init", "-q", outer.toString());
    PlantedRepository.git(outer, "clone", "-q", root.toUri().toString(), "inner");
    assertEquals("", then(past(outer.resolve("inner/mill/feeds")), first).doubt());
  }

  @Test
  void withoutGitOrARepositoryItIsTold(@TempDir Path elsewhere) throws IOException {
    write(elsewhere, RECIPE, recipe("50"));
    write(elsewhere, RECORD, record("60.0 kg", first));
    assertFalse(past(elsewhere).isKept());
    assertTrue(then(past(elsewhere), first).doubt().contains("is not under git"));
    Git none =
        new Git(
            feeds.toFile(),
            Optional.empty(),
            new Git.Limits(Duration.ofSeconds(1), Duration.ofSeconds(1), 1000, 1000));
    assertFalse(past(none).isKept());
    assertTrue(then(past(none), first).doubt().contains("was not found on the path"));
    assertEquals(Past.History.NONE, past(none).history("batches"));
    // A folder that lies in a repository and was never committed there.
    Path beside = root.resolve("beside");
    write(beside, RECIPE, recipe("50"));
    assertFalse(past(beside).isKept());
    assertTrue(then(past(beside), first).doubt().contains("was never committed"));
  }

  @Test
  void whatIsNoCommitIsNone() {
    Map<String, Then> then = past(feeds).at(List.of("0123456789", first), path -> true);
    assertTrue(Optional.ofNullable(then.get("0123456789")).orElseThrow().texts().isEmpty());
    assertTrue(Optional.ofNullable(then.get(first)).orElseThrow().texts().isPresent());
  }

  @Test
  void moreThanMayBeSaidIsTrouble() {
    Git git =
        new Git(
            feeds.toFile(),
            Optional.of(new java.io.File("/usr/bin/git")),
            new Git.Limits(Duration.ofSeconds(30), Duration.ofSeconds(30), 100000, 10));
    assertTrue(then(past(git), first).doubt().contains("more than 10 bytes"));
  }
}
