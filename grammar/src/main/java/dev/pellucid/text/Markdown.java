package dev.pellucid.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words of a person for a Markdown page of a code host, where they are words and nothing else: no
 * mark does anything, nobody is called by name, and nothing becomes a link.
 *
 * <p>A dollar sign would begin mathematics on some hosts, and before a number it would be a link on
 * others, as a percent sign or an ampersand is there.
 *
 * <p>Hosts look for names, numbers and addresses after they have made HTML of the Markdown, so that
 * a backslash does not keep them from it. A space without width does, and it is written as a
 * reference that a reader of the source sees.
 */
public final class Markdown {
  private static final String MARKS = "\\`*_[]<|#~$";
  private static final String BREAK = "&#8203;";

  /** What is followed by something that a host would make a link, a call or a picture of. */
  private static final Pattern CALLS =
      Pattern.compile(
          "@(?=\\S)"
              + "|[#!&$](?=[0-9])"
              + "|%(?=[0-9A-Za-z_\"])"
              + "|(?i:\\bGH)(?=-[0-9])"
              + "|:(?=[A-Za-z0-9_+-]+:)"
              + "|:(?=//)"
              + "|(?i:\\bwww)(?=\\.)"
              + "|(?i:\\b(?=[0-9]*[a-f])[0-9a-f](?=[0-9a-f]{6,63}\\b))");

  private static final Pattern OPENS_BLOCK = Pattern.compile("^([-+](?= )|[0-9]{1,9}[.)](?= )|>)");

  private Markdown() {}

  /** On one line. */
  public static String of(String words) {
    String line = Unseen.shownOnOneLine(words);
    StringBuilder out = new StringBuilder(line.length() + 16);
    Matcher opens = OPENS_BLOCK.matcher(line);
    int from = 0;
    if (opens.find()) {
      from = opens.end();
      out.append(line, 0, from - 1).append('\\').append(line.charAt(from - 1));
    }
    Matcher calls = CALLS.matcher(line);
    while (calls.find(from)) {
      unmarked(line, from, calls.end(), out);
      out.append(BREAK);
      from = calls.end();
    }
    unmarked(line, from, line.length(), out);
    return out.toString();
  }

  private static void unmarked(String line, int from, int to, StringBuilder out) {
    for (int i = from; i < to; i++) {
      char c = line.charAt(i);
      if (c == '&') {
        out.append("&amp;");
      } else {
        out.append(MARKS.indexOf(c) >= 0 ? "\\" : "").append(c);
      }
    }
  }
}
