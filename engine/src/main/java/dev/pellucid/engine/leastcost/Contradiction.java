package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * What cannot be met together: without any one of these the rest can.
 *
 * @param members in the order in which they would be loosened last to first: what is never offered
 *     stands first
 * @param reach what these ingredients reach of the figure that is in the way
 * @param loosenings what may be loosened, in the order in which it is offered; never law, a ban, a
 *     cap for safety or a need of the fish
 */
public record Contradiction(
    List<Member> members, Optional<Reach> reach, List<Loosening> loosenings) {
  public Contradiction {
    members = List.copyOf(members);
    loosenings = List.copyOf(loosenings);
  }

  /**
   * One of them.
   *
   * @param of what is to be kept, where it is such; else a line is
   * @param line whose bound it is
   * @param side of the line
   * @param words as a person reads it: {@code crude-protein at least 35 %}
   * @param place where it is written
   */
  public record Member(
      Optional<Requirement> of,
      Optional<Free> line,
      Bound.Side side,
      String words,
      Optional<Span> place) {}

  /** The least and the most that is reached while all else is kept, in the unit. */
  public record Reach(String name, Unit unit, double least, double most, double asked) {}

  /**
   * Something that a person may loosen.
   *
   * @param words what, and how far: {@code within of fish-meal-65 up to 21.4 %}
   */
  public record Loosening(String words, Optional<Span> place) {}
}
