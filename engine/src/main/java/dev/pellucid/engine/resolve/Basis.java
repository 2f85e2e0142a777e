package dev.pellucid.engine.resolve;

import org.jspecify.annotations.Nullable;

/** On what a figure is told. The dry matter of a feed is a share of it. */
public sealed interface Basis {
  /** By itself: {@code as fed}. */
  String name();

  /** For a sentence, after the figure; empty for as fed. */
  default String words() {
    return " " + name();
  }

  /** A figure of this basis, per kg of feed as fed. */
  double toAsFed(double figure, double dry);

  /** What a figure per kg of feed as fed is multiplied by, to be told on this basis. */
  double fromAsFed(double dry);

  /** What the kg of feed is. */
  record AsFed() implements Basis {
    @Override
    public String name() {
      return "as fed";
    }

    @Override
    public String words() {
      return "";
    }

    @Override
    public double toAsFed(double figure, double dry) {
      return figure;
    }

    @Override
    public double fromAsFed(double dry) {
      return 1;
    }
  }

  /** Per kg of dry matter. */
  record DryMatter() implements Basis {
    @Override
    public String name() {
      return "on dry matter";
    }

    @Override
    public double toAsFed(double figure, double dry) {
      return figure * dry;
    }

    @Override
    public double fromAsFed(double dry) {
      return 1 / dry;
    }
  }

  /** Per kg of feed brought to a moisture, a share. */
  record AtMoisture(double moisture, String asWritten) implements Basis {
    @Override
    public String name() {
      return "at " + asWritten + " moisture";
    }

    @Override
    public double toAsFed(double figure, double dry) {
      return figure * dry / (1 - moisture);
    }

    @Override
    public double fromAsFed(double dry) {
      return (1 - moisture) / dry;
    }

    /** However it is written: 12 % and 12.0 % are one basis. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof AtMoisture told && Double.compare(told.moisture, moisture) == 0;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(moisture);
    }
  }
}
