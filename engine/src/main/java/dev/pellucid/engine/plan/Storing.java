package dev.pellucid.engine.plan;

import java.time.LocalDate;

/**
 * How long the feed may lie.
 *
 * @param days full days of shelf life
 * @param useBy the last day, when the feed is packed on the day of the run
 */
public record Storing(long days, LocalDate useBy) {}
