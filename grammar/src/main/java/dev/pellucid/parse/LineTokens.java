package dev.pellucid.parse;

import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenSource;
import org.antlr.v4.runtime.TokenStream;
import org.antlr.v4.runtime.misc.Interval;

/**
 * All tokens of a file, of which the parser sees one line at a time: what lies before and after the
 * line is not there for it. So what stands on one line can never change how another is read.
 */
final class LineTokens implements TokenStream {
  private final TokenSource lexer;
  private final List<Token> tokens = new ArrayList<>(512);
  private final Token end;
  private int from;
  private int to;
  private int at;

  LineTokens(SourceFile source) {
    lexer = Letters.lexer(source);
    Token token = lexer.nextToken();
    while (token.getType() != Token.EOF) {
      tokens.add(token);
      token = lexer.nextToken();
    }
    end = token;
  }

  /** How many tokens the file has, without the one for its end. */
  int count() {
    return tokens.size();
  }

  /** Any token of the file, in sight or not. */
  Token token(int index) {
    return tokens.get(index);
  }

  /** Shows the parser the tokens of one line and puts it before the first. */
  void show(int first, int afterLast) {
    from = first;
    to = afterLast;
    at = first;
  }

  boolean atEndOfLine() {
    return at == to;
  }

  @Override
  public Token LT(int k) {
    int place = k > 0 ? at + k - 1 : at + k;
    return place >= from && place < to ? tokens.get(place) : end;
  }

  @Override
  public int LA(int k) {
    return LT(k).getType();
  }

  @Override
  public void consume() {
    at++;
  }

  @Override
  public void seek(int index) {
    at = index;
  }

  @Override
  public int index() {
    return at;
  }

  @Override
  public int size() {
    return to;
  }

  @Override
  public Token get(int index) {
    return tokens.get(index);
  }

  @Override
  public int mark() {
    return -1;
  }

  @Override
  public void release(int marker) {}

  @Override
  public TokenSource getTokenSource() {
    return lexer;
  }

  @Override
  public String getSourceName() {
    return lexer.getSourceName();
  }

  @Override
  public String getText(Interval interval) {
    StringBuilder text = new StringBuilder();
    for (int i = interval.a; i <= interval.b; i++) {
      text.append(tokens.get(i).getText());
    }
    return text.toString();
  }

  @Override
  public String getText() {
    return getText(Interval.of(from, to - 1));
  }

  @Override
  public String getText(RuleContext context) {
    return getText(context.getSourceInterval());
  }

  @Override
  public String getText(Token start, Token stop) {
    return getText(Interval.of(start.getTokenIndex(), stop.getTokenIndex()));
  }
}
