package dev.pellucid.text;

/**
 * The blanks of the language: what parts two words of a line. They are the tab and every space of
 * Unicode, since tables and web pages bring along spaces of many widths. The lexer's are the same,
 * which a test holds.
 */
public final class Blanks {
  private Blanks() {}

  public static boolean isBlank(int c) {
    return c == ' '
        || c == '\t'
        || (c >= 0xA0 && Character.getType(c) == Character.SPACE_SEPARATOR);
  }

  /** A blank or the end of a line. */
  public static boolean isWhite(int c) {
    return isBlank(c) || c == '\n' || c == '\r';
  }

  /** The text with a plain space for each blank, and none at its ends. */
  public static String plain(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      out.append(isBlank(c) ? ' ' : c);
    }
    return out.toString().strip();
  }
}
