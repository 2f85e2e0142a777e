package dev.pellucid.engine.site;

import static dev.pellucid.engine.site.Tables.cell;
import static dev.pellucid.engine.site.Tables.figure;
import static dev.pellucid.engine.site.Tables.figures;
import static dev.pellucid.engine.site.Tables.table;
import static dev.pellucid.engine.site.Tables.words;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.trend.BatchYield;
import dev.pellucid.engine.trend.History;
import dev.pellucid.engine.trend.YieldTotals;
import dev.pellucid.engine.trend.YieldTotals.Step;
import dev.pellucid.engine.trend.YieldTotals.Sum;
import j2html.tags.DomContent;
import j2html.tags.specialized.TrTag;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What came into the bags and what was lost, batch by batch and together. */
final class YieldTable {
  private static final int KG = 2;
  private static final int MONEY = 2;

  private YieldTable() {}

  /** Nothing where no batch tells it. */
  static List<DomContent> of(History history, String currency) {
    YieldTotals totals = history.yields();
    if (totals.last().isEmpty()) {
      return List.of();
    }
    List<TrTag> rows = new ArrayList<>();
    totals.steps().forEach(step -> rows.add(row(step)));
    rows.add(sum(totals.last().get()));
    List<DomContent> out = new ArrayList<>();
    out.add(h2("Yield and shrink"));
    out.add(
        p(
            "Planned is what a batch of its size was to fill. Shrink is what left the last machine,"
                + " by the dry matter of what was weighed and the last moisture, and came into no"
                + " bag; beyond the plan is the part of it that the shrink of the plant does not"
                + " cover, below zero where more came out. Money is what that feed was to cost."
                + (totals.unpriced() > 0
                    ? " The money leaves " + totals.unpriced() + " without all prices out."
                    : "")));
    out.add(
        table(
            List.of(
                words("Batch"),
                words("Day"),
                figures("Planned kg"),
                figures("In bags kg"),
                figures("Of plan %"),
                figures("Shrink kg"),
                figures("Planned shrink kg"),
                figures("Fines and samples kg"),
                figures("Beyond the plan kg"),
                figures("Beyond the plan " + currency),
                figures("Up to here " + currency)),
            rows));
    return out;
  }

  private static TrTag row(Step step) {
    BatchYield one = step.yields();
    return Tables.row(
        step.batch().number(),
        cell(step.batch().day().toString()),
        figure(kg(one.planned())),
        figure(kg(one.bagged())),
        figure(part(one.bagged(), one.planned())),
        figure(kg(one.shrink())),
        figure(kg(one.shrinkPlanned())),
        figure(kg(one.setAside())),
        figure(kg(one.beyond())),
        figure(money(one.moneyBeyond())),
        figure(money(OptionalDouble.of(step.money()))));
  }

  private static TrTag sum(Step last) {
    Sum all = last.all();
    TrTag row =
        Tables.row(
            "Together",
            cell(""),
            figure(kg(all.planned())),
            figure(kg(all.bagged())),
            figure(part(all.bagged(), all.planned())),
            figure(kg(all.shrink())),
            figure(kg(all.shrinkPlanned())),
            figure(kg(all.setAside())),
            figure(kg(all.beyond())),
            figure(money(OptionalDouble.of(last.money()))),
            figure(""));
    return row.withClass("sum");
  }

  private static String kg(double kg) {
    return Figures.fixed(kg, KG);
  }

  private static String part(double one, double of) {
    return of > 0 ? Figures.fixed(one / of * 100, 1) : "";
  }

  private static String money(OptionalDouble money) {
    return money.isPresent() ? Figures.fixed(money.getAsDouble(), MONEY) : "no price";
  }
}
