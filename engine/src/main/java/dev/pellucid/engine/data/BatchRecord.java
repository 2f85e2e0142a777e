package dev.pellucid.engine.data;

import dev.pellucid.engine.quality.Durability;
import dev.pellucid.engine.quality.MixerTest;
import dev.pellucid.engine.quality.SieveAnalysis;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One file of {@code batches/}: a batch that was made, or one that lots were put aside for.
 *
 * @param number the name of the file: code, day, serial of the day
 * @param code of the recipe or premix
 * @param kg the size of the batch as planned, weighed, before overage and water
 * @param after the batch that was made on the same line before it, where it is told
 * @param flushed what was run through between the two
 * @param entries what was weighed, or which lot is to be
 * @param water kg added to the mix
 * @param deviations what went otherwise than planned, in words
 * @param closed whether it is fed or gone: kept for the trace, and no longer held against a recipe
 *     that may have changed since
 */
public record BatchRecord(
    String number,
    String code,
    LocalDate day,
    int serial,
    double kg,
    Optional<Located<String>> after,
    Optional<Flushed> flushed,
    List<Entry> entries,
    Optional<Located<Double>> water,
    Optional<Drying> drying,
    Optional<Located<Double>> bagged,
    Optional<Located<MixerTest>> mixer,
    Optional<Sieved> sieve,
    Optional<Located<Durability>> durability,
    List<String> deviations,
    Optional<Release> release,
    boolean closed,
    Span declared) {
  public BatchRecord {
    entries = List.copyOf(entries);
    deviations = List.copyOf(deviations);
  }

  /** A figure and where it stands. */
  public record Located<T>(T thing, Span place) {}

  /**
   * What was run through the line.
   *
   * @param with an ingredient
   * @param to where it went
   */
  public record Flushed(double kg, String with, String to, Span place) {}

  /**
   * A line of the batch.
   *
   * @param lot the number of a lot or of a batch made here, as the folder writes it; empty where
   *     none is told, or none that the folder has
   * @param written the number as it stands in the record, whatever the folder has; empty where none
   *     is told
   * @param kg what was weighed; empty while the batch is planned
   * @param name where the line is named
   * @param lotPlace where the lot is named, or the line
   * @param weight where the weight stands, or the line
   */
  public record Entry(
      String line,
      String lot,
      String written,
      OptionalDouble kg,
      Span name,
      Span lotPlace,
      Span weight) {}

  /**
   * How drying was followed; moistures are shares.
   *
   * @param before moisture when it was loaded
   * @param readings as they are written, which is in the order of time
   */
  public record Drying(Located<Double> before, List<Read> readings) {
    public Drying {
      readings = List.copyOf(readings);
    }

    /**
     * A moisture so many hours after the start.
     *
     * @param at where the hours stand
     */
    public record Read(double hours, double moisture, Span at, Span place) {}

    /** The last of the readings. */
    public Optional<Read> last() {
      return readings.isEmpty() ? Optional.empty() : Optional.of(readings.get(readings.size() - 1));
    }
  }

  /**
   * A sieve analysis as it was recorded.
   *
   * @param rows as they are written, from above
   * @param pan kg in it, where it is told
   * @param charge kg that went onto the sieves, where it is told
   */
  public record Sieved(
      SieveAnalysis analysis,
      List<Row> rows,
      Optional<Located<Double>> pan,
      Optional<Located<Double>> charge,
      Span place) {
    public Sieved {
      rows = List.copyOf(rows);
    }

    /**
     * One sieve.
     *
     * @param opening mm
     * @param mass kg that stayed on it
     */
    public record Row(Located<Double> opening, Located<Double> mass) {}
  }

  /** What became of the batch, and who said so. */
  public record Release(Decision decision, String by, String because, Span place) {}

  /** Whether a batch may leave. */
  public enum Decision {
    /** It may be fed. */
    RELEASED,
    /** Somebody has still to decide. */
    HELD,
    /** It will not be fed. */
    REJECTED
  }

  /** Whether anything was weighed yet. */
  public boolean isMade() {
    return entries.stream().anyMatch(entry -> entry.kg().isPresent());
  }

  /** Whether it is still to be made. */
  public boolean isPlanned() {
    return !isMade() && !closed;
  }

  public boolean isRejected() {
    return is(Decision.REJECTED);
  }

  public boolean isHeld() {
    return is(Decision.HELD);
  }

  private boolean is(Decision decision) {
    return release.filter(told -> told.decision() == decision).isPresent();
  }
}
