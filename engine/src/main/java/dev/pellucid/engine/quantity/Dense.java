package dev.pellucid.engine.quantity;

/** Figures by the index of a nutrient, unchangeable. */
public final class Dense {
  private final double[] figures;

  private Dense(double[] figures) {
    this.figures = figures;
  }

  /** Takes the array over; whoever made it writes to it no more. */
  public static Dense of(double[] figures) {
    return new Dense(figures);
  }

  public double at(int index) {
    return figures[index];
  }

  /** A copy that may be written to. */
  public double[] toArray() {
    return figures.clone();
  }

  public int count() {
    return figures.length;
  }

  /** Every figure times a factor. */
  public Dense times(double factor) {
    double[] scaled = new double[figures.length];
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] = figures[i] * factor;
    }
    return new Dense(scaled);
  }
}
