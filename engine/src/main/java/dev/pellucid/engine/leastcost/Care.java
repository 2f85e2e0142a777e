package dev.pellucid.engine.leastcost;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How far an answer is to be trusted.
 *
 * @param together the part of batches in which all limits hold; empty where none was drawn
 * @param weakest the limit that fails most often then
 * @param onAverageOnly limits that bind and say nothing of batches
 * @param standings how many figures rest on what, by the word of its standing
 * @param oldestPrice days of the oldest price that counts
 * @param inventedPrices how many prices are invented
 * @param laterPrices the first day from which a newer price counts, that lies after the day
 * @param held what may not rise, and what it does not tell
 * @param labelAnew whether the label would have to be printed anew, and why, a sentence each
 */
public record Care(
    OptionalDouble together,
    Optional<String> weakest,
    List<String> onAverageOnly,
    Map<String, Integer> standings,
    OptionalInt oldestPrice,
    int inventedPrices,
    Optional<LocalDate> laterPrices,
    List<Refusal> held,
    List<String> labelAnew) {
  /** Of what has no answer. */
  public static final Care NONE =
      new Care(
          OptionalDouble.empty(),
          Optional.empty(),
          List.of(),
          Map.of(),
          OptionalInt.empty(),
          0,
          Optional.empty(),
          List.of(),
          List.of());

  public Care {
    onAverageOnly = List.copyOf(onAverageOnly);
    held = List.copyOf(held);
    labelAnew = List.copyOf(labelAnew);
  }
}
