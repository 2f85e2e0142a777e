package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.text.Span;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What was written of a batch after it was released, each thing with its day and who wrote it.
 *
 * @param counted what of it was found in the store
 * @param decisions that came after the release
 */
public record Since(
    List<Handed> delivered,
    List<Handed> returned,
    List<Handed> disposed,
    List<Handed> counted,
    List<Complaint> complaints,
    List<Result> results,
    List<Decided> decisions,
    List<Correction> corrections) {
  public Since {
    delivered = List.copyOf(delivered);
    returned = List.copyOf(returned);
    disposed = List.copyOf(disposed);
    counted = List.copyOf(counted);
    complaints = List.copyOf(complaints);
    results = List.copyOf(results);
    decisions = List.copyOf(decisions);
    corrections = List.copyOf(corrections);
  }

  /**
   * Bags, or loose feed, that changed hands.
   *
   * @param party to or from whom; empty where nobody is
   * @param kg of the bags and of what is loose
   * @param note number of a delivery note; may be empty
   * @param amount where the amount stands
   */
  public record Handed(
      Signed signed, String party, OptionalInt bags, double kg, String note, Span amount) {}

  /** What somebody who feeds it has to say. */
  public record Complaint(Signed signed, String from, String about) {}

  /**
   * What a laboratory found in the feed as it was packed.
   *
   * @param found by nutrient
   */
  public record Result(Signed signed, Map<String, Content> found) {
    public Result {
      found = Collections.unmodifiableMap(new LinkedHashMap<>(found));
    }
  }

  /** What was decided after the release. */
  public record Decided(Signed signed, Decision decision) {}

  /**
   * Why something was changed that was released.
   *
   * @param line whose figure it is; absent where it is no line
   * @param was what stood there, as it was written
   */
  public record Correction(Signed signed, Optional<Located<String>> line, Optional<String> was) {}
}
