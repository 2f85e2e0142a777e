package dev.pellucid.slip;

import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FileKind;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A line that fits nothing.
 *
 * @param file the kind of file it stands in
 * @param place what it was read as
 * @param lexemes what stands on it, without its comment; at least one
 */
public record BrokenLine(FileKind file, Place place, List<Lexeme> lexemes) {
  public BrokenLine {
    lexemes = List.copyOf(lexemes);
    if (lexemes.isEmpty()) {
      throw new IllegalArgumentException("a line has something on it");
    }
  }

  /** From the first lexeme to the last. */
  public Span span() {
    return lexemes.get(0).span().through(lexemes.get(lexemes.size() - 1).span());
  }

  int size() {
    return lexemes.size();
  }

  Lexeme at(int index) {
    return lexemes.get(index);
  }

  /** What is first found by looking at one lexeme after the other. */
  Optional<Finding> first(Function<Lexeme, Optional<Finding>> look) {
    for (Lexeme lexeme : lexemes) {
      Optional<Finding> found = look.apply(lexeme);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  boolean is(int index, Lexeme.Kind kind) {
    return index >= 0 && index < lexemes.size() && lexemes.get(index).kind() == kind;
  }

  boolean is(int index, String text) {
    return index >= 0 && index < lexemes.size() && lexemes.get(index).is(text);
  }

  /** The stretch between two lexemes, both in it. */
  Span through(int first, int last) {
    return at(first).span().through(at(last).span());
  }
}
