package dev.pellucid.text;

/**
 * The mark that stands where a person is still to give something: a line to write on, as on a form.
 * A question mark, as people write it, means the same.
 */
public final class ToBeGiven {
  /** As this program writes it. */
  public static final String MARK = "____";

  private ToBeGiven() {}

  /** Whether a word is such a mark, of whatever length. */
  public static boolean isMark(String word) {
    return isRun(word, '_', 2) || isRun(word, '?', 1);
  }

  /**
   * Whether a text is no text yet: a line to write on is among its words, or a question mark is the
   * first of them.
   */
  public static boolean isIn(String text) {
    if (text.indexOf('_') < 0 && text.indexOf('?') < 0) {
      return false;
    }
    boolean first = true;
    for (String word : Blanks.plain(text).split(" ", -1)) {
      if (isRun(word, '_', 2) || (first && isMark(word))) {
        return true;
      }
      first = false;
    }
    return false;
  }

  private static boolean isRun(String word, char of, int least) {
    for (int i = 0; i < word.length(); i++) {
      if (word.charAt(i) != of) {
        return false;
      }
    }
    return word.length() >= least;
  }
}
