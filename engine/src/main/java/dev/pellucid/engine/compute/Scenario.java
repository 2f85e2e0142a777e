package dev.pellucid.engine.compute;

/** The three ways in which a feed is reckoned. */
public enum Scenario {
  /** What the laboratory should find when the bags are filled: on target, fresh, nothing extra. */
  EXPECTED,
  /**
   * Where minima are judged: handling overage lost, wet end, end of shelf life, unknown is none.
   */
  POOREST,
  /** Where maxima are judged: all overage present, dry end, fresh, unknown at its bound. */
  RICHEST
}
