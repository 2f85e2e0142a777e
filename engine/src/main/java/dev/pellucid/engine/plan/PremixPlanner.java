package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.measure.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A premix as a batch: reckoned like a feed that has no coat and no limits, and of which nothing is
 * lost at a die.
 */
public final class PremixPlanner {
  private static final String APPROVED = "approved";
  private static final String DRAFT = "draft";

  private final ResolvedPremix premix;
  private final PremixOrders.Order order;
  private final FeedTables tables;

  PremixPlanner(ResolvedPremix premix, PremixOrders orders, FeedTables tables) {
    this.premix = premix;
    this.order = orders.order(premix);
    this.tables = tables;
  }

  /** Empty where its mass cannot be reckoned. */
  Optional<BatchPlan> plan(Provenance provenance) {
    return feed(premix, order.needs().isEmpty() ? DRAFT : APPROVED, tables)
        .map(
            feed ->
                new BatchPlanner(feed, List.of(), tables, provenance)
                    .premix(order.batch().asDouble(), premixing(feed)));
  }

  /** The same of a batch that is planned under a number, of a size of its own. */
  Optional<BatchPlan> plan(Provenance provenance, String number, double kg) {
    return feed(premix, order.needs().isEmpty() ? DRAFT : APPROVED, tables)
        .map(
            feed ->
                new BatchPlanner(feed, List.of(), tables, provenance)
                    .premix(number, kg, premixing(feed)));
  }

  /** What it comes to; empty where its mass cannot be reckoned. */
  public static Optional<ComputedFeed> feed(ResolvedPremix premix, FeedTables tables) {
    return feed(premix, APPROVED, tables);
  }

  private static Optional<ComputedFeed> feed(
      ResolvedPremix premix, String status, FeedTables tables) {
    return new FeedComputer(tables)
        .compute(premix.asRecipe(status))
        .feed()
        .map(ComputedFeed::withoutShrink);
  }

  private Premixing premixing(ComputedFeed feed) {
    String dose =
        premix
            .dose()
            .map(share -> Unit.G_PER_KG.fromBase(share.part()))
            .map(PremixPlanner::words)
            .orElse("");
    return new Premixing(
        dose,
        order.needs(),
        order.bag(),
        order.forTheMixer(),
        premix.supplies().stream().map(supply -> supplied(supply, feed)).toList());
  }

  private static String words(double grams) {
    return Figures.plain(grams) + " " + Unit.G_PER_KG.symbol();
  }

  private Premixing.Supplied supplied(ResolvedPremix.Supply supply, ComputedFeed feed) {
    Unit unit = supply.written().amount().unit();
    int nutrient = supply.nutrient().index();
    double dose = premix.dose().orElseThrow().part();
    boolean known = feed.retentionGaps().isEmpty() && premix.keeping().isPresent();
    return new Premixing.Supplied(
        supply.nutrient().title(),
        unit.symbol(),
        unit.fromBase(supply.amount()),
        unit.fromBase(supply.amount() / dose),
        unit.fromBase(feed.content(Scenario.EXPECTED, nutrient)),
        known
            ? OptionalDouble.of(unit.fromBase(feed.content(Scenario.POOREST, nutrient)))
            : OptionalDouble.empty());
  }
}
