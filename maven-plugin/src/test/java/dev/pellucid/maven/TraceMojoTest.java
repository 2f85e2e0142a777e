package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A trace that cannot be answered in full fails, with all that stands in its way. */
class TraceMojoTest {
  @TempDir Path root = Path.of("");

  @Test
  void aParameterWithoutANumberFails() throws Exception {
    assertEquals(
        "-Dpellucid.lot is empty; write a number behind it, or leave it out to see what is in every"
            + " batch",
        told("lot", " "));
    assertTrue(told("batch", "").startsWith("-Dpellucid.batch is empty; "));
  }

  @Test
  void anUnknownNumberDoesNotHideWhatWasNotSearched() throws Exception {
    Files.createDirectories(root.resolve("batches"));
    Files.writeString(root.resolve("batches/MIX-1-2026-02-01-1.yaml.txt"), "size: 10 kg\n");
    String told = told("lot", "SALT-7");
    assertTrue(told.startsWith("no lot or batch of this folder has the number SALT-7; "), told);
    assertTrue(
        told.endsWith("batches/MIX-1-2026-02-01-1.yaml.txt is not read for the end of its name"),
        told);
  }

  private String told(String parameter, String number)
      throws IOException, ReflectiveOperationException {
    TraceMojo goal = new TraceMojo();
    Field field = TraceMojo.class.getDeclaredField(parameter);
    field.setAccessible(true);
    field.set(goal, number);
    Files.writeString(root.resolve("pellucid.yaml"), "format: 1\n");
    return String.valueOf(
        assertThrows(MojoFailureException.class, () -> goal.work(root.toFile())).getMessage());
  }
}
