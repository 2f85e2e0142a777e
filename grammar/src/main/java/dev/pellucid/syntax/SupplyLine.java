package dev.pellucid.syntax;

import dev.pellucid.text.Span;

/** {@code vitamin-c 100 mg/kg from ascorbyl-phosphate-35}, per kg of weighed feed. */
public record SupplyLine(Word nutrient, Amount amount, Word from, Span span) {}
