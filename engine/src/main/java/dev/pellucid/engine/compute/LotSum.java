package dev.pellucid.engine.compute;

/**
 * A sum of nutrients in the amounts of 100 kg of recipe, while lots differ: what it is on average,
 * and by how much one standard deviation of each {@link Luck} moves it.
 */
public final class LotSum {
  private final double mean;
  private final int[] lucks;
  private final double[] moves;

  /** Takes the arrays over; whoever made them writes to them no more. */
  LotSum(double mean, int[] lucks, double[] moves) {
    this.mean = mean;
    this.lucks = lucks;
    this.moves = moves;
  }

  /** What is left to luck: one content that one ingredient tells. */
  public record Luck(String ingredient, String nutrient) {}

  public double mean() {
    return mean;
  }

  /** How many lucks move it. */
  public int count() {
    return lucks.length;
  }

  /** The number of one of the lucks that move it, as {@link LotFigures} counts them. */
  public int luck(int place) {
    return lucks[place];
  }

  /** By how much one standard deviation of that luck moves it, with a sign. */
  public double moves(int place) {
    return moves[place];
  }

  /** How far it moves at most, where no luck is further off than so many deviations. */
  public double reach(double deviations) {
    double reach = 0;
    for (double one : moves) {
      reach += Math.abs(one);
    }
    return reach * deviations;
  }
}
