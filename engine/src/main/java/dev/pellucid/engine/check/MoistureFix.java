package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.Range;
import dev.pellucid.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The moisture that a dryer or cooler must aim at, so that a limit of moisture itself is met; what
 * is taken beside the aim moves with it. It is tried on the recipe before it is offered.
 */
final class MoistureFix {
  private static final int TRIES = 6;

  /** In tenths of a point. */
  private static final int FURTHEST = 100;

  private MoistureFix() {}

  /** Whether a limit is of the water in the feed, and of nothing else. */
  static boolean isOfMoisture(ComputedFeed feed, Verdict broken) {
    var addends = broken.limit().subject().addends();
    return addends.size() == 1 && feed.nutrients().isMoisture(addends.get(0).index());
  }

  /**
   * What was found.
   *
   * @param helps whether the words are a help; else they say what stands in its way
   */
  record Found(String words, boolean helps) {}

  /** An aim that meets every broken limit, one of moisture among them, which moves all others. */
  static Optional<Fixing.Cure> cure(RuleContext recipe) {
    List<Limit> all = Fix.broken(recipe);
    ComputedFeed feed = recipe.feed().orElseThrow();
    Optional<Setting> aim = MoistureTarget.of(feed);
    for (LimitStatus status : recipe.limits()) {
      boolean ofMoisture = status.state().isBroken() && isOfMoisture(feed, status.verdict());
      if (ofMoisture && aim.isPresent()) {
        return cure(recipe, all, aim.get(), status.limit().side() == Bound.Side.MIN ? 0.1 : -0.1);
      }
    }
    return Optional.empty();
  }

  private static Optional<Fixing.Cure> cure(
      RuleContext recipe, List<Limit> all, Setting aim, double step) {
    Proof proof = new Proof(recipe, all);
    for (int steps = 1; steps <= FURTHEST; steps++) {
      Optional<RuleContext> tried = with(recipe, aim, steps * step);
      if (tried.isEmpty() || tried.get().feed().isEmpty()) {
        return Optional.empty();
      }
      if (proof.holds(tried)) {
        return Optional.of(
            new Fixing.Cure(told(aim, steps * step) + Change.meeting(all.size()), tried.get()));
      }
    }
    return Optional.empty();
  }

  /** Empty where the limit is of something else, or no aim would meet it. */
  static Optional<Found> found(RuleContext recipe, ComputedFeed feed, Verdict broken) {
    Optional<Setting> aim = MoistureTarget.of(feed);
    if (aim.isEmpty() || !isOfMoisture(feed, broken)) {
      return Optional.empty();
    }
    Proof proof = new Proof(recipe, List.of(broken.limit()));
    double points = 0;
    double room = broken.room();
    boolean min = broken.limit().side() == Bound.Side.MIN;
    for (int i = 0; i < TRIES; i++) {
      double step = Math.max(0.1, Math.ceil(-room * 1000 - 1e-6) / 10);
      points += min ? step : -step;
      Optional<RuleContext> tried = with(recipe, aim.get(), points);
      if (tried.isEmpty() || tried.get().feed().isEmpty()) {
        return Optional.empty();
      }
      Verdict then = Judge.verdict(new Readings(tried.get().feed().get()), broken.limit());
      room = then.room();
      if (proof.holds(tried)) {
        return Optional.of(new Found(told(aim.get(), points) + Change.meeting(1), true));
      }
      Optional<String> against = then.keeps() ? proof.against(tried.get()) : Optional.empty();
      if (against.isPresent()) {
        String words = told(aim.get(), points) + Change.meeting(1) + ", but then " + against.get();
        return Optional.of(new Found(words, false));
      }
    }
    return Optional.empty();
  }

  private static String told(Setting aim, double points) {
    return moved(target(aim), points)
        + " moisture in place of "
        + aim.written().target().asWritten()
        + aim.written()
            .accept()
            .map(taken -> ", accepting " + moved(written(taken), points) + ",")
            .orElse("")
        + " in the line "
        + aim.written().stepAsWritten().text();
  }

  private static Optional<RuleContext> with(RuleContext recipe, Setting aim, double points) {
    List<TextEdit> edits = new ArrayList<>();
    edits.add(new TextEdit(aim.written().target().span(), moved(target(aim), points)));
    Optional<Range> accept = aim.written().accept();
    if (accept.isPresent()) {
      edits.add(new TextEdit(accept.get().span(), moved(written(accept.get()), points)));
    }
    return recipe.fixing().again().with(edits);
  }

  private static List<Double> target(Setting aim) {
    return aim.low() == aim.high() ? List.of(aim.low()) : List.of(aim.low(), aim.high());
  }

  private static List<Double> written(Range range) {
    return List.of(range.lowBase(), range.highBase());
  }

  private static String moved(List<Double> parts, double points) {
    List<String> words = new ArrayList<>();
    for (double part : parts) {
      words.add(Figures.fixed(part * 100 + points, 1));
    }
    return String.join(" to ", words) + " %";
  }
}
