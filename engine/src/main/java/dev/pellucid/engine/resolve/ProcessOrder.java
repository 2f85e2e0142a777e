package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
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

  /** What makes the mix that goes to the die. */
  private static final Set<Step> MIXING =
      EnumSet.of(Step.BLEND, Step.ADD_LIQUID, Step.ADD_WATER, Step.CONDITION);

  private static final Set<Step> SHAPING = EnumSet.of(Step.PELLET, Step.EXTRUDE);

  private final List<Pass> passes;
  private final List<Pair> wrong = new ArrayList<>();

  /** The places of two passes that cannot follow each other so. */
  private record Pair(int earlier, int later) {
    boolean has(int place) {
      return earlier == place || later == place;
    }
  }

  private ProcessOrder(List<Pass> passes) {
    this.passes = passes;
    for (int i = 0; i < passes.size(); i++) {
      for (int j = i + 1; j < passes.size(); j++) {
        if (cannotPrecede(passes.get(i).step(), passes.get(j).step())) {
          wrong.add(new Pair(i, j));
        }
      }
    }
  }

  /** A finding for each step that cannot stand where it stands. */
  static List<Finding> findings(List<Pass> passes) {
    return new ProcessOrder(passes).told();
  }

  private static boolean cannotPrecede(Step earlier, Step later) {
    return switch (earlier) {
      case PACK, STORE -> later != Step.PACK && later != Step.STORE;
      case COAT ->
          later == Step.COAT
              || later == Step.DRY
              || SHAPING.contains(later)
              || MIXING.contains(later);
      case PELLET, EXTRUDE -> MIXING.contains(later);
      case GRIND, BLEND, ADD_LIQUID, ADD_WATER, CONDITION, DRY, COOL, SIEVE -> false;
    };
  }

  private List<Finding> told() {
    List<Finding> findings = new ArrayList<>();
    while (!wrong.isEmpty()) {
      int worst = worst();
      findings.add(finding(worst));
      wrong.removeIf(pair -> pair.has(worst));
    }
    return findings;
  }

  /** Of several that are wrong to as many others the last one written. */
  private int worst() {
    int worst = 0;
    long most = 0;
    for (int i = 0; i < passes.size(); i++) {
      long count = pairs(i).size();
      if (count >= most) {
        worst = i;
        most = count;
      }
    }
    return worst;
  }

  private List<Pair> pairs(int place) {
    return wrong.stream().filter(pair -> pair.has(place)).toList();
  }

  private Finding finding(int place) {
    List<Pair> pairs = pairs(place);
    OptionalInt tooEarlyFor =
        pairs.stream().filter(pair -> pair.earlier() == place).mapToInt(Pair::later).max();
    Pass pass = passes.get(place);
    Pass other = passes.get(tooEarlyFor.orElseGet(() -> pairs.get(0).earlier()));
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
          "the coat goes on after mixer, die and dryer, at once; a cooler may follow it, and what is"
              + " to be mixed, pressed or dried stands in mix";
      default ->
          "what comes out of the die is pellets, and they are not blended, wetted or steamed any"
              + " more";
    };
  }
}
