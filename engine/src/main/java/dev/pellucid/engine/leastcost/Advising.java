package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.leastcost.Advice.AtBound;
import dev.pellucid.engine.leastcost.Advice.Change;
import dev.pellucid.engine.leastcost.Advice.Costs;
import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Advice.Standing;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From one recipe to what a person is told: it is posed as a task, its shares are found, written
 * and proven, and the reasons are asked of the answer.
 */
public final class Advising {
  private static final double AT = 1e-6;
  private static final double DIGITS = 1e9;

  private final Solver solver;
  private final FeedComputer computer;
  private final Held held;

  /**
   * @param computer of the folder
   * @param findings what is wrong with the data of the folder, whatever recipes are there
   */
  public Advising(Solver solver, FeedComputer computer, List<Finding> findings) {
    this(solver, computer, findings, Optional.empty());
  }

  /**
   * @param store of which a batch may take no more than there is; none where that is not asked
   */
  public Advising(
      Solver solver, FeedComputer computer, List<Finding> findings, Optional<InStore> store) {
    this.solver = solver;
    this.computer = computer;
    this.held = new Held(computer, findings, store);
  }

  /**
   * What a person is told of a recipe.
   *
   * @param recipe read and judged
   */
  public Advice of(RuleContext recipe, Wishes wishes) {
    Optional<Posed> posed = Posed.of(recipe, wishes, computer, held);
    if (posed.isEmpty()) {
      return nothing(recipe, Standing.NOT_ASKED, "it has no figures; put right what check says");
    }
    Optional<String> unready = RestStays.why(posed.get()).or(() -> Unready.why(posed.get()));
    return unready.isPresent()
        ? nothing(recipe, Standing.NOT_ASKED, unready.get())
        : of(posed.get());
  }

  private Advice of(Posed posed) {
    Cheapest.Result result = new Cheapest(solver).of(posed);
    return result
        .answer()
        .byKind(
            found -> told(posed, found, result),
            unmet -> unmet(posed),
            undecided -> nothing(posed.recipe(), Standing.NOT_PROVEN, undecided.why()));
  }

  private Advice told(Posed posed, Answer.Found found, Cheapest.Result result) {
    RuleContext recipe = posed.recipe();
    if (!result.isProven()) {
      return nothing(recipe, Standing.NOT_PROVEN, result.against().orElse(""));
    }
    Costs costs = Costing.of(posed, found, result, made(recipe));
    Standing standing = standing(posed, costs, result);
    boolean offered = standing == Standing.CHEAPER || standing == Standing.KEEPS_AGAIN;
    return new Advice(
        recipe.recipe().code(),
        recipe.recipe().title(),
        recipe.recipe().source().path(),
        standing,
        "",
        Optional.of(costs),
        lines(posed, result.written()),
        offered ? new Ladder(solver, posed, found).rungs(result) : List.of(),
        new Explaining(solver, computer)
            .of(posed, found, result.tried().flatMap(RuleContext::feed).orElse(found.feed())),
        Caring.of(posed, found, result.tried().orElseThrow()),
        offered ? change(recipe, result.edits()) : unchanged(recipe),
        Optional.empty());
  }

  private static Standing standing(Posed posed, Costs costs, Cheapest.Result result) {
    if (result.edits().isEmpty()) {
      return Standing.CHEAPEST;
    }
    if (!Today.keepsAll(posed)) {
      return Standing.KEEPS_AGAIN;
    }
    if (!Costing.isLess(costs.then(), costs.now())) {
      return Standing.CHEAPEST;
    }
    return costs.savesPerTonne() < posed.wishes().worth() ? Standing.NOT_WORTH : Standing.CHEAPER;
  }

  private Advice unmet(Posed posed) {
    Optional<Contradictions.Shown> shown = Contradictions.of(posed, solver, computer);
    String why = new Otherwise(posed, solver, computer).words(shown);
    return nothing(posed.recipe(), Standing.UNMET, why)
        .unmet(shown.map(Contradictions.Shown::contradiction));
  }

  /** Tonnes in a month, where the folder tells. */
  private static OptionalDouble made(RuleContext recipe) {
    return recipe.tables().settings().tonnesPerMonth(recipe.recipe().code());
  }

  private static Advice nothing(RuleContext recipe, Standing standing, String why) {
    return new Advice(
        recipe.recipe().code(),
        recipe.recipe().title(),
        recipe.recipe().source().path(),
        standing,
        why,
        recipe
            .feed()
            .map(
                feed ->
                    new Costs(
                        feed.costPerKg(),
                        feed.costPerKg(),
                        feed.costPerKg(),
                        made(recipe),
                        Optional.empty())),
        List.of(),
        List.of(),
        Reasons.NONE,
        Care.NONE,
        unchanged(recipe),
        Optional.empty());
  }

  /** Every line, in the order of the file; the rest with what the others leave it. */
  static List<LineMove> lines(Posed posed, double[] shares) {
    List<LineMove> moves = new ArrayList<>();
    int written = posed.recipe().recipe().lines().size();
    for (Line line : posed.task().feed().recipe().lines()) {
      double now = line.designed().kgPer100();
      Optional<LineMove> free = Optional.empty();
      for (int i = 0; i < shares.length && free.isEmpty(); i++) {
        Free one = posed.task().free().get(i);
        if (one.line().index() == line.index()) {
          free = Optional.of(move(one, written(shares[i]), line.index() >= written));
        }
      }
      moves.add(
          free.orElseGet(
              () ->
                  new LineMove(
                      line.material().name(),
                      now,
                      now,
                      OptionalDouble.empty(),
                      OptionalDouble.empty(),
                      AtBound.BETWEEN,
                      false)));
    }
    return moves;
  }

  /** Without the noise of sums: no share is written with so many decimals. */
  private static double written(double share) {
    return Math.rint(share * DIGITS) / DIGITS;
  }

  private static LineMove move(Free free, double share, boolean comesIn) {
    AtBound bound =
        share <= free.low() + AT
            ? AtBound.LOWEST
            : share >= free.high() - AT ? AtBound.HIGHEST : AtBound.BETWEEN;
    return new LineMove(
        free.line().material().name(),
        free.written(),
        share,
        OptionalDouble.of(free.low()),
        OptionalDouble.of(free.high()),
        bound,
        comesIn);
  }

  private static Change unchanged(RuleContext recipe) {
    SourceFile source = recipe.recipe().source();
    return new Change(List.of(), source, source.text());
  }

  static Change change(RuleContext recipe, List<TextEdit> edits) {
    SourceFile source = recipe.recipe().source();
    List<TextEdit> lastFirst = new ArrayList<>(edits);
    lastFirst.sort(Comparator.comparingInt((TextEdit edit) -> edit.span().start()).reversed());
    String after = source.text();
    for (TextEdit edit : lastFirst) {
      after =
          after.substring(0, edit.span().start())
              + edit.replacement()
              + after.substring(edit.span().end());
    }
    return new Change(edits, source, after);
  }
}
