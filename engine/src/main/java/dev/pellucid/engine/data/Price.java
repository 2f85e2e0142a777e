package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.time.LocalDate;

/** What a kg of an ingredient costs from a day on, in the currency of the folder. */
public record Price(
    String ingredient, LocalDate from, double perKg, String asWritten, Source source, Span place) {}
