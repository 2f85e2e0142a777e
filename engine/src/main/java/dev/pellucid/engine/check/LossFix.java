package dev.pellucid.engine.check;

import dev.pellucid.engine.check.Contributors.Contributor;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What meets a minimum of something that heat and storage take: a shorter shelf life, or more of
 * the premix that brings it, weighed for what is lost. Each is tried on the recipe before it is
 * offered.
 */
final class LossFix {
  private static final double HOURS = 24;

  /** A loss below this part is none that an overage is for. */
  private static final double SOME = 0.03;

  /** A feed that may be kept for less than this part of its shelf life is another feed. */
  private static final double KEPT_PART = 1.0 / 3;

  /** Whoever needs more on top than this needs another supply. */
  private static final double MOST = 0.5;

  private static final int ROUNDINGS = 3;

  private final RuleContext recipe;
  private final ComputedFeed feed;
  private final Verdict broken;
  private final Again again;
  private final Proof proof;

  private LossFix(RuleContext recipe, ComputedFeed feed, Verdict broken) {
    this.recipe = recipe;
    this.feed = feed;
    this.broken = broken;
    this.again = recipe.fixing().again();
    this.proof = new Proof(recipe, List.of(broken.limit()));
  }

  /** In words, a line for each; none where nothing is lost of it. */
  static List<String> words(
      RuleContext recipe, ComputedFeed feed, Verdict broken, Optional<Contributor> largest) {
    Limit limit = broken.limit();
    boolean one = limit.side() == Bound.Side.MIN && limit.subject().addends().size() == 1;
    if (!one || largest.isEmpty() || recipe.fixing().again() == Again.NONE) {
      return List.of();
    }
    int nutrient = limit.subject().addends().get(0).index();
    double fresh = amount(feed, largest.get().line(), Scenario.EXPECTED, nutrient);
    double left = amount(feed, largest.get().line(), Scenario.POOREST, nutrient);
    if (fresh <= 0 || left / fresh > 1 - SOME) {
      return List.of();
    }
    LossFix fix = new LossFix(recipe, feed, broken);
    List<String> words = new ArrayList<>();
    fix.overage(largest.get().line(), left).ifPresent(words::add);
    fix.shelfLife().ifPresent(words::add);
    return words;
  }

  private static double amount(ComputedFeed feed, Line line, Scenario end, int nutrient) {
    double amount = 0;
    for (var row : feed.rows(line)) {
      amount += row.amount(end, nutrient);
    }
    return amount;
  }

  private Optional<String> overage(Line line, double left) {
    if (line.material().premixed().isEmpty() || left <= 0) {
      return Optional.empty();
    }
    double finished = feed.balances().at(broken.end()).finished();
    double dry = 1 - feed.balances().at(broken.end()).moisture();
    double lacking = broken.limit().basis().toAsFed(-broken.room(), dry) * finished;
    double now = line.share().part() / line.designed().part();
    double percent = (now * (1 + lacking / left) - 1) * 100;
    for (int i = 0; i < ROUNDINGS && percent <= MOST * 100; i++) {
      double rounded = Math.ceil(percent - 1e-6) + i;
      String extra = Figures.fixed(rounded, 0) + " %";
      String name = line.material().name();
      if (proof.holds(again.withOverage(name, extra, "stability"))) {
        return Optional.of(
            "an overage of " + extra + " for stability on " + name + " would meet it");
      }
    }
    return Optional.empty();
  }

  private Optional<String> shelfLife() {
    Optional<Setting> written = recipe.recipe().process().setting(Step.STORE, Property.SHELF_LIFE);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    int days = (int) Math.round(written.get().most() / HOURS);
    int least = (int) Math.ceil(days * KEPT_PART);
    if (!meets(written.get(), least)) {
      return Optional.empty();
    }
    int good = least;
    int bad = days;
    while (bad - good > 1) {
      int middle = (good + bad) / 2;
      boolean met = meets(written.get(), middle);
      good = met ? middle : good;
      bad = met ? bad : middle;
    }
    return proof.holds(with(written.get(), good))
        ? Optional.of(
            "a shelf life of "
                + good
                + " d in place of "
                + written.get().written().target().asWritten()
                + " would meet it")
        : Optional.empty();
  }

  private boolean meets(Setting shelfLife, int days) {
    return with(shelfLife, days)
        .flatMap(RuleContext::feed)
        .filter(there -> Judge.verdict(new Readings(there), broken.limit()).keeps())
        .isPresent();
  }

  private Optional<RuleContext> with(Setting shelfLife, int days) {
    TextEdit edit = new TextEdit(shelfLife.written().target().span(), days + " d");
    return again.with(List.of(edit));
  }
}
