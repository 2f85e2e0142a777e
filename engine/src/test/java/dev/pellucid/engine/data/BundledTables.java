package dev.pellucid.engine.data;

import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.TreeMap;

/** The data that come with the program, read as those of a folder that has none itself. */
final class BundledTables {
  private BundledTables() {}

  /**
   * Reads them.
   *
   * @param empty a folder for the settings
   */
  static FeedTables read(Path empty) throws IOException {
    String settings = "format: 1\nname: Ours\ncurrency: EUR\njurisdiction: none\n";
    Files.writeString(empty.resolve("pellucid.yaml"), settings);
    Texts folder = Texts.at(empty).over(Bundled.ofThisVersion());
    TreeMap<String, SourceFile> data = new TreeMap<>();
    for (String path : folder.data()) {
      data.put(path, folder.read(path, new ArrayList<>()).orElseThrow());
    }
    return TablesReader.read(data, new TreeMap<>()).tables();
  }
}
