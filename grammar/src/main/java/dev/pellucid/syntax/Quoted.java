package dev.pellucid.syntax;

import dev.pellucid.text.Span;

/** Text in quotes; {@code text} is without them, {@code span} with them. */
public record Quoted(String text, Span span) {}
