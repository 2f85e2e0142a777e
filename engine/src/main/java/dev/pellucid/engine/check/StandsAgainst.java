package dev.pellucid.engine.check;

import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Contradicting;
import dev.pellucid.engine.optimise.Part;
import dev.pellucid.engine.optimise.Reaching;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Choices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What stands against a limit in a task that nothing meets, in words. */
record StandsAgainst(Task task) {
  /** A contradiction of more parts than these is not told. */
  private static final int TOLD = 4;

  /**
   * What stands against a limit where no shares within their bounds meet it and keep all else;
   * empty where that is not shown, or is too much to read.
   */
  Optional<String> words(Limit limit) {
    Optional<List<Part>> parts =
        Contradicting.of(task, Solver.standard(), Part::ease).filter(it -> it.size() <= TOLD + 1);
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    List<String> words = new ArrayList<>();
    boolean own = false;
    for (Part part : parts.get()) {
      boolean isLimit = isOf(part, limit);
      own |= isLimit;
      if (!isLimit) {
        words.add(PartWords.of(part));
      }
    }
    if (own && words.isEmpty()) {
      return alone(limit);
    }
    return own
        ? Optional.of(
            "against it " + (words.size() == 1 ? "stands " : "stand ") + Choices.all(words))
        : Optional.empty();
  }

  /** What the lines reach by themselves, whatever else is asked. */
  private Optional<String> alone(Limit limit) {
    Requirement asked = Requirement.OfLimit.judged(limit);
    OptionalDouble edge = new Reaching(task.keeping(List.of()), Solver.standard()).nearest(asked);
    if (edge.isEmpty()) {
      return Optional.empty();
    }
    LimitWords words = new LimitWords(limit);
    return Optional.of(
        "the lines of this recipe, within their bounds, bring it to "
            + words.besideBound(edge.getAsDouble())
            + words.unit()
            + (limit.side() == Bound.Side.MIN ? " at most" : " at least"));
  }

  private static boolean isOf(Part part, Limit limit) {
    return part.byKind(
        kept ->
            kept.of()
                .of()
                .byKind(
                    one -> one.limit().equals(limit),
                    practice -> false,
                    cap -> false,
                    label -> false,
                    order -> false,
                    stock -> false),
        least -> false,
        most -> false,
        moves -> false);
  }
}
