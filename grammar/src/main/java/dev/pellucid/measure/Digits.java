package dev.pellucid.measure;

/**
 * The digits of a figure, in the words that recipes and data are told in where they have others.
 */
public final class Digits {
  /** Behind a figure such as 0x12. */
  public static final String HEXADECIMAL = "counts in sixteens, a figure counts in tens";

  /** What to do about one. */
  public static final String HEXADECIMAL_REMEDY =
      "look the figure up again and write it in the digits 0 to 9";

  /** Behind a figure in the digits of another script. */
  public static final String OTHER = "is not in the digits 0 to 9 that figures have";

  private Digits() {}
}
