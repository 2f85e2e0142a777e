package dev.pellucid.engine.explain;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Losses;
import dev.pellucid.engine.compute.Losses.Loss;
import dev.pellucid.engine.compute.Losses.Warmth;
import dev.pellucid.engine.compute.Losses.Way;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Retention;
import dev.pellucid.engine.explain.Worked.Head;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What heat and storage leave of a nutrient, a table for each way that it comes by. */
final class LossTables {
  private static final int DECIMALS = 2;

  private LossTables() {}

  /**
   * @param rows that bring something of it
   */
  static List<Worked> of(
      ComputedFeed feed, List<Nutrient> nutrients, List<Row> rows, Practice practice) {
    Map<String, Ways> ways = new LinkedHashMap<>();
    for (Nutrient nutrient : nutrients) {
      for (Row row : rows) {
        Optional<Way> way = Losses.of(feed, row, nutrient, practice);
        if (way.isPresent() && row.amount(Scenario.RICHEST, nutrient.index()) > 0) {
          Way one = way.get();
          String key =
              nutrient.name() + one.stability().stability() + row.line().place() + one.premixes();
          ways.computeIfAbsent(key, any -> new Ways(nutrient, one, new ArrayList<>()))
              .lines()
              .add(String.join(" > ", row.path()));
        }
      }
    }
    return ways.values().stream().map(LossTables::table).toList();
  }

  /** A way, and what comes by it. */
  private record Ways(Nutrient nutrient, Way way, List<String> lines) {}

  private static Worked table(Ways ways) {
    Way way = ways.way();
    List<List<String>> rows = new ArrayList<>();
    for (Loss loss : way.losses()) {
      rows.add(
          List.of(
              where(loss),
              at(loss),
              percent(loss.kept().expected()),
              percent(loss.kept().poorest()),
              percent(loss.kept().richest()),
              told(way.stability(), loss)));
    }
    rows.add(
        List.of(
            "Kept",
            "",
            percent(way.kept(Scenario.EXPECTED)),
            percent(way.kept(Scenario.POOREST)),
            percent(way.kept(Scenario.RICHEST)),
            "the product of the steps, rounded"));
    return new Worked(
        "What is kept of "
            + ways.nutrient().name()
            + " in "
            + String.join(", ", ways.lines())
            + ": "
            + way.stability().stability(),
        List.of(
            Head.ofWords("Step"),
            Head.ofWords("At"),
            Head.ofFigures("On target, fresh %"),
            Head.ofFigures("Poorest %"),
            Head.ofFigures("Richest %"),
            Head.ofWords("Given there")),
        rows,
        true,
        List.of(
            "Given at "
                + way.stability().declared().place()
                + ", source "
                + RowContents.source(way.stability().source())
                + ". Between two temperatures it is read on the straight line; below the coolest"
                + " that row counts."));
  }

  private static String where(Loss loss) {
    return loss.premix().map(code -> code + ", ").orElse("") + loss.step().word();
  }

  private static String at(Loss loss) {
    String time =
        loss.time().hours().isPresent()
            ? Figures.plain(loss.time().hours().getAsDouble(), Unit.DAY) + " at "
            : "";
    return time + loss.warmth().map(LossTables::warm).orElse("no temperature");
  }

  private static String warm(Warmth warmth) {
    return warmth.coolest() == warmth.hottest()
        ? Figures.plain(warmth.aim(), Unit.CELSIUS)
        : Figures.plain(warmth.coolest())
            + " to "
            + Figures.plain(warmth.hottest(), Unit.CELSIUS)
            + ", aim "
            + Figures.plain(warmth.aim());
  }

  private static String told(Retention stability, Loss loss) {
    if (!loss.told() || loss.warmth().isEmpty()) {
      return "nothing is given: none is left at the poorest, all at the richest";
    }
    Warmth warmth = loss.warmth().get();
    if (loss.time().hours().isEmpty()) {
      List<Retention.Row> rows = stability.bySteps().getOrDefault(loss.step(), List.of());
      return rows(rows, warmth);
    }
    return rows(stability.storage(), warmth)
        + " a month; "
        + Figures.plain(loss.time().hours().getAsDouble(), Unit.MONTH);
  }

  /** The rows that are read: those from the one below the coolest to the one above the hottest. */
  private static String rows(List<Retention.Row> rows, Warmth warmth) {
    int from = 0;
    int to = rows.size() - 1;
    while (from < to && rows.get(from + 1).temperature() <= warmth.coolest()) {
      from++;
    }
    while (to > from && rows.get(to - 1).temperature() >= warmth.hottest()) {
      to--;
    }
    List<String> words = new ArrayList<>();
    for (Retention.Row row : rows.subList(from, to + 1)) {
      words.add(
          Figures.plain(row.temperature(), Unit.CELSIUS)
              + ": "
              + Figures.plain(row.keeps(), Unit.PERCENT));
    }
    return String.join(", ", words);
  }

  private static String percent(double part) {
    return Figures.fixed(part * 100, DECIMALS);
  }
}
