package dev.pellucid.engine.goal;

import java.util.ArrayList;
import java.util.List;

/** The lines of a text, so laid out that white space is no change. */
final class SpacedLines {
  private SpacedLines() {}

  /** One blank between words, none at the ends of a line, and no empty lines. */
  static List<String> of(String text) {
    List<String> lines = new ArrayList<>();
    for (String written : text.lines().toList()) {
      String line = spaced(written.strip());
      if (!line.isEmpty()) {
        lines.add(line);
      }
    }
    return List.copyOf(lines);
  }

  private static String spaced(String line) {
    StringBuilder out = new StringBuilder(line.length());
    boolean white = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == ' ' || (c >= '\t' && c <= '\r')) {
        white = true;
        continue;
      }
      if (white) {
        out.append(' ');
        white = false;
      }
      out.append(c);
    }
    return white ? out.append(' ').toString() : out.toString();
  }
}
