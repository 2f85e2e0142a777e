package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.OwnFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The solver is loaded where a change of many lines is looked for, and not before. */
class SolverLoadedTest {
  private static final String LIBRARY = "org.ojalgo";

  @TempDir Path copy;

  /** Checks a folder in a machine of its own. */
  public static void main(String[] folder) throws IOException {
    OwnFolder.check(Path.of(folder[0]), LocalDate.of(2026, 11, 25));
  }

  @Test
  void aSoundFolderLoadsNone() throws Exception {
    new SlippedFolder(copy);
    List<String> loaded = loaded();
    assertTrue(loaded.stream().anyMatch(it -> it.contains("engine.check.Rules ")));
    assertFalse(loaded.stream().anyMatch(it -> it.contains(LIBRARY)));
  }

  @Test
  void aLimitThatNoTwoLinesMeetLoadsIt() throws Exception {
    new SlippedFolder(copy).with("catfish/CG-36.recipe", "min 34 %     in", "min 60 %     in");
    assertTrue(loaded().stream().anyMatch(it -> it.contains(LIBRARY)));
  }

  private List<String> loaded() throws IOException {
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-verbose:class",
                "-cp",
                System.getProperty("java.class.path"),
                SolverLoadedTest.class.getName(),
                copy.toString())
            .redirectErrorStream(true)
            .start();
    return java.inputReader().lines().toList();
  }
}
