package dev.pellucid.engine.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.KeyTables;
import dev.pellucid.engine.data.SchemaCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page of the data tells every kind of file, with an example of each. */
class DataPageTest {
  private static final Path PAGE = Path.of("docs", "data.md");

  static List<Path> pages() throws IOException {
    return DocPage.all();
  }

  static List<String> kinds() {
    return KeyTables.kinds();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void hasATableAndAnExampleOfEachKind(String kind) throws IOException {
    String page = Files.readString(PAGE);
    assertTrue(MadeParts.names(page).contains("keys of " + kind), kind);
    assertTrue(
        DocPage.of(PAGE).blocks("yaml").stream()
            .anyMatch(block -> SchemaCheck.kind(path(block)).equals(kind)),
        kind);
  }

  /** No key without a sentence, and no two of a block with the same one but in rows of a kind. */
  @ParameterizedTest
  @MethodSource("kinds")
  void everyKeyHasASentence(String kind) {
    List<String> bare = new ArrayList<>();
    KeyTables.of(kind)
        .lines()
        .filter(line -> line.startsWith("| `") && line.endsWith("|  |"))
        .forEach(bare::add);
    assertEquals(List.of(), bare);
  }

  /**
   * What a page shows of a data file, its schema takes too; of a part, all but what it leaves out.
   */
  @ParameterizedTest
  @MethodSource("pages")
  void everyExampleFitsItsSchema(Path page) throws IOException {
    for (DocBlock block : DocPage.of(page).blocks("yaml")) {
      if (SchemaCheck.isData(path(block))) {
        List<String> told = new ArrayList<>(SchemaCheck.of(path(block), block.text()));
        told.removeIf(one -> !isWhole(block) && one.contains("required property"));
        assertEquals(List.of(), told, block.text());
      }
    }
  }

  private static boolean isWhole(DocBlock block) {
    return block.says("file") && !block.says("part");
  }

  private static String path(DocBlock block) {
    return block.setting("file").or(() -> block.setting("of")).orElse("");
  }
}
