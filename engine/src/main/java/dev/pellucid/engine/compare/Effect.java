package dev.pellucid.engine.compare;

import dev.pellucid.engine.account.Account;
import dev.pellucid.engine.account.Account.Content;
import dev.pellucid.engine.account.Account.LineCost;
import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.compare.FeedFigures.Claimed;
import dev.pellucid.engine.compare.FeedFigures.Weighings;
import dev.pellucid.engine.compare.RecipeChange.CostMoved;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.compare.RecipeChange.Moved;
import dev.pellucid.engine.compare.RecipeChange.Shifted;
import dev.pellucid.engine.compare.RecipeChange.WeightMoved;
import dev.pellucid.engine.judge.LabelVerdict.Outcome;
import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a change does to a feed: the difference of its figures.
 *
 * @param shares of lines that changed
 * @param moved nutrients that changed, first those that are near a limit for what they moved, those
 *     without limits last, the largest change in proportion first
 * @param broken limits that are no longer kept
 * @param met limits that were broken and are kept now
 * @param byWaiver limits that are kept by a waiver alone, and were not so before
 * @param tight limits that are kept and have come within a hundredth of their bound
 * @param untold limits that cannot be judged any more
 * @param judged other limits whose figure moved where it is judged
 * @param bounds limits that ask for something else than before, new ones and those that are gone
 * @param costs what each line and the yield add to the cost of a kg in the bags, the most first;
 *     all together the whole difference
 * @param waivers new and gone ones
 * @param waived what limits with a waiver are about now
 * @param prices that are missing now, and that are there again
 * @param label what it says and the feed holds no longer
 * @param reprint headings of the label under which something else stands
 * @param weights on the scales that changed
 * @param loads before and after, where the batch is weighed out in other portions
 */
public record Effect(
    List<Shifted> shares,
    List<Moved> moved,
    List<LimitMoved> broken,
    List<LimitMoved> met,
    List<LimitMoved> byWaiver,
    List<LimitMoved> tight,
    List<LimitMoved> untold,
    List<LimitMoved> judged,
    List<String> bounds,
    List<CostMoved> costs,
    List<String> waivers,
    Set<String> waived,
    List<String> prices,
    List<Claimed> label,
    List<String> reprint,
    List<WeightMoved> weights,
    Optional<Portions> loads) {
  /** Of what changes little. */
  static final int LEAST = 4;

  public Effect {
    shares = List.copyOf(shares);
    moved = List.copyOf(moved);
    broken = List.copyOf(broken);
    met = List.copyOf(met);
    byWaiver = List.copyOf(byWaiver);
    tight = List.copyOf(tight);
    untold = List.copyOf(untold);
    judged = List.copyOf(judged);
    bounds = List.copyOf(bounds);
    costs = List.copyOf(costs);
    waivers = List.copyOf(waivers);
    waived = Set.copyOf(waived);
    prices = List.copyOf(prices);
    label = List.copyOf(label);
    reprint = List.copyOf(reprint);
    weights = List.copyOf(weights);
  }

  /** A batch before and after. */
  public record Portions(Weighings before, Weighings after) {}

  /** What there is to see where nothing is different. */
  static final Effect NONE =
      of(List.of(), List.of(), List.of(), List.of(), List.of(), Set.of(), List.of(), List.of());

  /** A feed that was not there: nothing of it moved, but what it does not keep is new. */
  static Effect ofNew(FeedFigures is) {
    FeedFigures none = is.withoutLimits();
    return of(
        Turns.of(none, is, Turns::isBroken),
        Turns.of(none, is, Turns::isByWaiver),
        Turns.of(none, is, Turns::isTight),
        Turns.of(none, is, Turns::isUntold),
        waivers(none, is),
        is.waived(),
        is.account().unpriced().stream()
            .map(name -> "none for " + name + ", the cost leaves it out")
            .toList(),
        label(none, is));
  }

  private static Effect of(
      List<LimitMoved> broken,
      List<LimitMoved> byWaiver,
      List<LimitMoved> tight,
      List<LimitMoved> untold,
      List<String> waivers,
      Set<String> waived,
      List<String> prices,
      List<Claimed> label) {
    return new Effect(
        List.of(),
        List.of(),
        broken,
        List.of(),
        byWaiver,
        tight,
        untold,
        List.of(),
        List.of(),
        List.of(),
        waivers,
        waived,
        prices,
        label,
        List.of(),
        List.of(),
        Optional.empty());
  }

  /** The difference of two feeds. */
  public static Effect between(FeedFigures was, FeedFigures is) {
    return new Effect(
        shares(was.account().shares(), is.account().shares()),
        moved(was.account(), is.account()),
        Turns.of(was, is, Turns::isBroken),
        Turns.of(was, is, Turns::isMet),
        Turns.of(was, is, Turns::isByWaiver),
        Turns.of(was, is, Turns::isTight),
        Turns.of(was, is, Turns::isUntold),
        Turns.of(was, is, Turns::isMoved),
        Turns.bounds(was.account().limits(), is.account().limits()),
        costs(was.account(), is.account()),
        waivers(was, is),
        is.waived(),
        prices(was.account().unpriced(), is.account().unpriced()),
        label(was, is),
        reprint(was, is),
        weights(was.weighings(), is.weighings()),
        portions(was.weighings(), is.weighings()));
  }

  /** Whether nothing at all is different. */
  public boolean isNone() {
    return movesFiguresAlone() && moved.isEmpty() && judged.isEmpty() && costs.isEmpty();
  }

  /** Whether no limit turned in any way. */
  boolean turnsNone() {
    return broken.isEmpty()
        && met.isEmpty()
        && byWaiver.isEmpty()
        && tight.isEmpty()
        && untold.isEmpty()
        && bounds.isEmpty();
  }

  /** Whether nothing is different but the height of figures. */
  boolean movesFiguresAlone() {
    return turnsNone()
        && shares.isEmpty()
        && waivers.isEmpty()
        && prices.isEmpty()
        && label.isEmpty()
        && reprint.isEmpty()
        && weights.isEmpty()
        && loads.isEmpty();
  }

  /** Whether the label says what the feed does not hold, beyond what the rules let pass. */
  public boolean breaksLabel() {
    return label.stream().anyMatch(claim -> claim.outcome().compareTo(Outcome.BEYOND) >= 0);
  }

  int rank() {
    if (!broken.isEmpty() || !untold.isEmpty() || breaksLabel()) {
      return 0;
    }
    return !tight.isEmpty() || !label.isEmpty() || !byWaiver.isEmpty()
        ? 1
        : !met.isEmpty() ? 2 : LEAST - 1;
  }

  static Set<String> names(Map<String, ?> was, Map<String, ?> is) {
    Set<String> names = new LinkedHashSet<>(is.keySet());
    names.addAll(was.keySet());
    return names;
  }

  static List<Shifted> shares(Map<String, String> was, Map<String, String> is) {
    List<Shifted> shifted = new ArrayList<>();
    for (String name : names(was, is)) {
      String before = was.getOrDefault(name, "");
      String after = is.getOrDefault(name, "");
      if (!before.equals(after)) {
        shifted.add(new Shifted(name, before, after));
      }
    }
    return shifted;
  }

  static List<Moved> moved(Account was, Account is) {
    List<Moved> moved = new ArrayList<>();
    for (String name : is.contents().keySet()) {
      Optional<Content> then = was.told(name);
      Optional<Content> now = is.told(name).filter(one -> isJudged(name, is));
      if (then.isPresent() && now.isPresent() && !same(then.get().base(), now.get().base())) {
        moved.add(
            new Moved(
                name, then.get().base(), now.get().base(), now.get().unit(), nearest(name, is)));
      }
    }
    moved.sort(
        Comparator.comparing((Moved one) -> one.nearest().isEmpty() && !one.altogether())
            .thenComparing(Comparator.comparingDouble(Effect::weight).reversed()));
    return moved;
  }

  /** Where a limit on it cannot be judged, its figure is not to be believed either. */
  private static boolean isJudged(String nutrient, Account is) {
    return is.limits().values().stream()
        .noneMatch(limit -> limit.subject().equals(nutrient) && !limit.told());
  }

  private static Optional<Held> nearest(String nutrient, Account is) {
    return is.limits().values().stream()
        .filter(limit -> limit.subject().equals(nutrient))
        .min(Comparator.comparingDouble(Held::room));
  }

  static boolean same(double before, double after) {
    return Closeness.same(before, after);
  }

  /** Its change in proportion; where a limit is on it, as a part of that and of the room left. */
  private static double weight(Moved one) {
    double largest = Math.max(Math.abs(one.before()), Math.abs(one.after()));
    double part = Math.abs(one.after() - one.before()) / largest;
    return one.nearest().map(limit -> part / (part + Math.max(0, limit.room()))).orElse(part);
  }

  /**
   * What each line adds by its own price and mass, all over the kg that are now in the bags; and
   * what it does that these are more or fewer than before, of the same recipe.
   */
  static List<CostMoved> costs(Account was, Account is) {
    LineCost none = new LineCost(0, 0);
    List<CostMoved> costs = new ArrayList<>();
    double byYield = was.costPerKg() * (was.bagged() / is.bagged() - 1);
    if (!same(was.bagged(), is.bagged()) && byYield != 0) {
      costs.add(new CostMoved(CostMoved.YIELD, byYield, 0, 0));
    }
    for (String line : names(was.costs(), is.costs())) {
      LineCost before = was.costs().getOrDefault(line, none);
      LineCost after = is.costs().getOrDefault(line, none);
      double money = before.perKgBagged() * was.bagged() / is.bagged();
      if (!same(money, after.perKgBagged())) {
        costs.add(new CostMoved(line, after.perKgBagged() - money, before.perKg(), after.perKg()));
      }
    }
    costs.sort(Comparator.comparingDouble(one -> -Math.abs(one.moved())));
    return costs;
  }

  static List<String> prices(List<String> was, List<String> is) {
    List<String> prices = new ArrayList<>();
    is.stream()
        .filter(name -> !was.contains(name))
        .forEach(name -> prices.add("none any more for " + name + ", the cost leaves it out"));
    was.stream()
        .filter(name -> !is.contains(name))
        .forEach(name -> prices.add("none before for " + name + ", the cost left it out"));
    return prices;
  }

  static List<String> waivers(FeedFigures was, FeedFigures is) {
    List<String> waivers = new ArrayList<>();
    Set<String> now = is.waivers();
    Set<String> then = was.waivers();
    now.stream().filter(one -> !then.contains(one)).forEach(one -> waivers.add("new: " + one));
    then.stream().filter(one -> !now.contains(one)).forEach(one -> waivers.add("gone: " + one));
    return waivers;
  }

  /** Claims that are worse off than before. */
  static List<Claimed> label(FeedFigures was, FeedFigures is) {
    List<Claimed> label = new ArrayList<>();
    is.claims()
        .forEach(
            (nutrient, now) -> {
              Claimed then = was.claims().get(nutrient);
              Outcome before = then == null ? Outcome.KEPT : then.outcome();
              if (now.outcome().compareTo(before) > 0) {
                label.add(now);
              }
            });
    label.sort(Comparator.comparing(Claimed::outcome).reversed());
    return label;
  }

  static List<String> reprint(FeedFigures was, FeedFigures is) {
    return names(was.printed(), is.printed()).stream()
        .filter(
            heading ->
                !was.printed()
                    .getOrDefault(heading, "")
                    .equals(is.printed().getOrDefault(heading, "")))
        .toList();
  }

  static List<WeightMoved> weights(Weighings was, Weighings is) {
    List<WeightMoved> weights = new ArrayList<>();
    if (was.each().isEmpty() || is.each().isEmpty()) {
      return weights;
    }
    for (String line : names(was.each(), is.each())) {
      double before = was.each().getOrDefault(line, 0.0);
      double after = is.each().getOrDefault(line, 0.0);
      if (!same(before, after)) {
        weights.add(new WeightMoved(line, before, after));
      }
    }
    weights.sort(Comparator.comparingDouble(one -> -Math.abs(one.after() - one.before())));
    return weights;
  }

  static Optional<Portions> portions(Weighings was, Weighings is) {
    boolean same =
        same(was.kg(), is.kg()) && was.loads() == is.loads() && was.rounds() == is.rounds();
    return same ? Optional.empty() : Optional.of(new Portions(was, is));
  }
}
