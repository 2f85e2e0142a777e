package dev.pellucid.engine.site;

import static dev.pellucid.engine.site.Tables.cell;
import static dev.pellucid.engine.site.Tables.figure;
import static dev.pellucid.engine.site.Tables.figures;
import static dev.pellucid.engine.site.Tables.table;
import static dev.pellucid.engine.site.Tables.words;
import static j2html.TagCreator.p;

import dev.pellucid.engine.account.Account;
import dev.pellucid.engine.account.Account.Content;
import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.compare.FeedFigures;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.site.FeedView.Past;
import dev.pellucid.measure.Closeness;
import j2html.tags.DomContent;
import j2html.tags.specialized.TrTag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/** The figures of a feed in earlier states: its cost, and what of the limited nutrients moved. */
final class PastFigures {
  private static final int MONEY = 4;
  private static final int MOST = 6;

  private PastFigures() {}

  /**
   * A picture and a table.
   *
   * @param past the newest first
   */
  static List<DomContent> of(FeedFigures now, List<Past> past, String currency) {
    if (past.isEmpty()) {
      return List.of(p("No other figures in the commits that were looked at."));
    }
    List<Past> states = new ArrayList<>();
    states.add(new Past("now", "", now));
    states.addAll(past);
    List<Double> costs = new ArrayList<>();
    states.forEach(state -> costs.add(0, state.figures().account().costPerKg()));
    List<String> told = moving(states);
    List<Tables.Head> heads = new ArrayList<>();
    heads.add(words("State"));
    heads.add(words("Day"));
    heads.add(figures("Cost " + currency + "/kg"));
    told.forEach(name -> heads.add(figures(name + " " + unit(now, name))));
    return List.of(
        Charts.course("Cost of a kg, the oldest left", costs),
        table(
            "States with other figures, and those of the limited nutrients that moved most",
            heads,
            states.stream().map(state -> row(state, told))));
  }

  private static TrTag row(Past state, List<String> told) {
    TrTag cells =
        Tables.row(
            state.name(),
            cell(state.day()),
            figure(Figures.fixed(state.figures().account().costPerKg(), MONEY)));
    for (String name : told) {
      double content = told(state, name).map(Content::figure).orElse(0.0);
      cells.with(figure(Figures.plain(content)));
    }
    return cells;
  }

  private static Optional<Content> told(Past state, String nutrient) {
    return state.figures().account().told(nutrient);
  }

  private static String unit(FeedFigures figures, String nutrient) {
    return figures.account().told(nutrient).map(one -> one.unit().symbol()).orElse("");
  }

  private static List<String> moving(List<Past> states) {
    Account now = states.get(0).figures().account();
    return now.limits().values().stream()
        .map(Held::subject)
        .filter(name -> now.told(name).isPresent())
        .distinct()
        .filter(name -> moved(states, name) > Closeness.PART)
        .sorted(Comparator.comparingDouble((String name) -> moved(states, name)).reversed())
        .limit(MOST)
        .toList();
  }

  /** From the least to the most, as a part of the most. */
  private static double moved(List<Past> states, String nutrient) {
    DoubleSummaryStatistics values =
        states.stream()
            .mapToDouble(state -> told(state, nutrient).map(Content::base).orElse(0.0))
            .summaryStatistics();
    return values.getMax() > 0 ? (values.getMax() - values.getMin()) / values.getMax() : 0;
  }
}
