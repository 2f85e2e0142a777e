package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.judge.LabelJudge;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A task whose answer leaves the label as it is printed: each figure within what the rules take,
 * ingredients in the order in which they are named, and none that comes in or goes out.
 */
final class KeptLabel {
  private final RuleContext recipe;
  private final Task task;
  private final double step;

  private KeptLabel(RuleContext recipe, Task task) {
    this.recipe = recipe;
    this.task = task;
    this.step = Math.pow(10, -ShareEdits.decimals(task.free()));
  }

  /** The task itself where the feed has no label. */
  static Task of(RuleContext recipe, Task task) {
    ComputedFeed feed = recipe.feed().orElseThrow();
    return recipe.tables().label().isEmpty() || feed.recipe().label().isEmpty()
        ? task
        : new KeptLabel(recipe, task).kept(feed);
  }

  private Task kept(ComputedFeed feed) {
    List<Tightened> kept = new ArrayList<>(task.kept());
    for (LabelVerdict verdict : recipe.judgement().claims()) {
      LabelJudge.takes(verdict, feed, recipe.tables())
          .ifPresent(takes -> claim(verdict, takes, kept));
    }
    for (List<List<Ingredient>> list : BagLabel.byWeight(feed, recipe.tables())) {
      order(list, kept);
    }
    return task.with(named()).keeping(kept);
  }

  private static void claim(LabelVerdict verdict, LabelJudge.Takes takes, List<Tightened> kept) {
    if (takes.least().isPresent()) {
      kept.add(
          new Tightened(
              new Requirement.OfLabel(verdict, Bound.Side.MIN, takes.least().getAsDouble()), 0));
    }
    if (takes.most().isPresent()) {
      kept.add(
          new Tightened(
              new Requirement.OfLabel(verdict, Bound.Side.MAX, takes.most().getAsDouble()), 0));
    }
  }

  /**
   * Each no less than the next. Of equals the label names the one first whose title comes first; so
   * where that would turn them round, a step is left between them.
   */
  private void order(List<List<Ingredient>> list, List<Tightened> kept) {
    Set<String> moving = new HashSet<>();
    for (Free one : task.free()) {
      moving.add(one.line().material().name());
    }
    for (int i = 1; i < list.size(); i++) {
      if (list.get(i - 1).isEmpty() || list.get(i).isEmpty()) {
        continue;
      }
      Ingredient more = list.get(i - 1).get(0);
      Ingredient less = list.get(i).get(0);
      if (moving.contains(more.name()) || moving.contains(less.name())) {
        double spare = more.title().compareTo(less.title()) < 0 ? 0 : step;
        kept.add(new Tightened(new Requirement.OfOrder(more.name(), less.name()), spare));
      }
    }
  }

  /** What is in stays in, and what is not stays out. */
  private List<Free> named() {
    List<Free> lines = new ArrayList<>();
    for (Free one : task.free()) {
      double high = one.written() > 0 ? one.high() : 0;
      double low = one.written() > 0 ? Math.min(high, Math.max(one.low(), least(one))) : 0;
      boolean goes = one.written() > 0 && one.high() <= 0;
      lines.add(goes ? one : new Free(one.line(), low, high, false, one.step()));
    }
    return lines;
  }

  private double least(Free one) {
    for (Line other : recipe.recipe().lines()) {
      boolean same = other.index() != one.line().index() && other.isTaken();
      for (Ingredient held : other.material().ingredients()) {
        if (same && held.name().equals(one.line().material().name())) {
          return 0;
        }
      }
    }
    return Math.max(step, one.step());
  }
}
