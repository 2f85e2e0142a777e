package dev.pellucid.engine.quantity;

/** How a figure stands to what is really there, where some content is not told or only bounded. */
public enum Certainty {
  /** All of it is told. */
  TOLD(""),
  /** There may be more: some content is not told, or is told as below a figure. */
  AT_LEAST("≥ "),
  /** There may be less. */
  AT_MOST("≤ "),
  /** There may be more or less, as in a ratio with such contents on both sides. */
  UNSURE("~ ");

  private final String sign;

  Certainty(String sign) {
    this.sign = sign;
  }

  /** What stands before the figure, with a blank; nothing where all is told. */
  public String sign() {
    return sign;
  }

  public static Certainty of(boolean maybeMore, boolean maybeLess) {
    if (maybeMore && maybeLess) {
      return UNSURE;
    }
    return maybeMore ? AT_LEAST : maybeLess ? AT_MOST : TOLD;
  }
}
