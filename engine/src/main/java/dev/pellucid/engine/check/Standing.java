package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a recipe stands with one limit, once every rule has looked at it.
 *
 * @param finding what was said of it, where it is broken
 */
public record Standing(Verdict verdict, State state, Optional<Finding> finding) {

  /** What came of judging a limit. */
  public enum State {
    /** Kept, under its waiver where there is one. */
    KEPT,
    /** An error says that it is broken. */
    BROKEN,
    /** It cannot be judged, and what is not told may break it. */
    NOT_JUDGED,
    /** Kept as far as it is told, and nothing bounds what is not told. */
    KEPT_AS_TOLD
  }

  /**
   * The standing of each limit that was judged, in their order.
   *
   * @param said all that the rules said of the recipe
   */
  public static List<Standing> of(Inspection recipe, List<Finding> said) {
    return recipe.verdicts().stream().map(verdict -> of(verdict, said)).toList();
  }

  /** The same of a recipe that no rule has looked at yet. */
  public static List<Standing> ofLimits(Inspection recipe) {
    List<Finding> said = new ArrayList<>();
    Rules.LIMITS.forEach(rule -> rule.look(recipe, said::add));
    return of(recipe, said);
  }

  private static Standing of(Verdict verdict, List<Finding> said) {
    Optional<Finding> broken =
        said.stream()
            .filter(finding -> finding.severity() == Severity.ERROR)
            .filter(finding -> names(finding, verdict.limit()))
            .findFirst();
    return new Standing(verdict, state(verdict, broken.isPresent()), broken);
  }

  private static State state(Verdict verdict, boolean broken) {
    if (broken) {
      return State.BROKEN;
    }
    if (!verdict.keeps()) {
      return State.NOT_JUDGED;
    }
    boolean open = verdict.reading().unbounded() && UnknownContent.mayBreak(verdict.limit());
    return open ? State.KEPT_AS_TOLD : State.KEPT;
  }

  /** Whether a finding is about this very limit: its subject, its side, and where it is written. */
  static boolean names(Finding finding, Limit limit) {
    About.Side side = limit.side() == Bound.Side.MIN ? About.Side.MIN : About.Side.MAX;
    return finding.about().side() == side
        && finding.about().subject().equals(limit.subject().text())
        && finding.related().stream().anyMatch(place -> place.span().equals(limit.origin().span()));
  }

  /**
   * What the limit is called in this recipe, without its figure, so that it keeps its name when the
   * figure changes: {@code crude-protein min in 95 % of batches (catfish-grower)}.
   */
  public String name() {
    Limit limit = verdict.limit();
    return limit.subject().text()
        + " "
        + limit.side().word()
        + new LimitWords(limit).terms()
        + " ("
        + limit.origin().name()
        + ")";
  }
}
