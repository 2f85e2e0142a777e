package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a recipe with its text changed keeps all that it must: it is read, computed, judged and
 * ruled anew, as if it stood there so, its batch as the plant weighs it with it.
 */
final class Proving {
  private static final double MORE = 1.1;
  private static final double NOISE = 1e-12;

  private final RuleContext recipe;
  private final List<Tightened> kept;
  private final boolean keepLabel;

  /**
   * @param keepLabel whether the label must stay as it is printed
   */
  Proving(RuleContext recipe, List<Tightened> kept, boolean keepLabel) {
    this.recipe = recipe;
    this.kept = kept;
    this.keepLabel = keepLabel;
  }

  /**
   * What came of it.
   *
   * @param tried the recipe as it would be; empty where it then has an error of its own
   * @param against what stands against it; empty where nothing does
   */
  record Proof(Optional<RuleContext> tried, Optional<String> against) {
    boolean holds() {
      return against.isEmpty();
    }
  }

  Proof of(List<TextEdit> edits) {
    Optional<RuleContext> tried = recipe.fixing().again().with(edits);
    if (tried.isEmpty() || tried.get().feed().isEmpty()) {
      return new Proof(tried, Optional.of("the recipe could not be read or computed with it"));
    }
    return new Proof(tried, against(tried.get(), tried.get().feed().get()));
  }

  private Optional<String> against(RuleContext tried, ComputedFeed feed) {
    Readings readings = new Readings(feed);
    for (LimitStatus before : recipe.limits()) {
      if (before.state().isJudged() && !Judge.verdict(readings, before.limit()).keeps()) {
        return Optional.of(before.limit().name() + " would not be kept");
      }
    }
    if (keepLabel) {
      for (String anew : LabelAnew.of(recipe, tried)) {
        return Optional.of("the label would not stay as it is printed: " + anew);
      }
    }
    return recipe.fixing().firstMore(tried);
  }

  /**
   * The same things to keep, each with as much more to spare as the feed lacks that was tried, or
   * its batch as the plant weighs it; and limits of the law that are near only now, in as many
   * batches as the folder asks for. Empty where that asks for nothing more.
   */
  Optional<List<Tightened>> tighter(RuleContext tried) {
    ComputedFeed feed = tried.feed().orElseThrow();
    Slopes slopes = new Slopes(feed);
    Optional<Slopes> batch =
        tried
            .floor()
            .plan()
            .flatMap(plan -> feed.weighed(plan.asRounded(feed.recipe())).feed())
            .map(Slopes::new);
    List<Tightened> tighter = new ArrayList<>(kept.size());
    boolean more = false;
    for (Tightened one : kept) {
      double lacks = 0;
      for (Slope room : one.of().rooms(slopes)) {
        lacks = Math.max(lacks, -room.now());
      }
      if (batch.isPresent() && one.of().isLimit()) {
        for (Slope room : one.of().rooms(batch.get())) {
          lacks = Math.max(lacks, -room.now());
        }
      }
      more |= lacks > NOISE;
      tighter.add(lacks > NOISE ? new Tightened(one.of(), one.spare() + lacks * MORE) : one);
    }
    return lawNear(tried, tighter) || more ? Optional.of(tighter) : Optional.empty();
  }

  private boolean lawNear(RuleContext tried, List<Tightened> tighter) {
    double keptIn = recipe.tables().settings().lawKeptIn();
    boolean any = false;
    for (LimitStatus status : tried.limits()) {
      Optional<LawMargin> margin = LawMargin.of(status);
      if (margin.isPresent() && margin.get().isNear() && !margin.get().isEnough(keptIn)) {
        Requirement asked = Requirement.OfLimit.margin(margin.get(), keptIn);
        any |= tighter.stream().noneMatch(one -> asked.equals(one.of()));
        tighter.add(new Tightened(asked, 0));
      }
    }
    return any;
  }
}
