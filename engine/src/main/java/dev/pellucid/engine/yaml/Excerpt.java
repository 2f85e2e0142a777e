package dev.pellucid.engine.yaml;

import dev.pellucid.text.Unseen;

/** Text of a user inside a sentence of ours: on one line, never too long, never unseen. */
public final class Excerpt {
  private static final int MOST = 60;

  private Excerpt() {}

  /** In quotes where its end could not be told from the sentence's. */
  public static String of(String text) {
    String line = Unseen.shownOnOneLine(text);
    boolean tooLong = line.codePointCount(0, line.length()) > MOST;
    String shown = tooLong ? line.substring(0, line.offsetByCodePoints(0, MOST)) + "..." : line;
    boolean open = shown.isEmpty() || shown.endsWith(".") || !shown.strip().equals(shown);
    return open ? '"' + shown + '"' : shown;
  }
}
