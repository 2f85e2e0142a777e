package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedLines;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.ANTLRErrorStrategy;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenStream;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.jspecify.annotations.Nullable;

/**
 * The kinds of the tokens of one line against one rule of the grammar: the line fits as a whole or
 * not at all. There is nothing to recover, because the next line is parsed by itself.
 *
 * <p>First with the quick prediction of ANTLR, and only a line that it refuses with the full one.
 */
final class LineParser {
  private LineParser() {}

  /** The line as the rule reads it, in tokens that tell their place on it; null if it is not so. */
  static @Nullable ParserRuleContext parse(LineRule rule, Tokens tokens, Line line) {
    ParserRuleContext quick = parse(rule, tokens, line, PredictionMode.SLL);
    return quick != null ? quick : parse(rule, tokens, line, PredictionMode.LL);
  }

  private static @Nullable ParserRuleContext parse(
      LineRule rule, Tokens tokens, Line line, PredictionMode mode) {
    TokenStream stream = new CommonTokenStream(new ListTokenSource(kinds(tokens, line)));
    FeedLines parser = new FeedLines(stream);
    parser.removeErrorListeners();
    parser.setErrorHandler(new StopAtOnce());
    parser.setBuildParseTree(false);
    parser.getInterpreter().setPredictionMode(mode);
    try {
      ParserRuleContext read = rule.read(parser);
      return stream.LA(1) == Token.EOF ? read : null;
    } catch (DoesNotFit misfit) {
      return null;
    }
  }

  private static List<Token> kinds(Tokens tokens, Line line) {
    List<Token> kinds = new ArrayList<>(line.length());
    for (int i = line.from(); i < line.to(); i++) {
      kinds.add(new CommonToken(tokens.kind(i)));
    }
    return kinds;
  }

  /** Where the generated parser gives up. */
  private static final class DoesNotFit extends RuntimeException {
    private static final long serialVersionUID = 1;

    private DoesNotFit() {
      super("", null, false, false);
    }
  }

  /** Gives up at the first token that does not fit. */
  private static final class StopAtOnce implements ANTLRErrorStrategy {
    @Override
    public void reset(Parser recognizer) {}

    @Override
    public Token recoverInline(Parser recognizer) {
      throw new DoesNotFit();
    }

    @Override
    public void recover(Parser recognizer, RecognitionException cause) {
      throw new DoesNotFit();
    }

    @Override
    public void sync(Parser recognizer) {}

    @Override
    public boolean inErrorRecoveryMode(Parser recognizer) {
      return false;
    }

    @Override
    public void reportMatch(Parser recognizer) {}

    @Override
    public void reportError(Parser recognizer, RecognitionException cause) {}
  }
}
