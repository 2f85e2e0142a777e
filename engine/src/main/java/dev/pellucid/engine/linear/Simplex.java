package dev.pellucid.engine.linear;

/** What a library finds of a scaled program, which nobody trusts before it is proven. */
interface Simplex {
  Found find(Table scaled);

  /** What it says. */
  enum State {
    OPTIMAL,
    INFEASIBLE,
    UNBOUNDED,
    NONE
  }

  /**
   * @param values one for each variable; empty where there are none
   * @param prices one for each constraint, by our signs; empty where the library tells none
   */
  record Found(State state, double[] values, double[] prices) {
    static Found none(State state) {
      return new Found(state, new double[0], new double[0]);
    }
  }
}
