package dev.pellucid.format;

import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.text.Blanks;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A text with white space where it belongs.
 *
 * <p>The route: lexemes are gathered into lines; each line is laid out by itself, its {@link
 * Pieces} at fixed stops ({@link Stops}) or two spaces after the piece before; comments on lines of
 * their own keep column 1 or go to column 3, others stand two spaces after the line; one blank line
 * stands above a section and its comments; no more than one stands anywhere. Line ends stay as in
 * the first line. The result is read again: if any lexeme or letter were not the same, there is no
 * result.
 */
public final class Formatter {
  private static final char MARK = '\uFEFF';

  private final Function<SourceFile, List<Lexeme>> lexer;

  /** Needs a way from a text to its lexemes. */
  public Formatter(Function<SourceFile, List<Lexeme>> lexer) {
    this.lexer = lexer;
  }

  /**
   * The text laid out; empty if that would change more than white space. Only for a text without
   * findings of syntax.
   */
  public Optional<String> format(SourceFile source) {
    List<Lexeme> lexemes = lexer.apply(source);
    String laidOut = new Layout(source, lexemes).text();
    List<Lexeme> again = lexer.apply(new SourceFile(source.path(), laidOut));
    boolean same =
        words(lexemes).equals(words(again)) && letters(source.text()).equals(letters(laidOut));
    return same ? Optional.of(laidOut) : Optional.empty();
  }

  private static List<String> words(List<Lexeme> lexemes) {
    return lexemes.stream().map(lexeme -> lexeme.text().stripTrailing()).toList();
  }

  /** All that is not white space, told without the lexer, lest the lexer lose something twice. */
  private static String letters(String text) {
    StringBuilder letters = new StringBuilder(text.length());
    text.codePoints().filter(c -> !Blanks.isWhite(c)).forEach(letters::appendCodePoint);
    return letters.toString();
  }

  /** The making of one text. */
  private static final class Layout {
    private final SourceFile source;
    private final String lineEnd;
    private final List<String> lines = new ArrayList<>();
    private Optional<SectionWord> section = Optional.empty();
    private int lastLine;

    Layout(SourceFile source, List<Lexeme> lexemes) {
      this.source = source;
      this.lineEnd = lineEnd(source.text());
      byLines(lexemes).forEach(this::line);
    }

    String text() {
      String mark = source.text().indexOf(MARK) == 0 ? String.valueOf(MARK) : "";
      return lines.isEmpty() ? mark : mark + String.join(lineEnd, lines) + lineEnd;
    }

    private static String lineEnd(String text) {
      int newline = text.indexOf('\n');
      int carriage = text.indexOf('\r');
      if (carriage < 0 || (newline >= 0 && newline < carriage)) {
        return "\n";
      }
      return newline == carriage + 1 ? "\r\n" : "\r";
    }

    private List<List<Lexeme>> byLines(List<Lexeme> lexemes) {
      List<List<Lexeme>> all = new ArrayList<>();
      int number = 0;
      for (Lexeme lexeme : lexemes) {
        int at = lexeme.span().from().line();
        if (at != number) {
          all.add(new ArrayList<>());
          number = at;
        }
        all.get(all.size() - 1).add(lexeme);
      }
      return all;
    }

    private void line(List<Lexeme> line) {
      int number = line.get(0).span().from().line();
      boolean blankBefore = number > lastLine + 1 && !lines.isEmpty();
      lastLine = number;
      boolean first = line.get(0).kind() == Lexeme.Kind.COMMENT;
      boolean atMargin = column(line.get(0)) == 1;
      Optional<SectionWord> heading =
          atMargin && !first ? SectionWord.of(line.get(0).text()) : Optional.empty();
      if (heading.isPresent()) {
        section = heading;
        parted(blankBefore);
      } else if (blankBefore && !afterHeading()) {
        lines.add("");
      }
      lines.add(laidOut(line, atMargin));
    }

    private int column(Lexeme lexeme) {
      int column = lexeme.span().from().column();
      boolean behindMark = lexeme.span().start() == 1 && source.text().charAt(0) == MARK;
      return behindMark ? 1 : column;
    }

    private boolean afterHeading() {
      String before = lines.get(lines.size() - 1);
      return SectionWord.of(before).isPresent();
    }

    /**
     * Puts one blank line above a heading and the comments in column 1 that stand right above it.
     */
    private void parted(boolean blankBefore) {
      int at = lines.size();
      while (!blankBefore && at > 0 && lines.get(at - 1).startsWith("#")) {
        at--;
      }
      if (at > 0 && !lines.get(at - 1).isEmpty()) {
        lines.add(at, "");
      }
    }

    private String laidOut(List<Lexeme> line, boolean atMargin) {
      Lexeme last = line.get(line.size() - 1);
      boolean commented = last.kind() == Lexeme.Kind.COMMENT;
      List<Lexeme> words = commented ? line.subList(0, line.size() - 1) : line;
      StringBuilder out = new StringBuilder();
      if (atMargin) {
        out.append(joined(words));
      } else if (!words.isEmpty()) {
        Pieces.of(words, section).forEach(piece -> at(out, piece));
      }
      if (commented) {
        String space = words.isEmpty() ? (atMargin ? "" : "  ") : "  ";
        out.append(space).append(last.text().stripTrailing());
      }
      return out.toString();
    }

    private static void at(StringBuilder out, Pieces.Piece piece) {
      int gap = out.isEmpty() ? 0 : 2;
      int column = Math.max(piece.stop() - 1, out.length() + gap);
      out.append(" ".repeat(column - out.length())).append(joined(piece.lexemes()));
    }

    private static String joined(List<Lexeme> lexemes) {
      return String.join(" ", lexemes.stream().map(Lexeme::text).toList());
    }
  }
}
