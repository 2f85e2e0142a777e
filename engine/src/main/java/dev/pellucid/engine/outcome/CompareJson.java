package dev.pellucid.engine.outcome;

import dev.pellucid.engine.account.Account.Tally;
import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.compare.RecipeChange.Moved;
import dev.pellucid.text.PrintedPaths;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A comparison as plain JSON, for scripts: every figure, to twelve digits. A key never changes its
 * meaning: what is new comes under new keys. Money is per kg in the bags; a nutrient is in the unit
 * that stands beside it, as fed; room is the part of the bound that is left, below zero where it is
 * broken. Every change has every key; what there is not is null or an empty list.
 */
public final class CompareJson {
  private final PrintedPaths paths;

  private CompareJson(PrintedPaths paths) {
    this.paths = paths;
  }

  /**
   * One object with all changes, the gravest first.
   *
   * @param paths how files are called
   */
  public static String of(Comparison comparison, String currency, PrintedPaths paths) {
    return new CompareJson(paths).text(comparison, currency);
  }

  private String text(Comparison comparison, String currency) {
    ObjectNode root = Json.object().put("format", 2).put("currency", currency);
    root.set("notices", Json.texts(comparison.notices()));
    ArrayNode changes = root.putArray("changes");
    comparison.changes().forEach(change -> change(changes.addObject(), change));
    return Json.written(root);
  }

  private void change(ObjectNode node, RecipeChange change) {
    node.put("code", change.code());
    node.put("formerly", change.formerly().orElse(null));
    node.put("how", change.how().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    node.put("obstacle", change.obstacle());
    node.set("text", Json.texts(change.text()));
    ArrayNode because = node.putArray("because");
    change
        .because()
        .forEach(
            cause ->
                figure(
                    because.addObject().put("file", paths.of(cause.path())),
                    "cost",
                    cause.costMoved()));
    figure(node, "costBefore", change.costBefore());
    figure(node, "costAfter", change.costAfter());
    limits(node, change);
    effect(node, change.effectOrNone(), change.isNew());
  }

  /** Null throughout where there is no feed to judge. */
  private static void limits(ObjectNode node, RecipeChange change) {
    Optional<Tally> now = change.limits();
    node.putObject("limits")
        .put("kept", now.map(Tally::kept).orElse(null))
        .put("broken", now.map(Tally::broken).orElse(null))
        .put("notJudged", now.map(Tally::untold).orElse(null));
  }

  private static void figure(ObjectNode node, String key, OptionalDouble figure) {
    node.put(key, figure.isPresent() ? exact(figure.getAsDouble()) : null);
  }

  /** Without what binary rounding leaves behind the twelfth digit; null over nothing. */
  private static @Nullable BigDecimal exact(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(value, new MathContext(12)).stripTrailingZeros()
        : null;
  }

  private static void effect(ObjectNode node, Effect effect, boolean isNew) {
    limits(node.putArray("broken"), effect.broken(), isNew);
    limits(node.putArray("met"), effect.met(), isNew);
    limits(node.putArray("tight"), effect.tight(), isNew);
    limits(node.putArray("notJudged"), effect.untold(), isNew);
    limits(node.putArray("judged"), effect.judged(), isNew);
    node.set("prices", Json.texts(effect.prices()));
    node.set("bounds", Json.texts(effect.bounds()));
    node.set("waivers", Json.texts(effect.waivers()));
    ArrayNode label = node.putArray("label");
    effect
        .label()
        .forEach(
            claim ->
                label
                    .addObject()
                    .put("sentence", claim.sentence())
                    .put(
                        "outcome",
                        claim.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-')));
    node.set("reprint", Json.texts(effect.reprint()));
    ArrayNode shares = node.putArray("shares");
    effect
        .shares()
        .forEach(
            one ->
                shares
                    .addObject()
                    .put("line", one.line())
                    .put("before", one.before())
                    .put("after", one.after()));
    ArrayNode nutrients = node.putArray("nutrients");
    effect.moved().forEach(one -> nutrient(nutrients.addObject(), one));
    ArrayNode costs = node.putArray("costs");
    effect
        .costs()
        .forEach(
            one ->
                costs
                    .addObject()
                    .put("line", one.line())
                    .put("moved", exact(one.moved()))
                    .put("priceBefore", exact(one.priceBefore()))
                    .put("priceAfter", exact(one.priceAfter())));
    ArrayNode weights = node.putArray("weights");
    effect
        .weights()
        .forEach(
            one ->
                weights
                    .addObject()
                    .put("line", one.line())
                    .put("kgBefore", exact(one.before()))
                    .put("kgAfter", exact(one.after())));
  }

  private static void nutrient(ObjectNode node, Moved one) {
    node.put("nutrient", one.nutrient())
        .put("before", exact(one.unit().fromBase(one.before())))
        .put("after", exact(one.unit().fromBase(one.after())))
        .put("moved", exact(one.unit().fromBase(one.after() - one.before())))
        .put("unit", one.unit().symbol());
    one.nearest()
        .ifPresent(
            limit ->
                node.put("nearest", limit.demand().askedNow()).put("room", exact(limit.room())));
  }

  /** A feed that is new has no figure before. */
  private static void limits(ArrayNode array, List<LimitMoved> limits, boolean isNew) {
    limits.forEach(
        one ->
            array
                .addObject()
                .put("profile", one.after().demand().profile())
                .put("subject", one.after().subject())
                .put("bound", one.after().demand().askedNow())
                .put("unit", one.after().unit().symbol())
                .put("unitBefore", one.before().unit().symbol())
                .put("before", isNew ? null : exact(one.before().shown()))
                .put("after", exact(one.after().shown()))
                .put("room", exact(one.after().room())));
  }
}
