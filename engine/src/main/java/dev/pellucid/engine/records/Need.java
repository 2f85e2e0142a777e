package dev.pellucid.engine.records;

import dev.pellucid.measure.Closeness;
import java.time.LocalDate;

/** What is needed of one thing so far, by batches in the order of their days. */
final class Need {
  private double needed;
  private double lacking;
  private LocalDate from = LocalDate.MAX;
  private LocalDate lacksFrom = LocalDate.MAX;
  private String firstFor = "";
  private String lacksFor = "";

  void add(double kg, double lacks, LocalDate day, String batch) {
    needed += kg;
    if (day.isBefore(from)) {
      from = day;
      firstFor = batch;
    }
    if (lacks > Closeness.to(kg)) {
      lacking += lacks;
      if (day.isBefore(lacksFrom)) {
        lacksFrom = day;
        lacksFor = batch;
      }
    }
  }

  double needed() {
    return needed;
  }

  double lacking() {
    return lacking;
  }

  /** On which it first lacks, or is first needed where nothing lacks. */
  LocalDate day() {
    return lacking > 0 ? lacksFrom : from;
  }

  /** The batch of that day. */
  String batch() {
    return lacking > 0 ? lacksFor : firstFor;
  }
}
