package dev.pellucid.syntax;

import dev.pellucid.text.Span;

/** One of the lines between the opening line and the first section. */
public sealed interface HeadLine {
  Span span();

  /** {@code status approved}. */
  record Status(Word status, Span span) implements HeadLine {}

  /** {@code species african-catfish}; in a profile it may name a group of species. */
  record ForSpecies(Word species, Span span) implements HeadLine {}

  /** {@code fish 50 to 250 g}. */
  record Fish(Range mass, Span span) implements HeadLine {}

  /** {@code habit sinking}. */
  record Habit(Word habit, Span span) implements HeadLine {}

  /** {@code meets catfish-grower}; one profile a line. */
  record Meets(Word profile, Span span) implements HeadLine {}

  /** {@code batch 60 kg weighed} or {@code batch 60 kg finished}. */
  record Batch(Amount mass, Word basis, Span span) implements HeadLine {}

  /** {@code dose 10 g/kg}, in a premix. */
  record Dose(Amount dose, Span span) implements HeadLine {}

  /** {@code kind need}, {@code practice} or {@code law}, in a profile. */
  record ProfileKind(Word kind, Span span) implements HeadLine {}

  /** {@code jurisdiction EU}, in a profile of law. */
  record Jurisdiction(Word jurisdiction, Span span) implements HeadLine {}

  /** {@code source nrc-2011}, in a profile. */
  record FromSource(Word source, Span span) implements HeadLine {}
}
