package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * How an ingredient is ordered, from a day on.
 *
 * @param pack kg of the smallest pack that is sold, where that is told
 * @param leadDays days from the order to the gate, where that is told
 * @param supplier who sells it, where that is told
 * @param packAt where the pack stands, or the name
 * @param place where the name stands
 */
public record Ordering(
    String ingredient,
    LocalDate from,
    OptionalDouble pack,
    OptionalLong leadDays,
    Optional<String> supplier,
    Span packAt,
    Span place) {}
