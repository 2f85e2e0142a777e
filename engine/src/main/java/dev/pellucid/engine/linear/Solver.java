package dev.pellucid.engine.linear;

/** Solves programs. The same program gives the same outcome, to the last bit. */
public interface Solver {
  Outcome solve(LinearProgram program);

  /** The solver of this room, each answer of which is proven. */
  static Solver standard() {
    return StandardSolver.INSTANCE;
  }
}
