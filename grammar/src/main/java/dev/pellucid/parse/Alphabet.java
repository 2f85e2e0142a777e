package dev.pellucid.parse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.antlr.v4.runtime.Lexer;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATN;
import org.antlr.v4.runtime.atn.ATNState;
import org.antlr.v4.runtime.atn.AtomTransition;
import org.antlr.v4.runtime.atn.SetTransition;
import org.antlr.v4.runtime.atn.Transition;
import org.antlr.v4.runtime.misc.Interval;
import org.antlr.v4.runtime.misc.IntervalSet;

/**
 * The characters of a text in the few classes between which the grammar makes a difference, each
 * class with a stand-in below 0x80, and one more stand-in for the end of the text.
 *
 * <p>An automaton that is told in stand-ins is small enough to remember all that was found out of
 * it, for every script alike. The classes come from the automaton that ANTLR made of the grammar:
 * two characters are of one class if each of its steps takes both or neither. So every token is the
 * same as without stand-ins, and a new character of the grammar has its own class by itself.
 */
final class Alphabet {
  /** ANTLR remembers the steps from a state for characters below this. */
  static final int REMEMBERED = 0x80;

  private static final int CHARACTERS = Character.MAX_VALUE + 1;

  private final byte[] standIns = new byte[CHARACTERS];

  /** One character for each class, at the place of its stand-in. */
  private final List<Character> classes = new ArrayList<>();

  /** Finds the classes of an automaton that is told in characters. */
  Alphabet(ATN automaton) {
    Set<IntervalSet> labels = labels(automaton);
    int[] starts = starts(labels);
    BitSet[] takenBy = takenBy(labels, starts);
    Map<BitSet, Integer> numbers = new HashMap<>();
    for (int i = 0; i < starts.length; i++) {
      Integer number = numbers.putIfAbsent(takenBy[i], classes.size());
      if (number == null) {
        number = classes.size();
        classes.add((char) starts[i]);
      }
      int end = i + 1 < starts.length ? starts[i + 1] : CHARACTERS;
      Arrays.fill(standIns, starts[i], end, number.byteValue());
    }
    if (end() >= REMEMBERED) {
      throw new IllegalStateException("the grammar tells too many characters apart");
    }
  }

  /** What stands for each UTF-16 unit of a text, at its place. */
  byte[] standIns() {
    return standIns;
  }

  /** What stands for the end of a text. */
  int end() {
    return classes.size();
  }

  /** Makes the steps of the automaton take stand-ins. */
  void putInto(ATN automaton) {
    for (ATNState state : automaton.states) {
      for (int i = 0; i < state.getNumberOfTransitions(); i++) {
        Transition step = state.transition(i);
        IntervalSet label = step.label();
        if (label != null) {
          state.setTransition(i, new SetTransition(step.target, taken(step, label)));
        }
      }
    }
  }

  /** What the steps that read a character take, or leave out. */
  private static Set<IntervalSet> labels(ATN automaton) {
    Set<IntervalSet> labels = new LinkedHashSet<>();
    for (ATNState state : automaton.states) {
      for (int i = 0; i < state.getNumberOfTransitions(); i++) {
        IntervalSet label = state.transition(i).label();
        if (label != null) {
          labels.add(label);
        }
      }
    }
    return labels;
  }

  /** Where a stretch of characters begins that every step treats alike. */
  private static int[] starts(Set<IntervalSet> labels) {
    TreeSet<Integer> starts = new TreeSet<>();
    starts.add(0);
    for (IntervalSet label : labels) {
      for (Interval stretch : label.getIntervals()) {
        starts.add(stretch.a);
        starts.add(stretch.b + 1);
      }
    }
    int[] found = new int[starts.size()];
    int count = 0;
    for (int start : starts) {
      if (start >= 0 && start < CHARACTERS) {
        found[count++] = start;
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** For each stretch the numbers of the labels that have it. */
  private static BitSet[] takenBy(Set<IntervalSet> labels, int[] starts) {
    BitSet[] takenBy = new BitSet[starts.length];
    for (int i = 0; i < starts.length; i++) {
      takenBy[i] = new BitSet(labels.size());
    }
    int number = 0;
    for (IntervalSet label : labels) {
      for (Interval stretch : label.getIntervals()) {
        int first = Arrays.binarySearch(starts, Math.max(stretch.a, 0));
        for (int i = first; i < starts.length && starts[i] <= stretch.b; i++) {
          takenBy[i].set(number);
        }
      }
      number++;
    }
    return takenBy;
  }

  /** The stand-ins of what a step takes, that of the end of the text among them. */
  private IntervalSet taken(Transition step, IntervalSet label) {
    IntervalSet taken = new IntervalSet();
    if (label.contains(Token.EOF)) {
      taken.add(end());
    }
    if (step instanceof AtomTransition atom && atom.label != Token.EOF) {
      // A character that a step names is a class of its own.
      taken.add(standIns[atom.label]);
    } else {
      for (int number = 0; number < classes.size(); number++) {
        if (step.matches(classes.get(number), Lexer.MIN_CHAR_VALUE, Lexer.MAX_CHAR_VALUE)) {
          taken.add(number);
        }
      }
    }
    return taken;
  }
}
