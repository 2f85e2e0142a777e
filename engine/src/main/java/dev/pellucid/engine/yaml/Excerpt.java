package dev.pellucid.engine.yaml;

/** Text of a user inside a sentence of ours: on one line, never too long, never unseen. */
public final class Excerpt {
  private static final int MOST = 60;

  private Excerpt() {}

  /** In quotes where its end could not be told from the sentence's. */
  public static String of(String text) {
    StringBuilder line = new StringBuilder();
    text.codePoints()
        .limit(MOST)
        .forEach(c -> line.appendCodePoint(Character.isISOControl(c) ? ' ' : c));
    if (text.codePointCount(0, text.length()) > MOST) {
      line.append("...");
    }
    String shown = line.toString();
    boolean open = shown.isEmpty() || shown.endsWith(".") || !shown.strip().equals(shown);
    return open ? '"' + shown + '"' : shown;
  }
}
