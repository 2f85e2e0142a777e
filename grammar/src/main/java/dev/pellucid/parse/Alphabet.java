package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedTokens;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.antlr.v4.runtime.Lexer;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATN;
import org.antlr.v4.runtime.atn.ATNDeserializer;
import org.antlr.v4.runtime.atn.ATNState;
import org.antlr.v4.runtime.atn.LexerATNSimulator;
import org.antlr.v4.runtime.atn.PredictionContextCache;
import org.antlr.v4.runtime.atn.SetTransition;
import org.antlr.v4.runtime.atn.Transition;
import org.antlr.v4.runtime.dfa.DFA;
import org.antlr.v4.runtime.misc.Interval;
import org.antlr.v4.runtime.misc.IntervalSet;

/**
 * The characters of a text in the few classes between which the grammar makes a difference, each
 * class with a stand-in below 0x80.
 *
 * <p>ANTLR remembers what its lexer found out for characters up to U+007F only and works out all
 * others anew each time, about forty times as slowly. So the lexer is given the stand-in of each
 * character and runs on an automaton whose steps are told in stand-ins. Both come from the
 * automaton that ANTLR made of the grammar: two characters are of one class if each of its steps
 * takes both or neither. So every token is the same as without stand-ins, and a new character of
 * the grammar has its own class by itself.
 */
final class Alphabet {
  /** ANTLR remembers the steps from a state for characters below this. */
  static final int REMEMBERED = 0x80;

  private static final int CHARACTERS = Character.MAX_VALUE + 1;

  /** Made when the first text is read. */
  private static final Alphabet OF_THE_GRAMMAR = new Alphabet(automaton());

  private final byte[] standIns = new byte[CHARACTERS];

  /** One character for each class, at the place of its stand-in. */
  private final List<Character> classes = new ArrayList<>();

  private final ATN inStandIns = automaton();
  private final DFA[] remembered;
  private final PredictionContextCache contexts = new PredictionContextCache();

  private Alphabet(ATN asWritten) {
    List<Transition> steps = steps(asWritten);
    Map<List<Integer>, Integer> numbers = new HashMap<>();
    List<Integer> starts = starts(steps);
    for (int i = 0; i < starts.size(); i++) {
      int start = starts.get(i);
      int end = i + 1 < starts.size() ? starts.get(i + 1) : CHARACTERS;
      int number = numbers.computeIfAbsent(thatTake(steps, start), taken -> classes.size());
      if (number == classes.size()) {
        classes.add((char) start);
      }
      Arrays.fill(standIns, start, end, (byte) number);
    }
    if (classes.size() > REMEMBERED) {
      throw new IllegalStateException("the grammar tells too many characters apart");
    }
    inStandIns.states.forEach(this::putStandIns);
    remembered = new DFA[inStandIns.getNumberOfDecisions()];
    for (int i = 0; i < remembered.length; i++) {
      remembered[i] = new DFA(inStandIns.getDecisionState(i), i);
    }
  }

  /** What stands for a UTF-16 unit of a text. */
  static int standIn(char c) {
    return OF_THE_GRAMMAR.standIns[c];
  }

  /** Lets a lexer read stand-ins, which it then has to be given. */
  static void teach(Lexer lexer) {
    lexer.setInterpreter(
        new LexerATNSimulator(
            lexer, OF_THE_GRAMMAR.inStandIns, OF_THE_GRAMMAR.remembered, OF_THE_GRAMMAR.contexts));
  }

  private static ATN automaton() {
    return new ATNDeserializer().deserialize(FeedTokens._serializedATN.toCharArray());
  }

  /** The steps that read a character. */
  private static List<Transition> steps(ATN automaton) {
    List<Transition> steps = new ArrayList<>();
    for (ATNState state : automaton.states) {
      for (Transition step : state.getTransitions()) {
        if (step.label() != null) {
          steps.add(step);
        }
      }
    }
    return steps;
  }

  /** Where a stretch of characters begins that every step treats alike. */
  private static List<Integer> starts(List<Transition> steps) {
    TreeSet<Integer> starts = new TreeSet<>(List.of(0));
    for (Transition step : steps) {
      for (Interval stretch : step.label().getIntervals()) {
        starts.add(stretch.a);
        starts.add(stretch.b + 1);
      }
    }
    return List.copyOf(starts.subSet(0, CHARACTERS));
  }

  private static List<Integer> thatTake(List<Transition> steps, int c) {
    List<Integer> taking = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      if (takes(steps.get(i), c)) {
        taking.add(i);
      }
    }
    return taking;
  }

  private static boolean takes(Transition step, int c) {
    return step.matches(c, Lexer.MIN_CHAR_VALUE, Lexer.MAX_CHAR_VALUE);
  }

  private void putStandIns(ATNState state) {
    for (int i = 0; i < state.getNumberOfTransitions(); i++) {
      Transition step = state.transition(i);
      if (step.label() != null) {
        state.setTransition(i, new SetTransition(step.target, taken(step)));
      }
    }
  }

  /** The stand-ins of what a step takes, and the end of the text if it takes that. */
  private IntervalSet taken(Transition step) {
    IntervalSet taken = new IntervalSet();
    if (step.label().contains(Token.EOF)) {
      taken.add(Token.EOF);
    }
    for (int number = 0; number < classes.size(); number++) {
      if (takes(step, classes.get(number))) {
        taken.add(number);
      }
    }
    return taken;
  }
}
