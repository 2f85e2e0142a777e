package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.TraceReport;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever keeps a file of lots or records from being read is named by a trace. */
class TraceUnsearchedTest {
  private static final String TG = "batches/TG-44-2026-12-01-1.yaml";

  @TempDir Path folder = Path.of("");
  @TempDir Path elsewhere = Path.of("");

  private Path copy = Path.of("");

  @BeforeEach
  void write() throws IOException {
    copy = folder.resolve("feeds");
    SlippedFolder.withRecords(copy);
    assertEquals(List.of(), unsearched());
  }

  @Test
  void aStoreThatIsALink() throws IOException {
    for (String store : List.of("batches", "lots")) {
      moveBehindALink(store);
    }
    assertEquals(
        List.of("r/batches is a link and is not followed", "r/lots is a link and is not followed"),
        unsearched());
  }

  @Test
  void aFolderInAStoreThatIsALink() throws IOException {
    Files.createDirectory(copy.resolve("batches/2026"));
    Files.move(copy.resolve(TG), copy.resolve(TG.replace("batches/", "batches/2026/")));
    moveBehindALink("batches/2026");
    assertEquals(List.of("r/batches/2026 is a link and is not followed"), unsearched());
  }

  @Test
  void aLinkThatLeadsNowhere() throws IOException {
    Path store = elsewhere.resolve("batches");
    Files.move(copy.resolve("batches"), store);
    Files.createSymbolicLink(copy.resolve("batches"), elsewhere.resolve("unmounted"));
    assertEquals(List.of("r/batches is a link and is not followed"), unsearched());
  }

  /** Nobody reads a file there, and nobody knows that it is no record. */
  @Test
  void aRecordInAPlaceOfItsOwn() throws IOException {
    Files.createDirectory(copy.resolve("records"));
    Files.move(copy.resolve(TG), copy.resolve(TG.replace("batches/", "records/")));
    assertEquals(
        List.of(
            "r/"
                + TG.replace("batches/", "records/")
                + " looks like a batch record and lies in no place where records are read: move it to"
                + " batches/"),
        unsearched());
  }

  @Test
  void aRecordThatIsALink() throws IOException {
    moveBehindALink(TG);
    assertEquals(List.of("r/" + TG + " is a link and is not followed"), unsearched());
  }

  @Test
  void aFolderThatIsClosed() throws IOException {
    Path closed = Files.createDirectory(copy.resolve("batches/2025"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("---------"));
    try {
      assumeFalse(Files.isReadable(closed));
      assertEquals(List.of("r/batches/2025 cannot be opened"), unsearched());
    } finally {
      Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwx------"));
    }
  }

  @Test
  void aNameThatIsNearlyRight() throws IOException {
    for (String ending : List.of(".yaml.txt", ".YAML", ".yaml.")) {
      Path named = copy.resolve(TG.replace(".yaml", ending));
      Files.move(copy.resolve(TG), named);
      TraceReport trace = trace();
      assertEquals(
          List.of("r/" + TG.replace(".yaml", ending) + " is not read for the end of its name"),
          trace.unsearched());
      assertTrue(trace.findings().get(0).helps().get(0).contains("ename it to TG-44"));
      Files.move(named, copy.resolve(TG));
    }
  }

  @Test
  void aCopyCountsWhereWhatItIsACopyOfIsGone() throws IOException {
    Files.copy(copy.resolve(TG), copy.resolve(TG + ".orig"));
    assertEquals(List.of(), unsearched());
    Files.delete(copy.resolve(TG));
    assertEquals(
        List.of("r/" + TG + ".orig is a copy that is laid by and is not read"), unsearched());
  }

  @Test
  void aPipe() throws Exception {
    Path pipe = copy.resolve("batches/TG-44-2026-12-02-1.yaml");
    assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
    assertEquals(
        List.of(
            "r/batches/TG-44-2026-12-02-1.yaml is a pipe, a socket or a device and is not opened"),
        unsearched());
  }

  @Test
  void aNameWithWhatCannotBeSeen() throws IOException {
    Files.move(copy.resolve(TG), copy.resolve(TG.replace("TG", "T\u200BG")));
    Files.move(copy.resolve("lots"), copy.resolve("lo\u200Bts"));
    String why = " is not read for a character in its name that cannot be seen";
    assertEquals(
        List.of("r/" + TG.replace("TG", "T<U+200B>G") + why, "r/lo<U+200B>ts" + why),
        unsearched().stream().filter(one -> one.endsWith(why)).toList());
  }

  @Test
  void aStoreWhoseNameHasCapitals() throws IOException {
    Files.move(copy.resolve("batches"), copy.resolve("aside"));
    Files.move(copy.resolve("aside"), copy.resolve("Batches"));
    List<String> unsearched = unsearched();
    assertEquals(3, unsearched.size(), unsearched.toString());
    assertTrue(unsearched.contains("r/" + TG.replace("batches", "Batches") + " cannot be read"));
  }

  @Test
  void aRecipeOfARecordThatIsALink() throws IOException {
    Path recipe;
    try (var files = Files.walk(copy)) {
      recipe = files.filter(file -> file.endsWith("TG-44.recipe")).findFirst().orElseThrow();
    }
    moveBehindALink(copy.relativize(recipe).toString());
    assertEquals(List.of("TG-44 has no recipe or premix that can be read"), unsearched());
  }

  @Test
  void aLinkThatIsNoPartOfTheStoresIsNoReasonToDoubt() throws IOException {
    Files.createSymbolicLink(copy.resolve("notes"), elsewhere);
    Files.createSymbolicLink(copy.resolve("batches/photo.jpg"), copy.resolve(TG));
    assertEquals(List.of(), unsearched());
  }

  private void moveBehindALink(String path) throws IOException {
    Path there = elsewhere.resolve(path.replace('/', '-'));
    Files.move(copy.resolve(path), there);
    Files.createSymbolicLink(copy.resolve(path), there);
  }

  private TraceReport trace() throws IOException {
    return OwnFolder.trace(copy, new PrintedPaths("r/"), "SB-0411", "");
  }

  private List<String> unsearched() throws IOException {
    return trace().unsearched();
  }
}
