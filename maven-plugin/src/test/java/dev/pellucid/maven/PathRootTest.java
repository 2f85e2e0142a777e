package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoFailureException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From where files are named, with and without a repository. */
class PathRootTest {
  @TempDir Path root = Path.of("");

  @BeforeEach
  void folders() throws IOException {
    Files.createDirectories(root.resolve("work/mill/feeds"));
    Files.createDirectories(root.resolve("other"));
  }

  private String before(String folder, @Nullable String asked, @Nullable String started)
      throws MojoFailureException {
    return PathRoot.paths(file(folder), asked == null ? null : file(asked), at(started)).before();
  }

  private @Nullable File at(@Nullable String path) {
    return path == null ? null : file(path);
  }

  private File file(String path) {
    return root.resolve(path).toFile();
  }

  @Test
  void fromTheRootOfTheRepository() throws Exception {
    Files.createDirectory(root.resolve("work/.git"));
    assertEquals("mill/feeds/", before("work/mill/feeds", null, "work/mill"));
    assertEquals("mill/feeds/", before("work/mill/feeds", null, "other"));
    assertEquals("", before("work", null, "other"));
  }

  /** In a linked work tree {@code .git} is a file. */
  @Test
  void fromTheRootOfALinkedWorkTree() throws Exception {
    Files.createDirectory(root.resolve("work/.git"));
    Files.writeString(root.resolve("work/mill/.git"), "gitdir: ../.git/worktrees/mill\n");
    assertEquals("feeds/", before("work/mill/feeds", null, "work"));
  }

  @Test
  void withoutARepositoryFromWhereMavenWasStarted() throws Exception {
    assertEquals("mill/feeds/", before("work/mill/feeds", null, "work"));
    assertEquals("", before("work/mill/feeds", null, "work/mill/feeds"));
  }

  @Test
  void elsewhereTheFolderItselfIsNamed() throws Exception {
    assertEquals("feeds/", before("work/mill/feeds", null, "other"));
    assertEquals("feeds/", before("work/mill/feeds", null, null));
  }

  @Test
  void fromTheFolderThatIsAskedFor() throws Exception {
    Files.createDirectory(root.resolve("work/.git"));
    assertEquals("feeds/", before("work/mill/feeds", "work/mill", "work"));
    assertEquals("", before("work/mill/feeds", "work/mill/feeds", "work"));
    assertEquals("work/mill/feeds/", before("work/../work/mill/feeds", ".", "other"));
  }

  @Test
  void aLinkToItWillDo() throws Exception {
    Files.createSymbolicLink(root.resolve("linked"), root.resolve("work"));
    assertEquals("mill/feeds/", before("work/mill/feeds", "linked", null));
    assertEquals("mill/feeds/", before("linked/mill/feeds", "work", null));
    assertEquals("mill/feeds/", before("linked/mill/feeds", "linked", null));
  }

  @Test
  void oneThatDoesNotHoldTheFolderIsRefused() {
    for (String asked : new String[] {"other", "nowhere", "work/mill/feed", "work/mill/feeds/a"}) {
      MojoFailureException refused =
          assertThrows(MojoFailureException.class, () -> before("work/mill/feeds", asked, "work"));
      assertEquals(
          "pellucid.pathRoot is "
              + file(asked)
              + ", which does not hold the folder "
              + file("work/mill/feeds")
              + "; name a folder that holds it, or take pellucid.pathRoot out to have paths from the"
              + " root of the repository",
          refused.getMessage());
    }
  }
}
