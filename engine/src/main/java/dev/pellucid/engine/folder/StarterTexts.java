package dev.pellucid.engine.folder;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The texts that come with this program for a folder of feeds that begins, as its index lists them.
 */
public final class StarterTexts {
  private static final String FOLDER = "/dev/pellucid/starter/";
  private static final String INDEX = "index.txt";

  private StarterTexts() {}

  /**
   * Every text by its path below their folder.
   *
   * @throws IOException where one cannot be read
   */
  public static SortedMap<String, String> all() throws IOException {
    SortedMap<String, String> texts = new TreeMap<>();
    for (String path : text(INDEX).lines().toList()) {
      texts.put(path, text(path));
    }
    return texts;
  }

  private static String text(String path) throws IOException {
    try (InputStream in = StarterTexts.class.getResourceAsStream(FOLDER + path)) {
      if (in == null) {
        throw new IllegalStateException("the index names a text that is not there: " + path);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
