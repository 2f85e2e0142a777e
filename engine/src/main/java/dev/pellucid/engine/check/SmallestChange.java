package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.optimise.Part;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.text.TextEdit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The change of fewest points with which a recipe keeps the limits that it misses, as {@link
 * ManyLines} finds and proves it: for whoever asks for it and not for a help beside a finding.
 */
public final class SmallestChange {
  private final RuleContext recipe;
  private final Freedom freedom;
  private final List<Limit> targets;

  private SmallestChange(RuleContext recipe, List<Limit> targets, Freedom freedom) {
    this.recipe = recipe;
    this.freedom = freedom;
    this.targets = targets;
  }

  /** More, or where negative less, of a line, in points. */
  public record Step(Line line, BigDecimal points) {}

  /**
   * What came of it.
   *
   * @param steps of each line that changes, the rest too; none where nothing was found and proven
   * @param edits of the recipe
   * @param tried the recipe with them
   * @param against where it is shown that no shares do: the parts that stand against each other
   * @param brings what the nearest that was tried would bring with it, in words; may be empty
   */
  public record Outcome(
      List<Step> steps,
      List<TextEdit> edits,
      Optional<RuleContext> tried,
      List<Part> against,
      String brings) {
    public Outcome {
      steps = List.copyOf(steps);
      edits = List.copyOf(edits);
      against = List.copyOf(against);
    }
  }

  /**
   * Looks for it, in a recipe that can be tried again.
   *
   * @param targets limits that are to be met, of those that are {@link #missed}
   */
  public static Outcome of(RuleContext recipe, List<Limit> targets, Freedom freedom) {
    return new SmallestChange(recipe, targets, freedom).outcome();
  }

  /** Limits that a recipe breaks, and law that it keeps in fewer batches than the folder asks. */
  public static List<Limit> missed(RuleContext recipe) {
    List<Limit> targets = new ArrayList<>(Fix.broken(recipe));
    for (LimitStatus status : recipe.limits()) {
      if (isTooNear(recipe, status)) {
        targets.add(status.limit());
      }
    }
    return targets;
  }

  /** Whether a limit of the law is kept, and in fewer batches than the folder asks. */
  static boolean isTooNear(RuleContext recipe, LimitStatus status) {
    Optional<LawMargin> margin = LawMargin.of(status);
    return margin.isPresent()
        && margin.get().isNear()
        && !margin.get().isEnough(recipe.tables().settings().lawKeptIn());
  }

  private Outcome outcome() {
    ManyLines many = new ManyLines(recipe, targets, freedom);
    Optional<Change> change = many.change();
    if (change.isEmpty() && freedom.decimals().isPresent()) {
      change = new ManyLines(recipe, targets, freedom.finer()).change();
    }
    return change.isPresent()
        ? found(change.get())
        : new Outcome(List.of(), List.of(), Optional.empty(), many.contradicting(), many.against());
  }

  private Outcome found(Change change) {
    List<Step> steps = new ArrayList<>();
    for (Change.Moved one : change.moved()) {
      steps.add(new Step(one.line(), one.points()));
    }
    List<TextEdit> edits = change.edits();
    return new Outcome(steps, edits, recipe.fixing().again().with(edits), List.of(), "");
  }
}
