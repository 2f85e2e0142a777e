package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedLines;
import java.util.Optional;
import java.util.function.Function;
import org.antlr.v4.runtime.ANTLRErrorStrategy;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;

/**
 * One line against one rule of the grammar: the line fits as a whole or not at all. There is
 * nothing to recover, because the next line is parsed by itself.
 *
 * <p>First with the quick prediction of ANTLR, and only a line that it refuses with the full one.
 */
final class LineParser {
  private final LineTokens tokens;
  private final FeedLines parser;

  LineParser(LineTokens tokens) {
    this.tokens = tokens;
    this.parser = new FeedLines(tokens);
    parser.removeErrorListeners();
    parser.setErrorHandler(new StopAtOnce());
    parser.setBuildParseTree(false);
  }

  /** The line as the rule reads it, if it fits. */
  <C extends ParserRuleContext> Optional<C> parse(Line line, Function<FeedLines, C> rule) {
    Optional<C> quick = parse(line, rule, PredictionMode.SLL);
    return quick.isPresent() ? quick : parse(line, rule, PredictionMode.LL);
  }

  private <C extends ParserRuleContext> Optional<C> parse(
      Line line, Function<FeedLines, C> rule, PredictionMode mode) {
    tokens.show(line.from(), line.to());
    parser.getInterpreter().setPredictionMode(mode);
    try {
      C read = rule.apply(parser);
      return tokens.atEndOfLine() ? Optional.of(read) : Optional.empty();
    } catch (DoesNotFit misfit) {
      return Optional.empty();
    }
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
