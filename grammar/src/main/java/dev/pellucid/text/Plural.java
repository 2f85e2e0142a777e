package dev.pellucid.text;

/** A number of things in words: {@code 1 recipe}, {@code 14 recipes}. */
public final class Plural {
  private Plural() {}

  /**
   * So many of them.
   *
   * @param thing one of them, in a word that takes an s
   */
  public static String of(long number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }
}
