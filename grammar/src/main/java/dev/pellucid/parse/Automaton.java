package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedTokens;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.Lexer;
import org.antlr.v4.runtime.atn.ATN;
import org.antlr.v4.runtime.atn.ATNDeserializer;
import org.antlr.v4.runtime.atn.LexerATNSimulator;
import org.antlr.v4.runtime.atn.PredictionContextCache;
import org.antlr.v4.runtime.dfa.DFA;
import org.antlr.v4.runtime.dfa.DFAState;

/**
 * The automaton of the lexer as ANTLR made it of the grammar, told in the stand-ins of the {@link
 * Alphabet}. ANTLR finds out each step when it is first taken; from then on it is known, and a text
 * is cut into tokens by looking up one step for each of its characters.
 */
final class Automaton extends LexerATNSimulator {
  /** A state from which nothing can follow. */
  static final State DEAD = new State(0, new State[0], ERROR);

  private static final CharStream NO_TEXT = CharStreams.fromString("");
  private static final Automaton OF_THE_GRAMMAR = of(FeedTokens._serializedATN);

  private final Alphabet alphabet;
  private final State start;

  /** What is known of ANTLR's states, by their numbers. */
  private final List<State> states = new ArrayList<>();

  private Automaton(ATN inStandIns, Alphabet alphabet) {
    super(
        inStandIns,
        new DFA[] {new DFA(inStandIns.getDecisionState(Lexer.DEFAULT_MODE), Lexer.DEFAULT_MODE)},
        new PredictionContextCache());
    this.alphabet = alphabet;
    this.start =
        known(
            addDFAState(computeStartState(NO_TEXT, atn.modeToStartState.get(Lexer.DEFAULT_MODE))));
  }

  static Automaton ofTheGrammar() {
    return OF_THE_GRAMMAR;
  }

  private static Automaton of(String serialized) {
    ATN automaton = new ATNDeserializer().deserialize(serialized.toCharArray());
    Alphabet alphabet = new Alphabet(automaton);
    alphabet.putInto(automaton);
    return new Automaton(automaton, alphabet);
  }

  Alphabet alphabet() {
    return alphabet;
  }

  /** Where each token begins. */
  State start() {
    return start;
  }

  /** The state after one more stand-in. */
  State next(State from, int standIn) {
    State known = from.next[standIn];
    return known != null ? known : findOut(from, standIn);
  }

  private synchronized State findOut(State from, int standIn) {
    DFAState found = computeTargetState(NO_TEXT, from.found, standIn);
    State next = found.stateNumber == ERROR.stateNumber ? DEAD : known(found);
    from.next[standIn] = next;
    return next;
  }

  private State known(DFAState found) {
    while (states.size() <= found.stateNumber) {
      states.add(DEAD);
    }
    State state = states.get(found.stateNumber);
    if (state == DEAD) {
      int token = found.isAcceptState ? found.prediction : 0;
      state = new State(token, new State[alphabet.end() + 1], found);
      states.set(found.stateNumber, state);
    }
    return state;
  }

  /**
   * Where the lexer stands behind some characters of a token.
   *
   * <p>Threads look into {@code next} without a lock. What they see there is either nothing, and
   * then it is found out, or a whole state, since all its fields are final.
   */
  static final class State {
    /** The kind of token that may end here; 0 if none may. */
    final int token;

    /** What is known of the steps from here, by stand-ins. */
    private final State[] next;

    private final DFAState found;

    private State(int token, State[] next, DFAState found) {
      this.token = token;
      this.next = next;
      this.found = found;
    }
  }
}
