package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stops a goal is told in a sentence, whatever it is. */
class FolderGoalTest {
  @TempDir Path root = Path.of("");

  @Test
  void memoryThatRunsOutIsToldInASentence() throws Exception {
    assertEquals(
        "there is not enough memory for this folder; give Maven more, as in MAVEN_OPTS=-Xmx1g",
        told(new OutOfMemoryError("Java heap space"), new IOException()));
  }

  @Test
  void aFullDiskIsToldInASentence() throws Exception {
    assertEquals("the disk is full", told(null, new IOException("the disk is full")));
  }

  @Test
  void whatIsOnlyAPathIsToldInASentence() throws Exception {
    assertEquals(
        "cannot read or write target/pages", told(null, new NotDirectoryException("target/pages")));
    assertEquals(
        "cannot read or write target/pages: it is in use",
        told(null, new FileSystemException("target/pages", null, "it is in use")));
    assertEquals(
        "A-1.recipe is gone; another program took it away, run the goal again",
        told(null, new NoSuchFileException("A-1.recipe")));
  }

  @Test
  void theCauseIsKeptForWhoeverAsksForIt() throws Exception {
    IOException cause = new IOException("the disk is full");
    assertSame(cause, stopped(null, cause).getCause());
  }

  @Test
  void aFaultOfTheProgramIsToldInASentence() throws Exception {
    String words =
        "a fault of pellucid, and none of yours, stopped the goal (%s); take back what was changed"
            + " last and try again, and send what -X prints to those who look after pellucid";
    assertEquals(
        words.replace("%s", "IllegalStateException"),
        told(new IllegalStateException("x"), new IOException()));
    assertEquals(
        words.replace("%s", "StackOverflowError"),
        told(new StackOverflowError(), new IOException()));
  }

  @Test
  void aFaultAtAFileStopsTheBuildWhateverElsePasses() throws Exception {
    FolderGoal goal =
        new FolderGoal() {
          @Override
          void work(File folder) {}
        };
    goal.refuseFaults(List.of());
    MojoFailureException refused =
        assertThrows(
            MojoFailureException.class,
            () -> goal.refuseFaults(List.of(new IllegalStateException("x"))));
    assertEquals(
        "a fault of pellucid kept files from being checked; its findings name them",
        refused.getMessage());
  }

  private String told(@Nullable Throwable error, IOException other) throws Exception {
    return String.valueOf(stopped(error, other).getMessage());
  }

  private MojoExecutionException stopped(@Nullable Throwable error, IOException other)
      throws Exception {
    FolderGoal goal =
        new FolderGoal() {
          @Override
          void work(File folder) throws IOException {
            if (error instanceof RuntimeException fault) {
              throw fault;
            }
            if (error instanceof Error fault) {
              throw fault;
            }
            throw other;
          }
        };
    Files.writeString(root.resolve("pellucid.yaml"), "format: 1\n");
    Field folder = FolderGoal.class.getDeclaredField("folder");
    folder.setAccessible(true);
    folder.set(goal, root.toFile());
    return assertThrows(MojoExecutionException.class, goal::execute);
  }
}
