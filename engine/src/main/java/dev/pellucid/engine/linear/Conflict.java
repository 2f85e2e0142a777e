package dev.pellucid.engine.linear;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Bounds of a program that contradict each other: nothing keeps all of them, and without any one of
 * them the rest can be kept. Bounds are dropped one after the other, in an order that the caller
 * says, as long as what is left still contradicts itself; so those late in the order remain where
 * there is a choice. A bound that has no part in a contradiction at hand is dropped without
 * solving.
 *
 * <p>Where amounts alone contradict each other, it is told of amounts alone, whatever is to be
 * chosen besides. Where only the choices make it so, the bounds of whole multiples are no members:
 * they stay, for there would be no end of multiples to try.
 *
 * @param members in the order of the program
 */
public record Conflict(List<Member> members) {
  public Conflict {
    members = List.copyOf(members);
  }

  /** Empty where it is not shown that nothing keeps all bounds. */
  public static Optional<Conflict> of(LinearProgram program, Solver solver) {
    return of(program, solver, Member.of(program));
  }

  /**
   * The same with an order of dropping.
   *
   * @param order in which members are dropped; those that are not in it come last, in the order of
   *     the program
   */
  public static Optional<Conflict> of(LinearProgram program, Solver solver, List<Member> order) {
    Optional<Conflict> ofAmounts = new Search(program.relaxed(), solver).run(order);
    return ofAmounts.isEmpty() && program.isInteger()
        ? new Search(program, solver).run(order)
        : ofAmounts;
  }

  private static final class Search {
    private final Solver solver;
    private final List<Member> all;
    private final LinearProgram whole;
    private LinearProgram left;

    /**
     * Members of a contradiction of what is left; a bound that is not of it can be dropped. Where
     * choices contradict, these are all.
     */
    private Set<Member> part = Set.of();

    Search(LinearProgram program, Solver solver) {
      this.solver = solver;
      this.all = Member.of(program);
      this.whole = program;
      this.left = program;
    }

    Optional<Conflict> run(List<Member> order) {
      if (!contradicts(left)) {
        return Optional.empty();
      }
      List<Member> members = new ArrayList<>(all);
      members.removeIf(this::isOfMultiples);
      Set<Member> dropped = new HashSet<>();
      order.stream().filter(members::contains).forEach(member -> drop(member, dropped));
      members.forEach(member -> drop(member, dropped));
      members.removeAll(dropped);
      return Optional.of(new Conflict(members));
    }

    private boolean isOfMultiples(Member member) {
      return member.isVariable() && whole.variables().get(member.index()).step() > 0;
    }

    private void drop(Member member, Set<Member> dropped) {
      if (dropped.contains(member)) {
        return;
      }
      LinearProgram without = member.droppedFrom(left);
      if (!part.contains(member) || contradicts(without)) {
        left = without;
        dropped.add(member);
      }
    }

    /** Looks for a contradiction, and remembers its members where there is one. */
    private boolean contradicts(LinearProgram program) {
      Optional<Set<Member>> found =
          program.isInteger()
              ? Optional.of(Set.copyOf(all)).filter(any -> solver.solve(program).isInfeasible())
              : crossed(program).or(() -> ofAmounts(program));
      part = found.orElse(part);
      return found.isPresent();
    }

    /** A pair of which the low bound is above the high one. */
    private Optional<Set<Member>> crossed(LinearProgram program) {
      for (Member member : all) {
        Member other = member.other();
        if (member.side().isLow() && member.bound(program) > other.bound(program)) {
          return Optional.of(new HashSet<>(List.of(member, other)));
        }
      }
      return Optional.empty();
    }

    /** A contradiction of amounts. */
    private Optional<Set<Member>> ofAmounts(LinearProgram program) {
      return solver
          .solve(Elastic.of(program))
          .optimum()
          .map(optimum -> Contradiction.of(program, optimum.prices()))
          .filter(Contradiction::holds)
          .map(this::members);
    }

    private Set<Member> members(Contradiction contradiction) {
      Set<Member> members = new HashSet<>();
      for (int i = 0; i < whole.constraints().size(); i++) {
        double weight = contradiction.weight(i);
        if (weight != 0) {
          members.add(Member.constraint(i, weight > 0 ? Side.LOW : Side.HIGH));
        }
      }
      for (int j = 0; j < whole.variables().size(); j++) {
        double weight = contradiction.boundWeight(j);
        if (weight != 0) {
          members.add(Member.variable(j, weight > 0 ? Side.LOW : Side.HIGH));
        }
      }
      return members;
    }
  }
}
