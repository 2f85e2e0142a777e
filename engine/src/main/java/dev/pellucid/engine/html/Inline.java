package dev.pellucid.engine.html;

import static j2html.TagCreator.rawHtml;

import j2html.TagCreator;
import j2html.tags.specialized.StyleTag;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * Style sheets: those of a sheet or label stand in the file itself, for it loads nothing. They are
 * the only text that is not escaped, since browsers read none of their characters as markup but the
 * end tag.
 */
public final class Inline {
  private static final String FILES = "/dev/pellucid/";

  private Inline() {}

  /** A style sheet; one that would end before its end is a bug, and no page is made with it. */
  static StyleTag style(String rules) {
    if (rules.contains("</")) {
      throw new IllegalArgumentException("an end tag in a style sheet: " + rules);
    }
    return TagCreator.style(rawHtml("\n" + rules));
  }

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
