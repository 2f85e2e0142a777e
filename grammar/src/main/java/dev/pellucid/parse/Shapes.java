package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedTokens;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.antlr.v4.runtime.ParserRuleContext;
import org.jspecify.annotations.Nullable;

/**
 * The shapes of lines that have been parsed. How a line is read hangs on its rule and on the kinds
 * of its tokens alone, and many lines are of few shapes; so ANTLR parses each shape once, and other
 * lines of that shape share what it found, in which tokens tell their place on a line.
 *
 * <p>Shapes are kept as a tree: from the root of a rule one step for the kind of each token.
 * Threads walk it without a lock. What they see is either nothing, and then it is worked out, or
 * whole, since its fields are final.
 */
final class Shapes {
  /** Lines with more tokens are parsed each time. */
  private static final int LONGEST = 40;

  /** So many steps are kept, which is some hundred shapes of each rule; the rest is parsed anew. */
  private static final int MOST = 4096;

  private static final int KINDS = FeedTokens.VOCABULARY.getMaxTokenType() + 1;
  private static final Shapes KNOWN = new Shapes(MOST);

  private final Map<LineRule, Shape> roots = new EnumMap<>(LineRule.class);
  private int left;

  /** Keeps so many steps. */
  Shapes(int most) {
    this.left = most;
    for (LineRule rule : LineRule.values()) {
      roots.put(rule, new Shape());
    }
  }

  /** Those that have come up since the program began. */
  static Shapes known() {
    return KNOWN;
  }

  /**
   * A line as its rule reads it, in tokens that tell their place on the line; null for a misfit.
   */
  @Nullable ParserRuleContext read(LineRule rule, Tokens tokens, Line line) {
    Shape shape = line.length() > LONGEST ? null : shape(rule, tokens, line);
    if (shape == null) {
      return LineParser.parse(rule, tokens, line);
    }
    Reading reading = shape.reading;
    if (reading == null) {
      reading = new Reading(LineParser.parse(rule, tokens, line));
      shape.reading = reading;
    }
    return reading.line;
  }

  private @Nullable Shape shape(LineRule rule, Tokens tokens, Line line) {
    Shape shape = Objects.requireNonNull(roots.get(rule));
    for (int i = line.from(); i < line.to(); i++) {
      int kind = tokens.kind(i);
      Shape next = shape.next[kind];
      if (next == null) {
        next = add(shape, kind);
        if (next == null) {
          return null;
        }
      }
      shape = next;
    }
    return shape;
  }

  private synchronized @Nullable Shape add(Shape shape, int kind) {
    if (shape.next[kind] == null && left > 0) {
      shape.next[kind] = new Shape();
      left--;
    }
    return shape.next[kind];
  }

  /** The beginning of lines, or all of a line. */
  private static final class Shape {
    final @Nullable Shape[] next = new Shape[KINDS];
    @Nullable Reading reading;
  }

  /** What came of parsing a shape: a line, or null for one that does not fit. */
  private static final class Reading {
    final @Nullable ParserRuleContext line;

    Reading(@Nullable ParserRuleContext line) {
      this.line = line;
    }
  }
}
