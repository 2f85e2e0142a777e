package dev.pellucid.engine.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.KeyPlaces;
import dev.pellucid.engine.data.SchemaCheck;
import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/**
 * Keys and words of the data files, in the example folder with every example of the page of the
 * data laid over it: reader and schema take all of it, and both refuse each key and each word that
 * is misspelt.
 */
@TestInstance(Lifecycle.PER_CLASS)
class DataKeysTest {
  /** The data of each folder in which the page runs. */
  private final List<KeyPlaces> folders = new ArrayList<>();

  @BeforeAll
  void readThemAll(@TempDir Path place) throws IOException {
    List<DocFolder> laid = new ArrayList<>();
    for (DocBlock block : DocPage.of(Path.of("docs", "data.md")).blocks(DocPage.FOLDER, "yaml")) {
      if (block.kind().equals(DocPage.FOLDER)) {
        String as = block.settings().keySet().iterator().next();
        laid.add(DocFolder.begin(place.resolve("folder-" + laid.size()), as));
      } else {
        lay(block, laid.get(laid.size() - 1));
      }
    }
    for (DocFolder folder : laid) {
      folders.add(KeyPlaces.of(texts(folder)));
    }
  }

  private static void lay(DocBlock block, DocFolder folder) throws IOException {
    String path = block.setting("file").orElse("");
    if (block.says("part")) {
      folder.writeParts(path, block.text());
    } else if (!path.isEmpty()) {
      folder.write(path, block.text());
    }
  }

  private static SortedMap<String, SourceFile> texts(DocFolder folder) throws IOException {
    Texts own = Texts.at(folder.root());
    boolean alone = folder.text("pellucid.yaml").contains("data: own");
    Texts texts = alone ? own : own.over(Bundled.ofThisVersion());
    SortedMap<String, SourceFile> files = new TreeMap<>();
    for (String path : texts.data()) {
      files.put(path, texts.read(path, new ArrayList<>()).orElseThrow());
    }
    return files;
  }

  @Test
  void bothTakeAllOfIt() {
    List<String> told = new ArrayList<>();
    for (KeyPlaces places : folders) {
      List<Finding> errors = places.said().stream().filter(DataKeysTest::isError).toList();
      assertEquals("", FindingText.of(errors));
      places.files().forEach((path, file) -> told.addAll(SchemaCheck.of(path, file.text())));
    }
    assertEquals(List.of(), told);
  }

  @Test
  void everyKeyIsInAnExample() {
    NavigableSet<String> missing = KeyPlaces.declared();
    assertTrue(missing.size() > 200, missing::toString);
    folders.forEach(places -> missing.removeAll(places.keys().keySet()));
    assertEquals("", String.join("\n", missing));
  }

  @Test
  void aMisspeltKeyIsRefusedByBoth() {
    for (KeyPlaces places : folders) {
      assertRefused(places, places.keys(), key -> key + key.charAt(key.length() - 1));
      assertRefused(places, places.keys(), key -> key.substring(0, 1) + "q" + key.substring(1));
    }
  }

  @Test
  void aWrongWordIsRefusedByBoth() {
    assertTrue(folders.get(0).words().size() > 20, folders.get(0).words()::toString);
    for (KeyPlaces places : folders) {
      assertRefused(places, places.words(), word -> word + "s");
      assertRefused(places, places.words(), word -> "q" + word);
    }
  }

  private static void assertRefused(
      KeyPlaces places, SortedMap<String, Span> there, UnaryOperator<String> slip) {
    List<String> taken = new ArrayList<>();
    there.forEach(
        (key, place) -> {
          String path = place.file().path();
          String text = places.with(place, slip.apply(place.text()));
          if (places.said(path, text).stream().noneMatch(DataKeysTest::isError)) {
            taken.add(
                "the reader takes " + key + " of " + path + " as " + slip.apply(place.text()));
          }
          if (SchemaCheck.of(path, text).isEmpty()) {
            taken.add(
                "the schema takes " + key + " of " + path + " as " + slip.apply(place.text()));
          }
        });
    assertEquals("", String.join("\n", taken));
  }

  private static boolean isError(Finding finding) {
    return finding.severity() == Severity.ERROR;
  }
}
