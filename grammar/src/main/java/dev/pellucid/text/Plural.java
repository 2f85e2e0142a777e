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
    return of(number, thing, thing + "s");
  }

  /**
   * So many of them, or what they do.
   *
   * @param one behind the number 1
   * @param more behind any other number
   */
  public static String of(long number, String one, String more) {
    return number + " " + (number == 1 ? one : more);
  }
}
