package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.time.LocalDate;

/**
 * That something was done, found or decided: when, by whom and why.
 *
 * @param because may be empty
 * @param place where the day stands
 */
public record Signed(LocalDate day, String by, String because, Span place) {}
