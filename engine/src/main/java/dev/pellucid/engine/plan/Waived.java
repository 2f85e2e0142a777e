package dev.pellucid.engine.plan;

import java.time.LocalDate;

/**
 * A limit that another stands in for until a day, that day included.
 *
 * @param what it is about, in words
 * @param inForce side and figure that hold until then
 * @param otherwise side and figure that hold after it
 */
public record Waived(
    String what, String inForce, String otherwise, LocalDate until, String by, String because) {}
