package dev.pellucid.engine.report;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CompareGoal;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Advice.AtBound;
import dev.pellucid.engine.leastcost.Advice.Change;
import dev.pellucid.engine.leastcost.Advice.Costs;
import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Advice.Rung;
import dev.pellucid.engine.leastcost.Advice.Standing;
import dev.pellucid.engine.leastcost.Bought;
import dev.pellucid.engine.leastcost.Care;
import dev.pellucid.engine.leastcost.Contradiction;
import dev.pellucid.engine.leastcost.Reasons;
import dev.pellucid.engine.leastcost.Refusal;
import dev.pellucid.engine.leastcost.Week;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.TextEdit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Advices put together by hand on a recipe of the example, so that what is shown of them is tested
 * whatever an answer would be today.
 */
public final class Advices {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String PATH = "catfish/CG-36.recipe";
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final Texts texts;
  private final RuleContext recipe;

  public Advices() {
    try {
      texts = Texts.at(Example.whole()).held();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    recipe =
        Streamed.judged(Shared.of(ReadFolder.of(texts), Days.on(DAY)), PATH).recipe().orElseThrow();
  }

  /** Three lines move, with every reason there can be. */
  public LeastCostTold cheaper() {
    Change change = change();
    Comparison compared =
        CompareGoal.of(
                texts,
                texts.over(Map.of(PATH, change.after())),
                PrintedPaths.BELOW_FOLDER,
                DAY,
                "compare.html")
            .comparison();
    return new LeastCostTold(
        advice(
            Standing.CHEAPER,
            "",
            Optional.of(costs(0.6141)),
            lines(),
            List.of(rung()),
            reasons(),
            care(),
            change,
            Optional.empty()),
        compared.changes().stream().findFirst(),
        bought());
  }

  public LeastCostTold notWorth() {
    return told(
        advice(
            Standing.NOT_WORTH,
            "a change must save 2.00 EUR/t",
            Optional.of(costs(0.6215)),
            lines(),
            List.of(),
            Reasons.NONE,
            Care.NONE,
            unchanged(),
            Optional.empty()));
  }

  public LeastCostTold unmet() {
    Contradiction.Member law =
        new Contradiction.Member(
            Optional.of(requirement("selenium")),
            Optional.empty(),
            Bound.Side.MAX,
            "selenium at most 0.5 mg/kg, law of EU",
            Optional.of(limit("selenium").limit().origin().span()));
    Contradiction.Member protein =
        new Contradiction.Member(
            Optional.of(requirement("crude-protein")),
            Optional.empty(),
            Bound.Side.MIN,
            "crude-protein at least 44 % in 95 % of batches",
            Optional.of(limit("crude-protein").limit().origin().span()));
    return told(
        advice(
            Standing.UNMET,
            "two limits contradict each other",
            Optional.of(costs(0.6227)),
            List.of(),
            List.of(),
            Reasons.NONE,
            Care.NONE,
            unchanged(),
            Optional.of(
                new Contradiction(
                    List.of(law, protein),
                    Optional.of(
                        new Contradiction.Reach("crude-protein", Unit.PERCENT, 31.2, 38.6, 44)),
                    List.of(
                        new Contradiction.Loosening(
                            "within of fish-meal-65 up to 28.4 %",
                            Optional.of(recipe.recipe().lines().get(0).name())),
                        new Contradiction.Loosening(
                            "crude-protein of the recipe down to 38.6 %", protein.place()))))));
  }

  /** No member may be loosened. */
  public LeastCostTold unmetByLaw() {
    Contradiction.Member law =
        new Contradiction.Member(
            Optional.of(requirement("selenium")),
            Optional.empty(),
            Bound.Side.MAX,
            "selenium at most 0.5 mg/kg, law of EU",
            Optional.of(limit("selenium").limit().origin().span()));
    return told(
        advice(
            Standing.UNMET,
            "it cannot keep the law",
            Optional.of(costs(0.6227)),
            List.of(),
            List.of(),
            Reasons.NONE,
            Care.NONE,
            unchanged(),
            Optional.of(new Contradiction(List.of(law), Optional.empty(), List.of()))));
  }

  public LeastCostTold refused() {
    return told(
        advice(
            Standing.CHEAPEST,
            "",
            Optional.of(costs(0.6227)),
            lines().stream()
                .map(
                    one ->
                        new LineMove(
                            one.name(),
                            one.now(),
                            one.now(),
                            one.low(),
                            one.high(),
                            AtBound.BETWEEN,
                            false))
                .toList(),
            List.of(),
            Reasons.NONE,
            care(),
            unchanged(),
            Optional.empty()));
  }

  public LeastCostTold notAsked() {
    return told(
        advice(
            Standing.NOT_ASKED,
            PATH + ":14:3: soybean-meal-48 has no price on 2026-11-25",
            Optional.empty(),
            List.of(),
            List.of(),
            Reasons.NONE,
            Care.NONE,
            unchanged(),
            Optional.empty()));
  }

  public List<LeastCostTold> all() {
    return List.of(notAsked(), unmet(), notWorth(), cheaper());
  }

  public Week week() {
    LeastCostTold told = cheaper();
    return Week.of(
        List.of(
            new Week.Feed("CG-36", OptionalDouble.of(4), 8.6, told.bought()),
            new Week.Feed("CG-37", OptionalDouble.empty(), 2.5, told.bought())));
  }

  private static LeastCostTold told(Advice advice) {
    return new LeastCostTold(advice, Optional.empty(), List.of());
  }

  private static Advice advice(
      Standing standing,
      String why,
      Optional<Costs> costs,
      List<LineMove> lines,
      List<Rung> ladder,
      Reasons reasons,
      Care care,
      Change change,
      Optional<Contradiction> conflict) {
    return new Advice(
        "CG-36",
        "African catfish grower, 4 mm",
        PATH,
        standing,
        why,
        costs,
        lines,
        ladder,
        reasons,
        care,
        change,
        conflict);
  }

  private static Costs costs(double then) {
    return new Costs(0.6227, then, then - 0.00004, OptionalDouble.of(4), Optional.empty());
  }

  private static List<LineMove> lines() {
    return List.of(
        free("fish-meal-65", 15, 14, 10, 20, AtBound.BETWEEN),
        free("soybean-meal-48", 44, 48, 30, 48, AtBound.HIGHEST),
        free("maize", 14, 14, 10, 25, AtBound.BETWEEN),
        free("wheat-middlings", 21.18, 18.18, 10, 30, AtBound.BETWEEN),
        fixed("dicalcium-phosphate", 0.8),
        fixed("salt", 0.3),
        fixed("mixed-tocopherols", 0.02),
        new LineMove("poultry-meal-60", 0, 0.5, OptionalDouble.of(0), NONE, AtBound.BETWEEN, true));
  }

  private static LineMove free(
      String name, double now, double then, double low, double high, AtBound bound) {
    return new LineMove(
        name, now, then, OptionalDouble.of(low), OptionalDouble.of(high), bound, false);
  }

  private static LineMove fixed(String name, double now) {
    return new LineMove(name, now, now, NONE, NONE, AtBound.BETWEEN, false);
  }

  private Rung rung() {
    return new Rung(
        List.of(
            free("soybean-meal-48", 44, 45.5, 30, 48, AtBound.BETWEEN),
            free("wheat-middlings", 21.18, 19.68, 10, 30, AtBound.BETWEEN)),
        0.6192,
        unchanged());
  }

  private Reasons reasons() {
    return new Reasons(
        List.of(
            limit("crude-protein", Unit.PERCENT, 34, 1, 8.4, 33, 35, false, Bound.Side.MIN),
            limit("selenium", Unit.MG_PER_KG, 0.5, 0.1, 1.25, 0.46, 0.5, true, Bound.Side.MAX)),
        List.of(
            new Reasons.FigureMove("starch", "Starch", Unit.PERCENT, 18.24, 16.9),
            new Reasons.FigureMove("gross-energy", "Gross energy", Unit.MJ_PER_KG, 17.61, 17.6)),
        List.of(
            value("poultry-meal-60", 1.01, OptionalDouble.of(0.88), 0.5, 4.2),
            value("fish-meal-65", 1.62, OptionalDouble.of(1.62), 14, 14),
            new Reasons.IngredientValue(
                "feather-meal", 0.74, OptionalDouble.of(0.62), 0, 3.1, List.of(refusal())),
            value("insect-meal-52", 0.91, OptionalDouble.of(2.4), 0, 2.5),
            value("blood-meal", 0.66, NONE, 0, 1)),
        List.of(
            new Reasons.PriceRange("fish-meal-65", 1.62, 1.38, 1.81),
            new Reasons.PriceRange("maize", 0.24, 0, Double.POSITIVE_INFINITY)),
        Optional.of(sweep()),
        Optional.of(
            new Reasons.Next(
                0.6160,
                List.of("brewers-yeast"),
                List.of("maize"),
                List.of(
                    free("maize", 14, 0, 0, 25, AtBound.LOWEST),
                    free("brewers-yeast", 0, 14, 0, 20, AtBound.BETWEEN)))),
        List.of(new Reasons.SharePrice("soybean-meal-48", Bound.Side.MAX, 48, 1.12, 47, 49.5)));
  }

  private static Reasons.Sweep sweep() {
    return new Reasons.Sweep(
        "fish-meal-65",
        "EUR/kg",
        List.of(
            new Reasons.Sweep.Point(1.2, OptionalDouble.of(0.5702), 20),
            new Reasons.Sweep.Point(1.5, OptionalDouble.of(0.6003), 15.2),
            new Reasons.Sweep.Point(1.8, OptionalDouble.of(0.6251), 11),
            new Reasons.Sweep.Point(2.1, OptionalDouble.of(0.6377), 10),
            new Reasons.Sweep.Point(2.4, NONE, 0)),
        List.of(
            new Reasons.Sweep.Turn(1.38, "lysine min", true),
            new Reasons.Sweep.Turn(1.81, "fish-meal-65 within min", true)));
  }

  private static Reasons.IngredientValue value(
      String name, double worth, OptionalDouble price, double share, double comesIn) {
    return new Reasons.IngredientValue(name, worth, price, share, comesIn, List.of());
  }

  private Reasons.LimitPrice limit(
      String name,
      Unit unit,
      double bound,
      double step,
      double perTonne,
      double from,
      double to,
      boolean onAverageOnly,
      Bound.Side side) {
    return new Reasons.LimitPrice(
        requirement(name), name, unit, bound, step, perTonne, from, to, onAverageOnly, side, false);
  }

  private Requirement requirement(String subject) {
    return Requirement.OfLimit.judged(limit(subject).limit());
  }

  private LimitStatus limit(String subject) {
    return recipe.limits().stream()
        .filter(one -> one.limit().subject().text().equals(subject))
        .findFirst()
        .orElseThrow();
  }

  private static Refusal refusal() {
    return new Refusal(
        "feather-meal",
        "ingredients/feather-meal.yaml",
        "it does not tell a cap for african-catfish");
  }

  private static Care care() {
    return new Care(
        OptionalDouble.of(0.8642),
        Optional.of("crude-protein min (CG-36)"),
        List.of("selenium max (eu-other-fish)"),
        Map.of("from-memory", 212, "published", 61, "invented", 4),
        OptionalInt.of(24),
        37,
        Optional.empty(),
        List.of(refusal()),
        List.of("crude-protein is declared at 35.5 % and would be 36.1 %"));
  }

  private static List<Bought> bought() {
    return List.of(
        new Bought("soybean-meal-48", 463.2, 505.3),
        new Bought("wheat-middlings", 223.0, 191.4),
        new Bought("fish-meal-65", 157.9, 147.4));
  }

  private Change unchanged() {
    SourceFile source = recipe.recipe().source();
    return new Change(List.of(), source, source.text());
  }

  private Change change() {
    SourceFile source = recipe.recipe().source();
    List<TextEdit> edits =
        List.of(
            edit(source, "15.00 %      within", "14.00 %      within"),
            edit(source, "44.00 %", "48.00 %"));
    String after = source.text();
    for (TextEdit edit : edits) {
      after = after.replace(edit.span().text(), edit.replacement());
    }
    return new Change(edits, source, after);
  }

  private static TextEdit edit(SourceFile source, String from, String to) {
    int start = source.text().indexOf(from);
    return new TextEdit(source.span(start, start + from.length()), to);
  }
}
