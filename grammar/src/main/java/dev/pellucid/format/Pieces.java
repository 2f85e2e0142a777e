package dev.pellucid.format;

import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.SectionWord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Cuts the lexemes of an indented line into the pieces that stand at stops. */
final class Pieces {
  private static final Set<String> PHRASES =
      Set.of(
          "within", "from", "for", "per", "in", "on", "at", "source", "accept", "until", "by",
          "because", "step");

  /** After these a name stands, which may be spelt like any word. */
  private static final Set<String> BEFORE_A_NAME = Set.of("source", "from", "for");

  /** Words that belong together, from a column on. */
  record Piece(int stop, List<Lexeme> lexemes) {
    Piece {
      lexemes = List.copyOf(lexemes);
    }
  }

  private final List<Lexeme> line;
  private final List<Piece> pieces = new ArrayList<>();

  private Pieces(List<Lexeme> line) {
    this.line = line;
  }

  /**
   * The pieces of a line.
   *
   * @param section the section it stands in; empty in the head of a file
   */
  static List<Piece> of(List<Lexeme> line, Optional<SectionWord> section) {
    Pieces cut = new Pieces(line);
    if (section.isEmpty()) {
      cut.add(Stops.SUBJECT, 0, 1);
      cut.add(Stops.HEAD_VALUE, 1, line.size());
      return cut.pieces;
    }
    int figure = cut.figure(section.get());
    if (section.get() == SectionWord.PROCESS) {
      cut.add(Stops.SUBJECT, 0, 1);
      cut.add(Stops.PROPERTY, 1, figure);
    } else {
      cut.add(Stops.SUBJECT, 0, figure);
    }
    cut.figureAndPhrases(figure);
    return cut.pieces;
  }

  private void add(int stop, int from, int to) {
    int end = Math.min(to, line.size());
    if (from < end) {
      pieces.add(new Piece(stop, line.subList(from, end)));
    }
  }

  private void figureAndPhrases(int figure) {
    int start = figure;
    int stop = Stops.FIGURE;
    int i = figure + 1;
    while (i < line.size()) {
      String word = line.get(i).text();
      if (PHRASES.contains(word) || isBound(i)) {
        add(stop, start, i);
        start = i;
        stop = Stops.PHRASE;
        i += BEFORE_A_NAME.contains(word) ? 2 : 1;
      } else {
        i++;
      }
    }
    add(stop, start, line.size());
  }

  private int figure(SectionWord section) {
    return switch (section) {
      case MIX, COAT, CARRIER -> isRework() ? 2 : 1;
      case SUPPLY, LABEL -> 1;
      case OVERAGE -> isLinesBelow() ? 4 : 1;
      case LIMITS, WAIVERS -> bound();
      case PROCESS -> target();
    };
  }

  /** A name follows, and not a figure or {@code rest} of something that is called rework. */
  private boolean isRework() {
    return line.size() > 2
        && line.get(0).is("rework")
        && line.get(1).kind() != Lexeme.Kind.NUMBER
        && (!line.get(1).is("rest") || line.get(2).kind() == Lexeme.Kind.NUMBER);
  }

  private boolean isLinesBelow() {
    return line.size() > 3 && line.get(0).is("lines") && line.get(1).is("below");
  }

  /** The first {@code min} or {@code max} with a figure behind it. */
  private int bound() {
    for (int i = 1; i < line.size(); i++) {
      if (isBound(i)) {
        return i;
      }
    }
    return line.size();
  }

  private boolean isBound(int i) {
    return i + 1 < line.size()
        && (line.get(i).is("min") || line.get(i).is("max"))
        && line.get(i + 1).kind() == Lexeme.Kind.NUMBER;
  }

  /** The first figure behind the property, or the last word where there is none. */
  private int target() {
    for (int i = 2; i < line.size(); i++) {
      if (line.get(i).kind() == Lexeme.Kind.NUMBER) {
        return i;
      }
    }
    return line.size() - 1;
  }
}
