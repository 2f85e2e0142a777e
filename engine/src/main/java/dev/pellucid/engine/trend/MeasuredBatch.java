package dev.pellucid.engine.trend;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What was found of one batch.
 *
 * @param code of its recipe
 * @param serial which batch of its day it is
 * @param standing what became of it, in words; empty while nobody has decided
 * @param closed whether it is fed or gone, so that nothing about it can be done any more
 * @param yields absent where nothing was bagged, or it is not known what was to be
 */
public record MeasuredBatch(
    String code,
    String number,
    LocalDate day,
    int serial,
    String standing,
    boolean closed,
    List<Measured> figures,
    Optional<BatchYield> yields) {

  /** In the order in which they were made, whatever the order of their files. */
  public static final Comparator<MeasuredBatch> AS_MADE =
      Comparator.comparing(MeasuredBatch::day)
          .thenComparingInt(MeasuredBatch::serial)
          .thenComparing(MeasuredBatch::number);

  public MeasuredBatch {
    figures = List.copyOf(figures);
  }

  /** The figure of a name. */
  public Optional<Measured> figure(String name) {
    return figures.stream().filter(one -> one.name().equals(name)).findFirst();
  }
}
