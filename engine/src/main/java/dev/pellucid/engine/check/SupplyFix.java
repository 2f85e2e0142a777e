package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.TextEdit;
import java.util.List;
import java.util.Optional;

/**
 * What a premix must supply, or at which share it must stand, so that a limit of what it brings is
 * met. The feed is computed with it again; what it does to other feeds that take the premix, their
 * own checks say.
 */
final class SupplyFix {
  /** A supply that must move further than this is no fix but another premix. */
  private static final double MOST_TIMES = 12;

  private static final double LEAST_TIMES = 0.02;
  private static final int CORRECTIONS = 3;
  private static final int ROUNDINGS = 3;

  private final RuleContext recipe;
  private final ComputedFeed feed;
  private final Verdict broken;

  private SupplyFix(RuleContext recipe, ComputedFeed feed, Verdict broken) {
    this.recipe = recipe;
    this.feed = feed;
    this.broken = broken;
  }

  /** In words; empty where no premix supplies it, or no supply of it would meet the limit. */
  static Optional<String> words(RuleContext recipe, ComputedFeed feed, Verdict broken) {
    List<Nutrient> addends = broken.limit().subject().addends();
    if (addends.size() != 1 || recipe.fixing().again() == Again.NONE) {
      return Optional.empty();
    }
    SupplyFix fix = new SupplyFix(recipe, feed, broken);
    for (Supplied one : Supplied.to(feed.recipe())) {
      if (one.supply().nutrient().equals(addends.get(0))) {
        Optional<String> words = fix.words(one);
        if (words.isPresent()) {
          return words;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<String> words(Supplied one) {
    boolean atDose = Math.abs(one.times() - 1) < 1e-6;
    return atDose ? supply(one) : dose(one);
  }

  /** A premix that stands at another share than its dose. */
  private Optional<String> dose(Supplied one) {
    if (!one.line().material().name().equals(one.premix().code())) {
      return Optional.empty();
    }
    String dose = one.premix().dose().orElseThrow().toString();
    Proof proof = new Proof(recipe, List.of(broken.limit()));
    return proof.holds(
            recipe.fixing().again().with(List.of(new TextEdit(one.line().figure(), dose))))
        ? Optional.of(one.premix().code() + " at its dose of " + dose + " would meet it")
        : Optional.empty();
  }

  private Optional<String> supply(Supplied one) {
    boolean min = broken.limit().side() == Bound.Side.MIN;
    double before = 1;
    double roomBefore = broken.room();
    double times = min ? 1.1 : 0.9;
    for (int i = 0; i <= CORRECTIONS; i++) {
      double room = room(one, times);
      double next = times - room * (times - before) / (room - roomBefore);
      if (!(next >= LEAST_TIMES && next <= MOST_TIMES)) {
        return Optional.empty();
      }
      before = times;
      roomBefore = room;
      times = next;
      if (Math.abs(times - before) < 1e-9) {
        break;
      }
    }
    return rounded(one, times);
  }

  private Optional<String> rounded(Supplied one, double times) {
    Unit unit = one.supply().written().amount().unit();
    double wanted = unit.fromBase(one.supply().amount()) * times;
    int decimals = Math.max(0, 3 - (int) Math.ceil(Math.log10(wanted)));
    double step = Math.pow(10, -decimals);
    boolean min = broken.limit().side() == Bound.Side.MIN;
    double first = min ? Math.ceil(wanted / step - 1e-6) : Math.floor(wanted / step + 1e-6);
    for (int i = 0; i < ROUNDINGS; i++) {
      double figure = (first + (min ? i : -i)) * step;
      double moved = figure / unit.fromBase(one.supply().amount());
      Optional<Readings> there = supplied(one, moved);
      if (there.isPresent() && new Proof(recipe, List.of(broken.limit())).keeps(there.get())) {
        return Optional.of(
            one.supply().nutrient().name()
                + " "
                + Figures.plain(figure)
                + " "
                + one.supply().written().amount().unitAsWritten()
                + " in place of "
                + one.supply().written().amount().asWritten()
                + " in the supply of "
                + one.premix().code()
                + " would meet it; it changes every feed with "
                + one.premix().code());
      }
    }
    return Optional.empty();
  }

  private double room(Supplied one, double times) {
    Limit limit = broken.limit();
    return supplied(one, times).map(there -> Judge.verdict(there, limit).room()).orElse(Double.NaN);
  }

  private Optional<Readings> supplied(Supplied one, double times) {
    return feed.supplied(one.premix().code(), one.supply().from(), times).map(Readings::new);
  }
}
