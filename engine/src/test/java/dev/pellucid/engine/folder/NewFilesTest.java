package dev.pellucid.engine.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is made only where nothing bears its name, and is whole from the first. */
class NewFilesTest {
  @TempDir Path root = Path.of("");

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(file -> !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS))
          .map(file -> root.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  @Test
  void whatIsNotThereIsWrittenIntoFoldersMadeForIt() throws IOException {
    assertTrue(Outputs.over(root).writeNew("plant/deep/mill.yaml", "20 °C\r\n"));
    assertEquals(List.of("plant/deep/mill.yaml"), files());
    assertEquals("20 °C\r\n", Files.readString(root.resolve("plant/deep/mill.yaml")));
  }

  @Test
  void whatBearsTheNameStaysAsItIs() throws IOException {
    Files.writeString(root.resolve("A-1.recipe"), "mine");
    Files.createDirectory(root.resolve("README.md"));
    Files.createSymbolicLink(root.resolve("pom.xml"), root.resolve("nowhere"));
    Outputs outputs = Outputs.over(root);
    assertFalse(outputs.writeNew("A-1.recipe", "x"));
    assertFalse(outputs.writeNew("README.md", "x"));
    assertFalse(outputs.writeNew("pom.xml", "x"));
    assertEquals("mine", Files.readString(root.resolve("A-1.recipe")));
    assertEquals(List.of("A-1.recipe", "pom.xml"), files());
  }

  @Test
  void nothingIsWrittenThroughALinkThatLeadsOut() throws IOException {
    Path outside = Files.createDirectory(root.resolve("outside"));
    Path to = Files.createDirectory(root.resolve("to"));
    Files.createSymbolicLink(to.resolve("plant"), outside);
    WriteFailure told =
        assertThrows(WriteFailure.class, () -> Outputs.over(to).writeNew("plant/mill.yaml", "x"));
    assertTrue(String.valueOf(told.getMessage()).contains("leads out of its folder"));
    assertEquals(List.of("to/plant"), files());
  }

  @Test
  void whereAFileStandsInPlaceOfAFolderNothingIsWrittenAndThatIsSaid() throws IOException {
    Files.writeString(root.resolve("plant"), "a list of plants");
    assertThrows(WriteFailure.class, () -> Outputs.over(root).writeNew("plant/mill.yaml", "x"));
    assertEquals(List.of("plant"), files());
  }

  /** Of many who write at once one does, and its text is there whole. */
  @Test
  void onlyOneOfManyWrites() throws Exception {
    ExecutorService many = Executors.newFixedThreadPool(8);
    try {
      for (int round = 0; round < 20; round++) {
        String path = "A-" + round + ".recipe";
        List<Future<Boolean>> all = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
          String text = ("" + i).repeat(5000);
          all.add(many.submit(() -> Outputs.over(root).writeNew(path, text)));
        }
        String winner = "";
        for (int i = 0; i < all.size(); i++) {
          winner += all.get(i).get() ? i : "";
        }
        assertEquals(1, winner.length(), path);
        assertEquals(winner.repeat(5000), Files.readString(root.resolve(path)));
      }
    } finally {
      many.shutdown();
    }
    assertEquals(20, files().size());
  }
}
