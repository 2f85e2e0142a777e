package dev.pellucid.engine.trend;

import java.util.OptionalDouble;

/**
 * What came into the bags of one batch, in kg.
 *
 * @param planned what a batch of its size was to fill
 * @param finished what left the last machine, by the dry matter of what was weighed and the last
 *     moisture
 * @param expected what of it was to come into bags: all but the shrink that the plant tells
 * @param bagged feed of this batch in bags
 * @param setAside fines and samples
 * @param perKg what a kg in the bags was to cost; empty where something has no price
 */
public record BatchYield(
    double planned,
    double finished,
    double expected,
    double bagged,
    double setAside,
    OptionalDouble perKg) {

  /** kg that left the last machine and came into no bag. */
  public double shrink() {
    return finished - bagged;
  }

  /** kg of it that the plan knew of. */
  public double shrinkPlanned() {
    return finished - expected;
  }

  /** kg that were lost beyond the plan; below zero where more came out. */
  public double beyond() {
    return expected - bagged;
  }

  /** The same in money. */
  public OptionalDouble moneyBeyond() {
    return perKg.isPresent()
        ? OptionalDouble.of(beyond() * perKg.getAsDouble())
        : OptionalDouble.empty();
  }
}
