package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a recipe with its text changed keeps all that it must: it is read, computed, judged and
 * ruled anew, as if it stood there so, and its batch as the plant weighs it too.
 */
final class Proving {
  private final RuleContext recipe;
  private final List<Tightened> kept;

  Proving(RuleContext recipe, List<Tightened> kept) {
    this.recipe = recipe;
    this.kept = kept;
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
    return recipe.fixing().firstMore(tried);
  }

  /**
   * The same things to keep, each with as much more to spare as the feed lacks that was tried, or
   * as its batch lacks as the plant weighs it.
   */
  List<Tightened> tighter(RuleContext tried) {
    List<Slopes> feeds = new ArrayList<>();
    ComputedFeed feed = tried.feed().orElseThrow();
    feeds.add(new Slopes(feed));
    tried
        .floor()
        .plan()
        .flatMap(plan -> feed.weighed(plan.asRounded(feed.recipe())).feed())
        .ifPresent(rounded -> feeds.add(new Slopes(rounded)));
    List<Tightened> tighter = new ArrayList<>(kept.size());
    for (Tightened one : kept) {
      tighter.add(one.by(feeds));
    }
    return tighter;
  }
}
