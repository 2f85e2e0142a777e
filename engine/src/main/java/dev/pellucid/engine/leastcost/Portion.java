package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.leastcost.Advice.Change;
import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Reasons.LimitPrice;
import dev.pellucid.engine.leastcost.Reasons.SharePrice;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One feed of several that share out what is short: its recipe as a task, and the cheapest recipe
 * that takes no more than its portion, as an edit of its text that is proven like that of least
 * cost.
 */
public final class Portion {
  private final Solver solver;
  private final FeedComputer computer;

  public Portion(Solver solver, FeedComputer computer) {
    this.solver = solver;
    this.computer = computer;
  }

  /**
   * A recipe as a task, or why it cannot be one.
   *
   * @param why in a sentence with what to do; empty where there is a task
   */
  public record Posing(Optional<Posed> posed, String why) {}

  /** A recipe of which no line is free is a task too: it takes what it takes. */
  public Posing posed(RuleContext recipe, Wishes wishes, Held held) {
    Optional<Posed> posed = Posed.of(recipe, wishes, computer, held);
    Optional<String> why =
        posed.isEmpty()
            ? Optional.of("it has no figures; put right what check says")
            : RestStays.why(posed.get()).or(() -> Unready.prices(posed.get()));
    return why.isPresent()
        ? new Posing(Optional.empty(), why.get())
        : new Posing(posed.map(Portion::moving), "");
  }

  /** With a line that stays where it is, where none is free, so that there is something to find. */
  private static Posed moving(Posed posed) {
    return posed.task().free().isEmpty() ? still(posed) : posed;
  }

  /** The same recipe, which takes what it takes. */
  public static Posed still(Posed posed) {
    Task task = posed.task();
    Free still = new Free(task.feed().recipe().lines().get(0), 0, 0, false, 0).fixed();
    return with(posed, task.with(List.of(still)));
  }

  private static Posed with(Posed posed, Task task) {
    return new Posed(posed.recipe(), posed.wishes(), task, posed.held(), posed.holding());
  }

  /** The smallest step of its shares as they are written, in points. */
  public static double step(Posed posed) {
    return Math.pow(10, -ShareEdits.decimals(posed.task().free()));
  }

  /**
   * A recipe within its portion.
   *
   * @param tried the recipe as it then is; empty where nothing is proven
   * @param change of its text; none where it stays as it is
   * @param lines every line, now and then
   * @param limits what keeping each limit costs that binds, the dearest first
   * @param bounds the same of lines that stand at a bound
   * @param labelAnew what has to be printed anew on its label
   * @param against why nothing is proven; empty where it is
   */
  public record Settled(
      Optional<RuleContext> tried,
      Change change,
      List<LineMove> lines,
      List<LimitPrice> limits,
      List<SharePrice> bounds,
      List<String> labelAnew,
      String against) {
    public Settled {
      lines = List.copyOf(lines);
      limits = List.copyOf(limits);
      bounds = List.copyOf(bounds);
      labelAnew = List.copyOf(labelAnew);
    }

    public boolean isProven() {
      return against.isEmpty();
    }

    /** As it then is. */
    public ComputedFeed feed() {
      return tried.flatMap(RuleContext::feed).orElseThrow();
    }
  }

  /** The cheapest recipe that takes no more than these. */
  public Settled within(Posed posed, List<Requirement.OfStock> portions) {
    List<Tightened> kept = new ArrayList<>(posed.task().kept());
    portions.forEach(one -> kept.add(new Tightened(one, 0)));
    Posed own = with(posed, posed.task().keeping(kept));
    return Unready.canMove(own.task().free()) ? moved(own) : stays(own);
  }

  private static Settled stays(Posed own) {
    boolean keeps = Today.keepsAll(own);
    return new Settled(
        keeps ? Optional.of(own.recipe()) : Optional.empty(),
        Advising.change(own.recipe(), List.of()),
        Advising.lines(own, written(own)),
        List.of(),
        List.of(),
        List.of(),
        keeps ? "" : "no two of its lines are free to change, and as it stands it takes too much");
  }

  private static double[] written(Posed own) {
    double[] shares = new double[own.task().free().size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = own.task().free().get(i).written();
    }
    return shares;
  }

  private Settled moved(Posed own) {
    Cheapest.Result result = new Cheapest(solver).of(own);
    return result
        .answer()
        .byKind(
            found -> {
              boolean proven = result.isProven();
              Reasons reasons =
                  proven
                      ? new Explaining(solver, computer)
                          .of(own, found, result.tried().flatMap(RuleContext::feed).orElseThrow())
                      : Reasons.NONE;
              return settled(own, result, reasons);
            },
            unmet -> settled(own, result, Reasons.NONE),
            undecided -> settled(own, result, Reasons.NONE));
  }

  private static Settled settled(Posed own, Cheapest.Result result, Reasons reasons) {
    boolean proven = result.isProven();
    List<TextEdit> edits = proven ? result.edits() : List.of();
    double[] shares = proven ? result.written() : written(own);
    return new Settled(
        proven ? result.tried() : Optional.empty(),
        Advising.change(own.recipe(), edits),
        Advising.lines(own, shares),
        reasons.limits().stream().filter(one -> !isStock(one.of())).toList(),
        reasons.shares(),
        proven ? LabelAnew.of(own.recipe(), result.tried().orElseThrow()) : List.of(),
        proven ? "" : result.against().orElse("nothing could be proven"));
  }

  private static boolean isStock(Requirement one) {
    return one.byKind(
        limit -> false,
        practice -> false,
        cap -> false,
        label -> false,
        order -> false,
        stock -> true);
  }
}
