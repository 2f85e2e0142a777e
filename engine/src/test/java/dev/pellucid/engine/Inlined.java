package dev.pellucid.engine;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A page as it is accepted: a style sheet or script that stands in it whole is told by the name of
 * its file, so that a change of style moves that file and no accepted page. What is not the file to
 * the last character stays, and is seen.
 */
public final class Inlined {
  private static final Path FILES = Path.of("src", "main", "resources", "dev", "pellucid");
  private static final List<String> NAMES =
      List.of("report/label.css", "report/sheet.css", "site/index.js", "site/site.css");

  private Inlined() {}

  /** The page with the names in place of the files. */
  public static String byName(String page) throws IOException {
    String told = page;
    for (String name : NAMES) {
      told = told.replace("\n" + Files.readString(FILES.resolve(name)), "\n" + name + "\n");
    }
    return told;
  }
}
