package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.Arrays;

/**
 * All tokens of a file, without the blanks between them: of each its kind, which is one of {@link
 * FeedTokens}, and where it stands. They are rows of numbers, for most are looked at once or twice.
 */
final class Tokens {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final SourceFile source;
  private byte[] kinds;
  private int[] starts;
  private int[] ends;
  private int count;

  /** Cuts the text of a file into tokens, after a byte order mark if there is one. */
  Tokens(SourceFile source) {
    this.source = source;
    int likely = source.text().length() / 4 + 16;
    kinds = new byte[likely];
    starts = new int[likely];
    ends = new int[likely];
    cut(source.text().toCharArray(), beginning(source.text()));
  }

  /** Where a text begins: after a byte order mark, if there is one. */
  static int beginning(String text) {
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? 1 : 0;
  }

  /** The longest token from each place on; of two kinds the one that the grammar names first. */
  private void cut(char[] text, int beginning) {
    Automaton automaton = Automaton.ofTheGrammar();
    byte[] standIns = automaton.alphabet().standIns();
    int endOfText = automaton.alphabet().end();
    int at = beginning;
    while (at < text.length) {
      Automaton.State state = automaton.start();
      int kind = 0;
      int end = at;
      int place = at;
      while (true) {
        int standIn = place < text.length ? standIns[text[place]] : endOfText;
        Automaton.State next = automaton.next(state, standIn);
        if (next == Automaton.DEAD) {
          break;
        }
        place++;
        if (next == state) {
          // Nor will a run of such characters lead on from here: it is passed over at once.
          while (place < text.length && standIns[text[place]] == standIn) {
            place++;
          }
        }
        state = next;
        if (state.token != 0) {
          kind = state.token;
          end = place;
        }
      }
      if (end == at) {
        throw new IllegalStateException("no token begins at " + at);
      }
      end = Math.min(end, text.length);
      if (kind != FeedTokens.SPACE) {
        add(kind, at, end);
      }
      at = end;
    }
  }

  private void add(int kind, int start, int end) {
    if (count == kinds.length) {
      kinds = Arrays.copyOf(kinds, count * 2);
      starts = Arrays.copyOf(starts, count * 2);
      ends = Arrays.copyOf(ends, count * 2);
    }
    kinds[count] = (byte) kind;
    starts[count] = start;
    ends[count] = end;
    count++;
  }

  int count() {
    return count;
  }

  int kind(int token) {
    return kinds[token];
  }

  /** Has a token read as one of another kind. */
  void readAs(int token, int kind) {
    kinds[token] = (byte) kind;
  }

  /** Whether a token ends a line; then it also holds the comments up to the next written line. */
  boolean endsLine(int token) {
    return kinds[token] == FeedTokens.COLUMN_ONE || kinds[token] == FeedTokens.INDENTED;
  }

  /** Whether the grammar lets it hold any character: a text in quotes, a comment, what is none. */
  boolean mayHoldAnything(int token) {
    return kinds[token] == FeedTokens.QUOTED || kinds[token] == FeedTokens.OTHER || endsLine(token);
  }

  int start(int token) {
    return starts[token];
  }

  /** The place behind a token. */
  int end(int token) {
    return ends[token];
  }

  String text(int token) {
    return source.text().substring(starts[token], ends[token]);
  }

  Span span(int token) {
    return source.span(starts[token], ends[token]);
  }

  /** From the start of a token to the end of another. */
  Span span(int first, int last) {
    return source.span(starts[first], ends[last]);
  }
}
