package dev.pellucid.engine.arithmetic;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Function;

/**
 * How an example is worked out: by the formula of the page in plain arithmetic, and by the engine.
 * Both give what comes out by name, in the base of its unit.
 */
record Worked(Function<Given, Map<String, Double>> byHand, ByEngine byEngine) {
  /** Asks the engine; the folder is empty and may be written to. */
  interface ByEngine {
    Map<String, Double> of(Given given, Path empty) throws IOException;
  }

  /** One that needs no folder. */
  static Worked of(
      Function<Given, Map<String, Double>> byHand, Function<Given, Map<String, Double>> byEngine) {
    return new Worked(byHand, (given, empty) -> byEngine.apply(given));
  }
}
