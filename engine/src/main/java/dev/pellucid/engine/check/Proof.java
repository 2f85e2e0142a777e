package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.judge.LabelVerdict.Outcome;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a changed recipe meets some limits, breaks none that was kept, makes no other broken one
 * worse, and has no error or warning that it did not have.
 *
 * @param recipe as it is written
 * @param targets what is to be met
 */
record Proof(RuleContext recipe, List<Limit> targets) {
  Proof {
    targets = List.copyOf(targets);
  }

  /** Of the recipe as it was tried. */
  boolean holds(Optional<RuleContext> tried) {
    return tried.isPresent()
        && tried.get().feed().isPresent()
        && keeps(new Readings(tried.get().feed().get()))
        && recipe.fixing().mayProve()
        && !recipe.fixing().saysMore(tried.get());
  }

  /** Of a feed as it would be then, whatever the rules say of it. */
  boolean keeps(Readings after) {
    for (Limit target : targets) {
      if (!Judge.verdict(after, target).keeps()) {
        return false;
      }
    }
    for (LimitStatus before : recipe.limits()) {
      if (before.state().isJudged() && !isNoWorse(before, Judge.verdict(after, before.limit()))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isNoWorse(LimitStatus before, Verdict after) {
    double was = before.verdict().judged();
    boolean min = before.limit().side() == Bound.Side.MIN;
    boolean noWorse =
        min ? Closeness.isAtLeast(after.judged(), was) : Closeness.isAtMost(after.judged(), was);
    return after.keeps() || !before.state().isKept() && noWorse;
  }

  /** What a change brings with it that must not be; empty where there is nothing. */
  Optional<String> against(RuleContext tried) {
    Optional<String> limit =
        tried.feed().isPresent() ? broken(new Readings(tried.feed().get())) : Optional.empty();
    return limit.isPresent() ? limit : recipe.fixing().firstMore(tried);
  }

  /** The first limit that was kept and is not after it, in words. */
  Optional<String> broken(Readings after) {
    for (LimitStatus before : recipe.limits()) {
      Limit limit = before.limit();
      if (before.state().isKept() && !Judge.verdict(after, limit).keeps()) {
        boolean min = limit.side() == Bound.Side.MIN;
        return Optional.of(
            limit.subject().text()
                + " is "
                + (min ? "below its minimum of " : "above its maximum of ")
                + limit.writtenInForce().asWritten());
      }
    }
    return Optional.empty();
  }

  /** What the label must say after it and needs not now. */
  List<String> relabels(RuleContext tried) {
    List<String> words = new ArrayList<>();
    List<LabelVerdict> before = recipe.judgement().claims();
    List<LabelVerdict> after = tried.judgement().claims();
    for (int i = 0; i < after.size(); i++) {
      boolean was = i < before.size() && isOff(before.get(i));
      if (isOff(after.get(i)) && !was) {
        words.add(
            after.get(i).claim().nutrient().name() + " " + new LabelWords(after.get(i)).instead());
      }
    }
    return words;
  }

  private static boolean isOff(LabelVerdict one) {
    return one.outcome() == Outcome.BEYOND || one.outcome() == Outcome.SPENDS;
  }
}
