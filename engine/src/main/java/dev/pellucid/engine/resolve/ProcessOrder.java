package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Whether the order of the steps can be meant. Steps are computed, printed and done in the order in
 * which they are written, and much is practice somewhere: grinding after blending, a coat put on
 * warm feed before the cooler. What no mill can do is an error.
 *
 * <p>One step in a wrong place stands wrongly to many others. It is told once: the step that is
 * wrong to the most others is the one that stands in the wrong place.
 */
final class ProcessOrder {
  static final Code CODE = new Code("process-order");

  /** So many steps out of place are told at once; the others follow when these are right. */
  private static final int MOST = 20;

  private final List<Pass> passes;

  /** For each pass, to how many others it stands wrongly. */
  private final int[] wrong;

  private ProcessOrder(List<Pass> passes) {
    this.passes = passes;
    this.wrong = new int[passes.size()];
    Map<Step, Integer> before = new EnumMap<>(Step.class);
    Map<Step, Integer> after = new EnumMap<>(Step.class);
    passes.forEach(pass -> after.merge(pass.step(), 1, Integer::sum));
    for (int place = 0; place < wrong.length; place++) {
      int i = place;
      Step step = passes.get(i).step();
      after.merge(step, -1, Integer::sum);
      before.forEach((earlier, count) -> count(i, cannotPrecede(earlier, step), count));
      after.forEach((later, count) -> count(i, cannotPrecede(step, later), count));
      before.merge(step, 1, Integer::sum);
    }
  }

  private void count(int place, boolean isWrong, int count) {
    wrong[place] += isWrong ? count : 0;
  }

  /** A finding for each step that cannot stand where it stands. */
  static List<Finding> findings(List<Pass> passes) {
    return canBeMeant(passes) ? List.of() : new ProcessOrder(passes).told();
  }

  private static boolean canBeMeant(List<Pass> passes) {
    Set<Step> before = EnumSet.noneOf(Step.class);
    for (Pass pass : passes) {
      for (Step earlier : before) {
        if (cannotPrecede(earlier, pass.step())) {
          return false;
        }
      }
      before.add(pass.step());
    }
    return true;
  }

  /** Whether two passes cannot follow each other as they do. */
  private boolean isWrong(int one, int other) {
    int earlier = Math.min(one, other);
    int later = Math.max(one, other);
    return one != other && cannotPrecede(passes.get(earlier).step(), passes.get(later).step());
  }

  private static boolean cannotPrecede(Step earlier, Step later) {
    return switch (earlier) {
      case PACK, STORE -> !later.ends();
      case COAT -> later == Step.COAT || later == Step.DRY || later.shapes() || later.mixes();
      case PELLET, EXTRUDE -> later.mixes();
      case GRIND, BLEND, ADD_LIQUID, ADD_WATER, CONDITION, DRY, COOL, SIEVE -> false;
    };
  }

  private List<Finding> told() {
    List<Finding> findings = new ArrayList<>();
    BitSet left = new BitSet();
    left.set(0, wrong.length);
    for (int worst = worst(left); worst >= 0 && findings.size() < MOST; worst = worst(left)) {
      findings.add(finding(worst, left));
      left.clear(worst);
      for (int other = 0; other < wrong.length; other++) {
        wrong[other] -= isWrong(worst, other) ? 1 : 0;
      }
    }
    return findings;
  }

  /** Of several that are wrong to as many others the last one written; -1 where none is wrong. */
  private int worst(BitSet left) {
    int worst = -1;
    int most = 1;
    for (int i = left.nextSetBit(0); i >= 0; i = left.nextSetBit(i + 1)) {
      if (wrong[i] >= most) {
        worst = i;
        most = wrong[i];
      }
    }
    return worst;
  }

  /**
   * @param left those that no finding speaks of yet
   */
  private Finding finding(int place, BitSet left) {
    int[] others = left.stream().filter(other -> isWrong(place, other)).toArray();
    OptionalInt tooEarlyFor = Arrays.stream(others).filter(other -> other > place).max();
    Pass pass = passes.get(place);
    Pass other = passes.get(tooEarlyFor.orElse(others[0]));
    String word = pass.step().word();
    String beside = other.step().word();
    boolean twice = pass.step() == other.step();
    String side = tooEarlyFor.isPresent() ? "before " : "after ";
    String move = tooEarlyFor.isPresent() ? "below " : "above ";
    Step first = tooEarlyFor.isPresent() ? pass.step() : other.step();
    return Finding.error(
            CODE,
            at(pass),
            twice
                ? word + " stands at two places, and it goes on once"
                : word + " stands " + side + beside + ", and steps are done in the order written")
        .seeing(beside + " written", at(other))
        .noting(why(first))
        .helping(
            twice
                ? "keep the lines of " + word + " together at one place"
                : "move the lines of " + word + " " + move + "those of " + beside);
  }

  private static Span at(Pass pass) {
    return pass.settings().isEmpty()
        ? pass.span()
        : pass.settings().get(0).written().stepAsWritten().span();
  }

  private static String why(Step first) {
    return switch (first) {
      case PACK, STORE -> "what is in the bag or in the store goes through no other step";
      case COAT ->
          "the coat goes on after mixer, die and dryer, at once; a cooler may follow it, and what"
              + " is to be mixed, pressed or dried stands in mix";
      default ->
          "what comes out of the die is pellets, and they are not blended, wetted or steamed any"
              + " more";
    };
  }
}
