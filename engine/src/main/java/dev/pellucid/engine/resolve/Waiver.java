package dev.pellucid.engine.resolve;

import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.time.LocalDate;

/** A bound that stands in place of another until a day, that day included. */
public record Waiver(
    double bound, Bound.Limit written, LocalDate until, String by, String because, Span span) {}
