package dev.pellucid.text;

import java.util.Collection;
import java.util.Optional;

/** The question after what was probably meant. */
public final class Meant {
  private Meant() {}

  /** {@code did you mean maize, maize-bran or malt?}; empty where nothing comes near. */
  public static Optional<String> question(Collection<String> near) {
    return near.isEmpty() ? Optional.empty() : Optional.of(question(Choices.of(near)));
  }

  /** {@code did you mean maize?}. */
  public static String question(String near) {
    return "did you mean " + near + "?";
  }
}
