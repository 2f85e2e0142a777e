package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.RecipeChange.CostMoved;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A comparison as one HTML file: every figure of every feed, the gravest feed first. */
public final class CompareHtml {
  private final String currency;

  public CompareHtml(String currency) {
    this.currency = currency;
  }

  /** One file, to be written as UTF-8. */
  public String text(Comparison comparison) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title("What this change", "does to the feeds"));
    blocks.add(new Words(CompareText.tally(comparison) + "."));
    if (!comparison.notices().isEmpty()) {
      blocks.add(new Warnings(comparison.notices()));
    }
    if (!comparison.changes().isEmpty()) {
      blocks.add(all(comparison));
    }
    comparison.changes().forEach(change -> feed(change, blocks));
    return new HtmlPage().render("Comparison", blocks);
  }

  private Table all(Comparison comparison) {
    return table(
        List.of(
            words("Feed"),
            words("How it changed"),
            figures("Newly broken"),
            words("Label"),
            figures(currency + "/kg before"),
            figures("now"),
            figures("more")),
        comparison.changes().stream().map(CompareHtml::summed).toList());
  }

  private static List<String> summed(RecipeChange change) {
    return List.of(
        change.named(),
        change.how().words(),
        change.effect().map(effect -> String.valueOf(effect.broken().size())).orElse(""),
        change.effect().filter(Effect::breaksLabel).isPresent() ? CompareWords.label(change) : "",
        money(change.costBefore()),
        money(change.costAfter()),
        CompareWords.costMoved(change));
  }

  private static String money(OptionalDouble perKg) {
    return perKg.isPresent() ? CompareWords.money(perKg.getAsDouble()) : "";
  }

  private void feed(RecipeChange change, List<Block> blocks) {
    blocks.add(new Heading(change.named() + ": " + change.how().words(), false));
    if (!change.obstacle().isEmpty()) {
      blocks.add(new Warnings(List.of("Cannot be computed: " + change.obstacle())));
    }
    CompareWords.limits(change).ifPresent(told -> blocks.add(new Words("Limits: " + told + ".")));
    change.effect().ifPresent(effect -> warn(change, effect, blocks));
    if (!change.because().isEmpty()) {
      blocks.add(new Words("Because of " + CompareWords.because(change) + "."));
    }
    if (!change.text().isEmpty()) {
      blocks.add(
          table(
              List.of(words("Text")), change.text().stream().map(line -> List.of(line)).toList()));
    }
    change.effect().ifPresent(effect -> figures(effect, blocks));
  }

  private static void warn(RecipeChange change, Effect effect, List<Block> blocks) {
    List<String> warnings = new ArrayList<>();
    effect.broken().forEach(one -> warnings.add("Broken: " + CompareWords.limit(one)));
    if (!effect.untold().isEmpty()) {
      warnings.add(
          "Cannot be judged" + CompareWords.anyMore(change) + ": " + CompareWords.untold(effect));
    }
    effect.label().forEach(one -> warnings.add(CompareWords.label(one, change)));
    effect.prices().forEach(one -> warnings.add("Price: " + one));
    if (!warnings.isEmpty()) {
      blocks.add(new Warnings(warnings));
    }
    List<String> told = new ArrayList<>();
    told(told, "Tight", effect.tight());
    told(told, "Met", effect.met());
    effect.waivers().forEach(one -> told.add("Waiver " + one));
    effect.bounds().forEach(one -> told.add("Limit " + one));
    told.forEach(sentence -> blocks.add(new Words(sentence)));
  }

  private static void told(List<String> told, String how, List<LimitMoved> limits) {
    limits.forEach(one -> told.add(how + ": " + CompareWords.limit(one)));
  }

  private void figures(Effect effect, List<Block> blocks) {
    add(blocks, shares(effect));
    add(blocks, nutrients(effect));
    add(blocks, judged(effect));
    add(blocks, costs(effect));
    effect
        .loads()
        .ifPresent(loads -> blocks.add(new Words("Batch: " + CompareWords.portions(loads) + ".")));
    add(blocks, weights(effect));
    if (!effect.reprint().isEmpty()) {
      blocks.add(new Words("On the label changes: " + String.join(", ", effect.reprint()) + "."));
    }
  }

  private static void add(List<Block> blocks, Table table) {
    if (!table.rows().isEmpty()) {
      blocks.add(table);
    }
  }

  private static Table shares(Effect effect) {
    return table(
        List.of(words("Line"), figures("Share before"), figures("Share now")),
        effect.shares().stream()
            .map(one -> List.of(one.line(), one.before(), one.after()))
            .toList());
  }

  private static Table nutrients(Effect effect) {
    return table(
        List.of(
            words("Nutrient, as fed"),
            figures("Before"),
            figures("Now"),
            figures("More"),
            words("Unit"),
            words("Room")),
        effect.moved().stream()
            .map(
                one -> {
                  Figures.Pair pair = CompareWords.nutrient(one);
                  return List.of(
                      one.nutrient(),
                      pair.value(),
                      pair.other(),
                      CompareWords.difference(one),
                      one.unit().symbol(),
                      one.nearest().map(CompareWords::room).orElse(""));
                })
            .toList());
  }

  private static Table judged(Effect effect) {
    return table(
        List.of(words("Limit, and its figure where it is judged, before and now"), words("Room")),
        effect.judged().stream()
            .map(one -> List.of(CompareWords.limit(one), CompareWords.room(one.after())))
            .toList());
  }

  private Table costs(Effect effect) {
    return table(
        List.of(
            words("What moved the cost"),
            figures(currency + " in a kg of feed"),
            figures("Price before"),
            figures("Price now")),
        effect.costs().stream().map(CompareHtml::cost).toList());
  }

  private static List<String> cost(CostMoved one) {
    Figures.Pair prices = Figures.apart(one.priceBefore(), one.priceAfter(), 2);
    boolean same = Closeness.same(one.priceBefore(), one.priceAfter());
    String now = Figures.fixed(one.priceAfter(), 2);
    return List.of(
        one.line(),
        CompareWords.signed(one.moved()),
        same ? now : one.priceBefore() > 0 ? prices.value() : "",
        same ? now : one.priceAfter() > 0 ? prices.other() : "");
  }

  private static Table weights(Effect effect) {
    return table(
        List.of(
            words("Weigh sheet, kg in each load or round of the coater"),
            figures("Before"),
            figures("Now")),
        effect.weights().stream()
            .map(
                one -> {
                  Figures.Pair kg = CompareWords.weights(one);
                  return List.of(one.line(), kg.value(), kg.other());
                })
            .toList());
  }

  private static Column words(String head) {
    return new Column(head, Holds.WORDS);
  }

  private static Column figures(String head) {
    return new Column(head, Holds.FIGURES);
  }

  private static Table table(List<Column> columns, List<List<String>> rows) {
    return new Table(columns, rows, false);
  }
}
