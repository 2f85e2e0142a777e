package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compare.Printed;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Mass;
import dev.pellucid.engine.plan.OnScales;
import dev.pellucid.engine.plan.Provenance;
import dev.pellucid.engine.report.SheetParts;
import dev.pellucid.text.Plural;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Takes down what is printed of a feed or premix. Lots are left out: which are taken hangs on the
 * store, and is another matter each day. So is the commit.
 */
final class PrintedTaking {
  private final Map<String, String> facts = new LinkedHashMap<>();
  private final Map<String, Long> parts = new LinkedHashMap<>();

  private PrintedTaking() {}

  /** The plan of a batch as it is compared, without what a laboratory should find. */
  static BatchPlan plan(RuleContext recipe, ComputedFeed feed, LocalDate day) {
    return BatchPlan.ofWork(
        feed, recipe.limits(), recipe.tables(), from(day), recipe.floor().plan());
  }

  /** As if both states were committed, under one name. */
  static Provenance from(LocalDate day) {
    return new Provenance("compared", true, day);
  }

  /** Of a feed: its sheet and its label. */
  static Printed of(RuleContext recipe, ComputedFeed feed, BatchPlan plan) {
    PrintedTaking taking = new PrintedTaking();
    taking.sheet(plan);
    taking.laboratory(recipe.limits());
    BagLabel.of(feed, recipe.tables(), plan).ifPresent(taking::label);
    return new Printed(taking.facts, taking.parts);
  }

  /** Of a premix: its sheet. */
  static Printed of(BatchPlan plan) {
    PrintedTaking taking = new PrintedTaking();
    taking.sheet(plan);
    return new Printed(taking.facts, taking.parts);
  }

  private void sheet(BatchPlan plan) {
    facts.put("code", plan.code());
    facts.put("name", "\"" + plan.title() + "\"");
    plan.premixing().ifPresent(premix -> fact("dose", premix.dose()));
    plan.scales().ifPresent(scales -> fact("plant", scales.plant()));
    fact("for", String.join(", ", plan.fish()));
    plan.storing()
        .ifPresent(
            storing -> {
              facts.put("shelf life", Plural.of(storing.days(), "day"));
              facts.put("use by", storing.useBy().toString());
            });
    plan.packing().ifPresent(packing -> mass("bag", packing.bag()));
    plan.makeBy().ifPresent(day -> facts.put("last day to make it", day.toString()));
    mass("water added", plan.balance().water());
    mass("steam", plan.balance().steam());
    plan.scales()
        .flatMap(OnScales::dryer)
        .ifPresent(dryer -> facts.put("drying", SheetParts.dryer(dryer)));
    SheetParts.of(plan).forEach((heading, number) -> parts.put("sheet: " + heading, number));
  }

  /** How its limits are called there; their figures are compared with those of the feed. */
  private void laboratory(List<LimitStatus> limits) {
    long titles = limits.size();
    for (LimitStatus limit : limits) {
      titles = SheetParts.number(titles, limit.limit().subject().title());
    }
    parts.merge("sheet: for the laboratory", titles, (a, b) -> SheetParts.number(a, b));
  }

  private void mass(String name, Mass mass) {
    fact(name, mass.isZero() ? "" : mass.inKg() + " kg");
  }

  private void fact(String name, String words) {
    Optional.of(words).filter(it -> !it.isEmpty()).ifPresent(it -> facts.put(name, it));
  }

  /** Its statements are compared with the figures of the feed. */
  private void label(BagLabel label) {
    fact("label says", label.what());
    label.facts().forEach(fact -> fact("label: " + fact.name(), fact.value()));
    parts.put("label: code and name", SheetParts.number(label.code(), label.title()));
    parts.put("label: whether it may be used", SheetParts.number(label.draftBecause()));
    parts.put("label: what its printer must know", SheetParts.number(label.aside()));
  }
}
