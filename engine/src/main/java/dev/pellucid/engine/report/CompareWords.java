package dev.pellucid.engine.report;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.Effect.Portions;
import dev.pellucid.engine.compare.FeedFigures.Claimed;
import dev.pellucid.engine.compare.FeedFigures.Weighings;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.compare.RecipeChange.Moved;
import dev.pellucid.engine.compare.RecipeChange.Shifted;
import dev.pellucid.engine.compare.RecipeChange.WeightMoved;
import dev.pellucid.engine.compare.Slight;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What became of a recipe in sentences, the gravest first; how many of each is told. */
final class CompareWords {
  private static final int MASS_DECIMALS = 3;
  private final String currency;
  private final int most;

  /**
   * Words for one folder.
   *
   * @param most lines of text, nutrients and weights that are named of each recipe
   */
  CompareWords(String currency, int most) {
    this.currency = currency;
    this.most = most;
  }

  List<String> of(RecipeChange change) {
    List<String> lines = new ArrayList<>();
    if (!change.obstacle().isEmpty()) {
      lines.add("cannot be computed: " + change.obstacle());
    }
    lines.addAll(CompareFindings.lines(change.findings(), change.isLost()));
    change.effect().ifPresent(effect -> grave(change, effect, lines));
    CompareMoney.tell(change, currency, lines);
    if (!change.because().isEmpty()) {
      lines.add("because of " + CompareMoney.because(change));
    }
    return lines;
  }

  /** What need not be read by everybody: lines of text, figures, and papers to print anew. */
  List<String> details(RecipeChange change) {
    List<String> lines = new ArrayList<>();
    some(change.text(), lines, "lines of text");
    change
        .effect()
        .ifPresent(
            effect ->
                some(effect.shares().stream().map(CompareWords::share).toList(), lines, "shares"));
    lines.addAll(effects(change));
    return lines;
  }

  /** The same without what was edited: lines of text and shares. */
  List<String> effects(RecipeChange change) {
    List<String> lines = new ArrayList<>();
    change.effect().ifPresent(effect -> figures(effect, lines));
    lines.addAll(change.printed().facts());
    lines.addAll(CompareFindings.papers(change.printed(), change.effectOrNone().reprint()));
    return lines;
  }

  /** Whether a finding says it already, and no figure of before is to be told beside it. */
  private static boolean isFound(RecipeChange change, LimitMoved one) {
    String about = one.after().demand().about();
    return change.findings().fresh().stream()
        .anyMatch(found -> about.equals(found.subject() + " " + found.side()));
  }

  /** Whether limits of it are kept by a waiver alone that were not so before. */
  static boolean passesByWaiver(RecipeChange change) {
    return !change.effectOrNone().byWaiver().isEmpty();
  }

  /** {@code KG-33 passes only by a waiver: crude-fat min 5 %}. */
  static String byWaiver(RecipeChange change) {
    boolean passes = change.limits().filter(now -> now.broken() == 0).isPresent();
    return change.code()
        + (passes ? " passes only by a waiver: " : " breaks other limits, and by a waiver keeps ")
        + change.effectOrNone().byWaiver().stream()
            .map(one -> one.after().demand().lineNow())
            .collect(Collectors.joining(", "));
  }

  private static void grave(RecipeChange change, Effect effect, List<String> lines) {
    limits(change).ifPresent(told -> lines.add("limits: " + told));
    effect.broken().stream()
        .filter(one -> !change.isNew() || !isFound(change, one))
        .forEach(one -> lines.add("BROKEN " + limit(one)));
    if (!effect.untold().isEmpty()) {
      lines.add("CANNOT BE JUDGED" + anyMore(change) + ": " + untold(effect));
    }
    if (passesByWaiver(change)) {
      lines.add(byWaiver(change));
    }
    effect.label().forEach(one -> lines.add(label(one, change)));
    effect.prices().forEach(one -> lines.add("PRICE " + one));
    effect.tight().forEach(one -> lines.add("tight " + limit(one)));
    effect.met().forEach(one -> lines.add("met " + limit(one)));
    effect.waivers().forEach(one -> lines.add("waiver " + one));
    effect.bounds().forEach(one -> lines.add("limit " + one));
  }

  private void figures(Effect effect, List<String> lines) {
    List<String> shown =
        effect.moved().stream().filter(one -> !Slight.is(one)).map(CompareWords::moved).toList();
    some(shown, lines, "nutrients");
    int small = effect.moved().size() - shown.size();
    if (small > 0) {
      lines.add("and " + small + " of the nutrients by less than a thousandth");
    }
    some(elsewhere(effect), lines, "limits");
    weights(effect, lines);
  }

  /** Limits whose figure moved only where it is judged: by its spread, or in the store. */
  private static List<String> elsewhere(Effect effect) {
    Set<String> told = effect.moved().stream().map(Moved::nutrient).collect(Collectors.toSet());
    return effect.judged().stream()
        .filter(one -> !told.contains(one.after().subject()))
        .filter(one -> !one.after().subject().equals("cost"))
        .filter(one -> !Slight.is(one))
        .map(one -> "judged " + limit(one))
        .toList();
  }

  private void some(List<String> all, List<String> lines, String what) {
    CompareFindings.some(all, most, lines, what);
  }

  /** {@code crude-protein min 34 %: 34.30 -> 33.21}; one figure where it did not move. */
  static String limit(LimitMoved one) {
    Held then = one.before();
    Held now = one.after();
    boolean moved = !Closeness.same(then.shown(), now.shown());
    boolean same = then.told() && then.unit().symbol().equals(now.unit().symbol());
    if (moved && same) {
      Figures.Pair figures = pair(then.shown(), now.shown());
      return now.demand().lineNow()
          + ": "
          + then.certainty().sign()
          + figures.value()
          + " -> "
          + now.certainty().sign()
          + figures.other();
    }
    return now.demand().lineNow() + ": " + now.certainty().sign() + Figures.plain(now.shown());
  }

  static String untold(Effect effect) {
    return effect.untold().stream()
        .map(one -> one.after().demand().lineNow())
        .collect(Collectors.joining(", "));
  }

  /**
   * {@code 12 kept, 1 broken}: how the limits of a new feed stand; of others only what turned is
   * told.
   */
  static Optional<String> limits(RecipeChange change) {
    return change
        .limits()
        .filter(now -> change.isNew())
        .map(
            now ->
                now.kept()
                    + " kept, "
                    + now.broken()
                    + " broken"
                    + (now.untold() == 0 ? "" : ", " + now.untold() + " cannot be judged"));
  }

  /** Of a new feed nothing was otherwise before. */
  static String anyMore(RecipeChange change) {
    return change.isNew() ? "" : " any more";
  }

  /** What becomes of the label, in a cell of a table: whether it holds, or is printed anew. */
  static String labelCell(RecipeChange change) {
    Effect effect = change.effectOrNone();
    if (effect.breaksLabel()) {
      return label(change);
    }
    return CompareFindings.papers(change.printed(), effect.reprint()).stream()
            .anyMatch(line -> line.startsWith("label"))
        ? "print again"
        : "";
  }

  /** Whether the label holds. */
  static String label(RecipeChange change) {
    return change.isNew() ? "does not hold" : "holds no longer";
  }

  static String label(Claimed claim, RecipeChange change) {
    String sentence = claim.sentence();
    return switch (claim.outcome()) {
      case KEPT -> "label: " + sentence;
      case SPENDS -> "label takes of its tolerance: " + sentence;
      case CANNOT_TELL -> "label cannot be computed" + anyMore(change) + ": " + sentence;
      case BEYOND -> "LABEL " + label(change) + ": " + sentence;
      case NO_TOLERANCE -> "LABEL has no tolerance: " + sentence;
    };
  }

  private static String share(Shifted one) {
    return one.line()
        + " "
        + (one.before().isEmpty() ? "none" : one.before())
        + " -> "
        + (one.after().isEmpty() ? "none" : one.after());
  }

  private static String moved(Moved one) {
    Figures.Pair figures = nutrient(one);
    return one.nutrient()
        + " "
        + figures.value()
        + " -> "
        + figures.other()
        + " "
        + one.unit().symbol()
        + " ("
        + difference(one)
        + ")"
        + one.nearest().map(limit -> ", " + room(limit)).orElse("");
  }

  /** With as many decimals as the two figures show. */
  static String difference(Moved one) {
    double moved = one.unit().fromBase(one.after()) - one.unit().fromBase(one.before());
    return CompareMoney.signed(moved, nutrient(one).decimals());
  }

  static Figures.Pair nutrient(Moved one) {
    return pair(one.unit().fromBase(one.before()), one.unit().fromBase(one.after()));
  }

  /** {@code room 3.6 % to min 34 %}. */
  static String room(Held limit) {
    String part = Figures.fixed(Unit.PERCENT.fromBase(Math.abs(limit.room())), 1) + " %";
    return limit.keeps()
        ? "room " + part + " to " + limit.demand().askedNow()
        : part + " beyond " + limit.demand().askedNow();
  }

  private void weights(Effect effect, List<String> lines) {
    effect.loads().ifPresent(portions -> lines.add("weigh sheet: " + portions(portions)));
    List<WeightMoved> weights = effect.weights();
    if (!weights.isEmpty()) {
      String told =
          weights.stream().limit(most).map(CompareWords::weight).collect(Collectors.joining(", "));
      String more = weights.size() > most ? " and " + (weights.size() - most) + " more" : "";
      lines.add("weigh sheet, each load or round: " + told + more);
    }
  }

  static String portions(Portions portions) {
    return batch(portions.before()) + " -> " + batch(portions.after());
  }

  private static String batch(Weighings batch) {
    if (batch.each().isEmpty()) {
      return "none";
    }
    return Figures.plain(batch.kg())
        + " kg in "
        + Plural.of(batch.loads(), "load")
        + (batch.rounds() > 1 ? " and " + batch.rounds() + " rounds of the coater" : "");
  }

  private static String weight(WeightMoved one) {
    Figures.Pair kg = weights(one);
    return one.line() + " " + kg.value() + " -> " + kg.other() + " kg";
  }

  static Figures.Pair weights(WeightMoved one) {
    return Figures.apart(one.before(), one.after(), MASS_DECIMALS);
  }

  /** With four digits that count, and more where they would look alike. */
  private static Figures.Pair pair(double before, double after) {
    return Figures.apart(before, after, decimals(before, after));
  }

  private static int decimals(double before, double after) {
    double largest = Math.max(Math.abs(before), Math.abs(after));
    return Figures.decimals(Double.isFinite(largest) ? largest : 0);
  }
}
