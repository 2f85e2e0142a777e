package dev.pellucid.engine.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Style sheets and scripts: they stand in a page itself, for a page loads nothing. */
public final class Inline {
  private static final String FILES = "/dev/pellucid/";

  private Inline() {}

  /**
   * The text of a file that the engine brings with it; that there is none is a bug.
   *
   * @param path such as {@code site/site.css}
   */
  public static String text(String path) {
    try (InputStream in = Inline.class.getResourceAsStream(FILES + path)) {
      if (in == null) {
        throw new IllegalStateException("no file " + path);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
