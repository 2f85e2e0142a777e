package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When the files of a folder are those of its commit, and when they are not. */
class CleanTreeTest {
  @TempDir Path root = Path.of("");
  private Path feeds = Path.of("");

  @BeforeEach
  void plant() throws IOException {
    feeds = Files.createDirectories(root.resolve("mill/feeds"));
    put("pellucid.yaml", "format: 1\n");
    put("carp/A-1.recipe", "recipe A-1\n");
    put("carp/ä 1.premix", "premix ä\n");
    put("README.md", "x\n");
    put("target/old.recipe", "x\n");
    Files.writeString(root.resolve("mill/.gitattributes"), "carp/ export-ignore\n");
    git("init", "-q");
    git("config", "core.autocrlf", "false");
    git("add", "-A");
    git("commit", "-q", "-m", "First");
    assertClean();
  }

  private void put(String path, String text) throws IOException {
    Path file = feeds.resolve(path);
    Files.createDirectories(file.resolveSibling("."));
    Files.writeString(file, text);
  }

  private String git(String... words) throws IOException {
    return PlantedRepository.git(root.resolve("mill"), words);
  }

  private void assertClean() {
    GitState state = GitState.of(feeds.toFile());
    assertTrue(isClean(state), "not clean");
    assertEquals(10, state.commit().length());
  }

  private void assertChanged() {
    GitState state = GitState.of(feeds.toFile());
    assertEquals(10, state.commit().length());
    assertTrue(!isClean(state), "clean");
  }

  @Test
  void anEditAnAdditionAndADeletionAreChanges() throws IOException {
    put("carp/A-1.recipe", "recipe A-1 \n");
    assertChanged();
    put("carp/A-1.recipe", "recipe A-1\n");
    assertClean();
    put("carp/A-2.recipe", "recipe A-2\n");
    assertChanged();
    // Told to be ignored, and staged only.
    Files.writeString(root.resolve("mill/.gitignore"), "A-2.recipe\n");
    assertChanged();
    git("add", "-f", "feeds/carp/A-2.recipe");
    assertChanged();
    git("commit", "-q", "-m", "Second");
    assertClean();
    Files.delete(feeds.resolve("pellucid.yaml"));
    assertChanged();
  }

  @Test
  void whatNoFeedHangsOnIsNone() throws IOException {
    put("README.md", "y\n");
    put("target/new.recipe", "x\n");
    put("target/old.recipe", "y\n");
    put(".notes/A-9.recipe", "x\n");
    put("carp/A-1.figures", "x\n");
    assertClean();
  }

  @Test
  void lineEndsOfACheckoutAreNone() throws IOException {
    put("carp/A-1.recipe", "recipe A-1\r\n");
    assertClean();
    put("carp/A-1.recipe", "recipe\rA-1\n");
    assertChanged();
  }

  @Test
  void theIndexCannotHideAnEdit() throws IOException {
    for (String hiding : List.of("--assume-unchanged", "--skip-worktree")) {
      git("update-index", hiding, "feeds/carp/A-1.recipe");
      put("carp/A-1.recipe", "recipe A-1 edited\n");
      assertEquals("", git("status", "--porcelain"));
      assertChanged();
      git("update-index", "--no-assume-unchanged", "--no-skip-worktree", "feeds/carp/A-1.recipe");
      put("carp/A-1.recipe", "recipe A-1\n");
      assertClean();
    }
  }

  @Test
  void aRepositoryWithLongerNamesDoes() throws IOException {
    Path other = Files.createDirectories(root.resolve("longer"));
    PlantedRepository.git(other, "init", "-q", "--object-format=sha256");
    Files.writeString(other.resolve("A-1.recipe"), "recipe A-1\n");
    PlantedRepository.git(other, "add", "-A");
    PlantedRepository.git(other, "commit", "-q", "-m", "First");
    assertTrue(isClean(GitState.of(other.toFile())));
    Files.writeString(other.resolve("A-1.recipe"), "recipe A-1 edited\n");
    assertTrue(!isClean(GitState.of(other.toFile())));
  }

  private static boolean isClean(GitState state) {
    return state.uncommitted().filter(paths -> paths.isEmpty()).isPresent();
  }
}
