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

  /** What it says, with the values and the prices that it tells; nobody changes them. */
  final class Found {
    private final State state;
    private final double[] values;
    private final double[] prices;

    /**
     * @param values one for each variable; empty where there are none
     * @param prices one for each constraint, by our signs; empty where the library tells none
     */
    Found(State state, double[] values, double[] prices) {
      this.state = state;
      this.values = values;
      this.prices = prices;
    }

    static Found none(State state) {
      return new Found(state, new double[0], new double[0]);
    }

    State state() {
      return state;
    }

    double[] values() {
      return values;
    }

    double[] prices() {
      return prices;
    }
  }
}
