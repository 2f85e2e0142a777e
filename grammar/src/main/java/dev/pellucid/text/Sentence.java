package dev.pellucid.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence of ours with words of a person in it, fit to be printed: on one line, with nothing in
 * it that cannot be seen, and without the middle of a piece that is too long to be read. A name of
 * a million letters is still told apart by its ends.
 */
public final class Sentence {
  /** Longer pieces lose their middle. */
  private static final int LONGEST_PIECE = 80;

  private static final int HEAD = 48;
  private static final int TAIL = 24;

  /** Longer sentences lose their middle; none of ours comes near without the words of a person. */
  private static final int LONGEST = 1000;

  private static final String GAP = "\u2026";
  private static final Pattern LONG_WORD =
      Pattern.compile("[^\\s\"]{" + (LONGEST_PIECE + 1) + ",}+");

  /** Both marks belong to it: what stands between two quotes is ours. */
  private static final Pattern QUOTE = Pattern.compile("\"([^\"]*+)\"");

  private Sentence() {}

  public static String of(String written) {
    String line = Unseen.shownOnOneLine(written);
    if (line.length() <= LONGEST_PIECE) {
      return line;
    }
    String quotes = QUOTE.matcher(line).replaceAll(quote -> literal(shortened(quote.group(1))));
    String words =
        LONG_WORD.matcher(quotes).replaceAll(word -> literal(cut(word.group(), HEAD, TAIL)));
    return words.length() > LONGEST ? cut(words, LONGEST / 2, LONGEST / 4) : words;
  }

  private static String shortened(String quoted) {
    return '"' + (quoted.length() > LONGEST_PIECE ? cut(quoted, HEAD, TAIL) : quoted) + '"';
  }

  private static String literal(String text) {
    return Matcher.quoteReplacement(text);
  }

  /** The ends of a text, never half of a pair. */
  private static String cut(String text, int head, int tail) {
    int from = Character.isLowSurrogate(text.charAt(head)) ? head - 1 : head;
    int back = text.length() - tail;
    int to = Character.isLowSurrogate(text.charAt(back)) ? back + 1 : back;
    return text.substring(0, from) + GAP + text.substring(to);
  }
}
