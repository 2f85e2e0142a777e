package dev.pellucid.engine.trend;

/**
 * When a course is no longer left to chance. The rules are those of a control chart after Shewhart
 * with the tests of Western Electric and the trend of six, as section 6.3.2 of the NIST/SEMATECH
 * e-Handbook of Statistical Methods lists them (from memory); a figure on a limit is not beyond it.
 * In the order in which they are told.
 */
public enum RunRule {
  /** One figure is further off than three spreads. */
  BEYOND_THREE(1),
  /** Two of three figures in a row are further off than two spreads, to the same side. */
  TWO_OF_THREE(3),
  /** Eight figures in a row lie on the same side of the centre. */
  EIGHT_ON_ONE_SIDE(8),
  /** Six figures in a row rise, or fall. */
  SIX_IN_A_ROW(6);

  /** Beyond so many spreads one figure is enough. */
  public static final double OUTER = 3;

  /** Beyond so many spreads two of three are enough. */
  public static final double INNER = 2;

  private final int window;

  RunRule(int window) {
    this.window = window;
  }

  /** How many figures in a row it looks at. */
  public int window() {
    return window;
  }
}
