package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.Optional;

/** The first line of a file: {@code recipe CG-36 "Catfish grower, 4 mm"}. */
public record Opening(Word keyword, Word name, Optional<Quoted> title, Span span) {}
