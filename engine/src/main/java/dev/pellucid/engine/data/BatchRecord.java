package dev.pellucid.engine.data;

import dev.pellucid.engine.quality.Durability;
import dev.pellucid.engine.quality.MixerTest;
import dev.pellucid.engine.quality.SieveAnalysis;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
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
 * @param cleaned who cleaned the line between the two and when; its reason is how
 * @param entries what was weighed, or which lot is to be
 * @param water kg added to the mix
 * @param deviations what went otherwise than planned, in words
 * @param closed whether it is fed or gone: kept for the trace, and no longer held against a recipe
 *     that may have changed since
 * @param madeFrom the state of the folder that its sheet was made from
 * @param rebalanced shares of this batch in place of those of the recipe
 * @param since what was written after the release
 */
public record BatchRecord(
    String number,
    String code,
    LocalDate day,
    int serial,
    double kg,
    Optional<Located<String>> after,
    Optional<Flushed> flushed,
    Optional<Signed> cleaned,
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
    Optional<MadeFrom> madeFrom,
    Optional<Rebalanced> rebalanced,
    Optional<Bags> bags,
    Optional<Fines> fines,
    List<Sample> samples,
    Since since,
    Span declared) {
  public BatchRecord {
    entries = List.copyOf(entries);
    deviations = List.copyOf(deviations);
    samples = List.copyOf(samples);
  }

  /** A figure and where it stands. */
  public record Located<T>(T thing, Span place) {}

  /**
   * What was run through the line.
   *
   * @param with an ingredient
   * @param lot the number of its lot; empty where none is told
   * @param to where it went
   * @param place where the quantity stands
   * @param goes where it is told where it went, or that it was flushed
   */
  public record Flushed(double kg, String with, String lot, String to, Span place, Span goes) {}

  /**
   * The state of the folder that the sheet was made from, as the sheet names it.
   *
   * @param commit of the version control
   * @param fingerprint of all files that the sheet hangs on
   */
  public record MadeFrom(
      Optional<Located<String>> commit, Optional<Located<String>> fingerprint, Span place) {}

  /** Who gave this batch other shares than its recipe has, and which. */
  public record Rebalanced(Signed signed, List<NewShare> shares) {
    public Rebalanced {
      shares = List.copyOf(shares);
    }
  }

  /**
   * The share of one line in this batch alone.
   *
   * @param share of 1
   * @param name where the line is named
   * @param place where the share stands
   */
  public record NewShare(String line, double share, Span name, Span place) {}

  /**
   * Bags that were filled.
   *
   * @param of kg in a full one; 0 where none is full
   * @param rest kg in the last one
   * @param begunWith the part bag of an earlier batch that was filled up
   */
  public record Bags(int full, double of, double rest, Optional<BegunWith> begunWith, Span place) {}

  /** So many kg of an earlier batch, in a bag that was not full. */
  public record BegunWith(String batch, double kg, Span place) {}

  /**
   * What the sieve took out.
   *
   * @param to a batch, or in words
   * @param place where the weight stands
   * @param goes where it is told where they went, or that there were fines
   */
  public record Fines(double kg, String to, Span place, Span goes) {}

  /**
   * What is kept of the batch.
   *
   * @param place where it lies
   * @param until the last day
   */
  public record Sample(double kg, String place, Optional<LocalDate> until, Span written) {}

  /**
   * A line of the batch.
   *
   * @param lot the number of a lot or of a batch made here, as the folder writes it; empty where
   *     none is told, or none that the folder has
   * @param written the number as it stands in the record, whatever the folder has; empty where none
   *     is told
   * @param bin what it was taken from; empty where none is told
   * @param kg what was weighed; empty while the batch is planned
   * @param name where the line is named
   * @param lotPlace where the lot is named, or the line
   * @param weight where the weight stands, or the line
   */
  public record Entry(
      String line,
      String lot,
      String written,
      String bin,
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
  public record Release(
      Decision decision, String by, Optional<LocalDate> day, String because, Span place) {}

  /** Whether a batch may leave. */
  public enum Decision {
    /** It may be fed. */
    RELEASED,
    /** Somebody has still to decide. */
    HELD,
    /** It will not be fed. */
    REJECTED,
    /** It was released, and nothing may leave until somebody has decided again. */
    ON_HOLD,
    /** It was released, and is called back. */
    WITHDRAWN
  }

  /** The same record with other lines, and other shares of its own. */
  public BatchRecord with(List<Entry> others, Optional<Rebalanced> shares) {
    return new BatchRecord(
        number,
        code,
        day,
        serial,
        kg,
        after,
        flushed,
        cleaned,
        others,
        water,
        drying,
        bagged,
        mixer,
        sieve,
        durability,
        deviations,
        release,
        closed,
        madeFrom,
        shares,
        bags,
        fines,
        samples,
        since,
        declared);
  }

  /**
   * Whether it was made: something was weighed, or is told that only a batch that was made can
   * have. What it took is not known then, but it is not what was planned.
   */
  public boolean isMade() {
    return closed || isWeighed() || !tracks().isEmpty();
  }

  /** Whether any weight is told. */
  public boolean isWeighed() {
    for (Entry entry : entries) {
      if (entry.kg().isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is still to be made. */
  public boolean isPlanned() {
    return !isMade();
  }

  /** The keys of what it tells, beside weights, that only a batch that was made can have. */
  public List<String> tracks() {
    List<String> tracks = new ArrayList<>();
    add(tracks, "water", water.isPresent());
    add(tracks, "mixer-test", mixer.isPresent());
    add(tracks, "sieve", sieve.isPresent());
    add(tracks, "drying", drying.isPresent());
    add(tracks, "durability", durability.isPresent());
    add(tracks, "fines", fines.isPresent());
    add(tracks, "bags", bags.isPresent() || bagged.isPresent());
    add(tracks, "samples", !samples.isEmpty());
    add(tracks, "deviations", !deviations.isEmpty());
    add(tracks, "release", release.isPresent());
    add(tracks, "results", !since.results().isEmpty());
    add(tracks, "delivered", !since.delivered().isEmpty());
    add(tracks, "returned", !since.returned().isEmpty());
    add(tracks, "disposed", !since.disposed().isEmpty());
    add(tracks, "counted", !since.counted().isEmpty());
    add(tracks, "complaints", !since.complaints().isEmpty());
    add(tracks, "decided-later", !since.decisions().isEmpty());
    add(tracks, "corrections", !since.corrections().isEmpty());
    return tracks;
  }

  private static void add(List<String> tracks, String key, boolean told) {
    if (told) {
      tracks.add(key);
    }
  }

  /** The last that was decided: the release, or what came after it. */
  public Optional<Decision> standing() {
    return standingOn(LocalDate.MAX);
  }

  /** The last that was decided up to a day. */
  public Optional<Decision> standingOn(LocalDate when) {
    return decidedOn(when).map(Release::decision);
  }

  /**
   * The last that was decided up to a day, the release or a later decision, with who decided. What
   * is of a day before the release was decided before it; of one day the later decision counts. A
   * release without a day is taken as of before.
   */
  public Optional<Release> decidedOn(LocalDate when) {
    Release last = release.filter(it -> !dayOf(it).isAfter(when)).orElse(null);
    for (Since.Decided one : since.decisions()) {
      LocalDate day = one.signed().day();
      if (!day.isAfter(when) && (last == null || !day.isBefore(dayOf(last)))) {
        last =
            new Release(
                one.decision(),
                one.signed().by(),
                Optional.of(day),
                one.signed().because(),
                one.signed().place());
      }
    }
    return Optional.ofNullable(last);
  }

  private static LocalDate dayOf(Release release) {
    return release.day().orElse(LocalDate.MIN);
  }

  /** Whether it will not be fed, or is called back. */
  public boolean isRejected() {
    return is(Decision.REJECTED) || is(Decision.WITHDRAWN);
  }

  /** Whether somebody has still to decide. */
  public boolean isHeld() {
    return is(Decision.HELD) || is(Decision.ON_HOLD);
  }

  private boolean is(Decision decision) {
    return standing().filter(told -> told == decision).isPresent();
  }
}
