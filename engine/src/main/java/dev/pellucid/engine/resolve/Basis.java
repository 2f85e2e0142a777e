package dev.pellucid.engine.resolve;

import org.jspecify.annotations.Nullable;

/** On what a figure is told. */
public sealed interface Basis {
  /** For a sentence, after the figure; empty for as fed. */
  String words();

  /** What the kg of feed is. */
  record AsFed() implements Basis {
    @Override
    public String words() {
      return "";
    }
  }

  /** Per kg of dry matter. */
  record DryMatter() implements Basis {
    @Override
    public String words() {
      return " on dry matter";
    }
  }

  /** Per kg of feed brought to a moisture, a share. */
  record AtMoisture(double moisture, String asWritten) implements Basis {
    @Override
    public String words() {
      return " at " + asWritten + " moisture";
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
