package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.FileChange;
import dev.pellucid.engine.compare.FindingsMoved;
import dev.pellucid.engine.compare.PremixChange;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.RecipeChange.CostMoved;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.compare.Slight;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Folded;
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
    blocks.add(new Words(CompareTally.of(comparison) + "."));
    if (!comparison.notices().isEmpty()) {
      blocks.add(new Warnings(comparison.notices()));
    }
    List<RecipeChange> told = CompareTally.told(comparison);
    if (!told.isEmpty()) {
      blocks.add(all(told));
    }
    CompareTally.foot(comparison).forEach(words -> blocks.add(new Words(words + ".")));
    told.forEach(change -> feed(change, blocks));
    CompareTally.premixes(comparison).forEach(change -> premix(change, blocks));
    comparison.files().forEach(change -> file(change, blocks));
    return new HtmlPage().render("Comparison", blocks);
  }

  private Table all(List<RecipeChange> changes) {
    return table(
        List.of(
            words("Feed"),
            words("How it changed"),
            words("New findings"),
            words("Gone"),
            figures("Newly broken"),
            words("Label"),
            figures(currency + "/kg before"),
            figures("now"),
            figures("more")),
        changes.stream().map(CompareHtml::summed).toList());
  }

  private static List<String> summed(RecipeChange change) {
    return List.of(
        change.named(),
        change.how().words() + (CompareWords.passesByWaiver(change) ? ", by a waiver" : ""),
        CompareTally.cell(change.findings()::fresh),
        CompareTally.cell(change.findings()::gone),
        change.effect().map(effect -> String.valueOf(effect.broken().size())).orElse(""),
        CompareWords.labelCell(change),
        money(change.costBefore()),
        money(change.costAfter()),
        CompareMoney.costMoved(change));
  }

  private static String money(OptionalDouble perKg) {
    return perKg.isPresent() ? CompareMoney.money(perKg.getAsDouble()) : "";
  }

  private void feed(RecipeChange change, List<Block> blocks) {
    blocks.add(new Heading(change.named() + ": " + change.how().words(), false));
    if (!change.obstacle().isEmpty()) {
      blocks.add(new Warnings(List.of("Cannot be computed: " + change.obstacle())));
    }
    findings(change.findings(), change.isLost(), blocks);
    CompareWords.limits(change).ifPresent(told -> blocks.add(new Words("Limits: " + told + ".")));
    change.effect().ifPresent(effect -> warn(change, effect, blocks));
    if (!change.because().isEmpty()) {
      blocks.add(new Words("Because of " + CompareMoney.because(change) + "."));
    }
    List<Block> folded = new ArrayList<>();
    text(change.text(), folded);
    change.effect().ifPresent(effect -> figures(effect, folded));
    List<String> papers = new ArrayList<>(change.printed().facts());
    papers.addAll(CompareFindings.papers(change.printed(), change.effectOrNone().reprint()));
    papers.forEach(line -> folded.add(new Words(line)));
    if (!folded.isEmpty()) {
      blocks.add(new Folded("Figures of " + change.code(), folded));
    }
  }

  private static void text(List<String> lines, List<Block> blocks) {
    if (!lines.isEmpty()) {
      blocks.add(table(List.of(words("Text")), lines.stream().map(List::of).toList()));
    }
  }

  private static void findings(FindingsMoved findings, boolean unsought, List<Block> blocks) {
    if (!findings.fresh().isEmpty()) {
      blocks.add(
          new Warnings(
              CompareFindings.lines(new FindingsMoved(findings.fresh(), List.of()), unsought)));
    }
    CompareFindings.lines(new FindingsMoved(List.of(), findings.gone()), unsought)
        .forEach(line -> blocks.add(new Words(line)));
  }

  private void premix(PremixChange change, List<Block> blocks) {
    blocks.add(new Heading(change.code() + ": premix, " + change.how().words(), false));
    findings(change.findings(), false, blocks);
    List<Block> folded = new ArrayList<>();
    CompareFindings.premixDetails(change, currency, Integer.MAX_VALUE)
        .forEach(line -> folded.add(new Words(line)));
    if (!folded.isEmpty()) {
      blocks.add(new Folded("Figures of " + change.code(), folded));
    }
  }

  private static void file(FileChange change, List<Block> blocks) {
    blocks.add(new Heading(change.path(), false));
    findings(change.findings(), false, blocks);
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
    if (CompareWords.passesByWaiver(change)) {
      told.add(CompareWords.byWaiver(change));
    }
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
            .filter(one -> !Slight.is(one))
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
            .filter(one -> !Slight.is(one))
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
    String now = one.isYield() ? "" : Figures.fixed(one.priceAfter(), 2);
    return List.of(
        one.line(),
        CompareMoney.signed(one.moved()),
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
