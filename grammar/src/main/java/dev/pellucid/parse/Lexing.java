package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;

/**
 * A text to its lexemes: every piece that is not white space, comments included, in order. Lines
 * can be read off the places.
 */
public final class Lexing {
  private Lexing() {}

  public static List<Lexeme> lexemes(SourceFile source) {
    Tokens tokens = new Tokens(source);
    List<Lexeme> lexemes = new ArrayList<>(tokens.count());
    for (int i = 0; i < tokens.count(); i++) {
      if (tokens.endsLine(i)) {
        addComments(source, tokens.start(i), tokens.end(i), lexemes);
      } else {
        lexemes.add(lexeme(tokens, i));
      }
    }
    return lexemes;
  }

  /** The lexemes of one line, without its comment. */
  static List<Lexeme> lexemes(Tokens tokens, Line line) {
    List<Lexeme> lexemes = new ArrayList<>(line.length());
    for (int i = line.from(); i < line.to(); i++) {
      lexemes.add(lexeme(tokens, i));
    }
    return lexemes;
  }

  private static Lexeme lexeme(Tokens tokens, int index) {
    boolean measure = isNumber(tokens, index - 1) && !isNumber(tokens, index + 1);
    return new Lexeme(kind(tokens.kind(index), measure), tokens.span(index));
  }

  private static boolean isNumber(Tokens tokens, int index) {
    return index >= 0 && index < tokens.count() && tokens.kind(index) == FeedTokens.NUMBER;
  }

  private static Kind kind(int type, boolean measure) {
    return switch (type) {
      case FeedTokens.NUMBER -> Kind.NUMBER;
      case FeedTokens.UNIT -> Kind.UNIT;
      case FeedTokens.DAY -> Kind.DAY;
      case FeedTokens.COLON, FeedTokens.PLUS -> Kind.SYMBOL;
      case FeedTokens.QUOTED -> Kind.QUOTED;
      case FeedTokens.OTHER -> Kind.UNREADABLE;
      case FeedTokens.UNIT_WORD, FeedTokens.MIN -> measure ? Kind.UNIT : Kind.WORD;
      default -> Kind.WORD;
    };
  }

  private static void addComments(SourceFile source, int from, int to, List<Lexeme> lexemes) {
    String text = source.text();
    int at = from;
    while (at < to) {
      if (text.charAt(at) == '#') {
        int end = endOfLine(text, at, to);
        lexemes.add(new Lexeme(Kind.COMMENT, source.span(at, end)));
        at = end;
      } else {
        at++;
      }
    }
  }

  private static int endOfLine(String text, int from, int to) {
    int at = from;
    while (at < to && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
      at++;
    }
    return at;
  }
}
