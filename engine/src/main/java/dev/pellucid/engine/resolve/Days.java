package dev.pellucid.engine.resolve;

import java.time.LocalDate;

/**
 * The days by which a folder is read.
 *
 * @param prices the newest price not after it counts
 * @param waivers a waiver counts whose last day is not before it
 */
public record Days(LocalDate prices, LocalDate waivers) {
  /** What is written, on whatever day it is read: the newest prices, and every waiver. */
  public static final Days AS_WRITTEN = new Days(LocalDate.MAX, LocalDate.MIN);

  /** The day of a run. */
  public static Days on(LocalDate day) {
    return new Days(day, day);
  }
}
