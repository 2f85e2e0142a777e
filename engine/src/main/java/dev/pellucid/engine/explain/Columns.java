package dev.pellucid.engine.explain;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.quantity.Remainders;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Takes many figures of a feed apart at once, each only as far as lines and what they bring. */
public final class Columns {
  private static final Comparator<Share> LARGEST_FIRST =
      Comparator.comparingDouble(Share::amount).reversed();

  /** From here on the percent that is left reads 100.0. */
  private static final double ALL = 99.95;

  private final ComputedFeed feed;
  private final List<LimitStatus> limits;
  private final String currency;
  private final Readings readings;

  private Columns(ComputedFeed feed, List<LimitStatus> limits, String currency) {
    this.feed = feed;
    this.limits = limits;
    this.currency = currency;
    this.readings = new Readings(feed);
  }

  /** What a line brings in 100 kg of recipe. */
  private record Share(String line, String title, double amount, String kept) {}

  /**
   * A column for each figure to which something is brought; of a ratio one for each of its sums.
   *
   * @param limits on what there is a column, in their order, and one for the cost
   */
  public static List<Column> of(ComputedFeed feed, List<LimitStatus> limits, String currency) {
    Map<String, Subject> sums = new LinkedHashMap<>();
    for (LimitStatus limit : limits) {
      for (Subject sum : sums(limit.limit().subject())) {
        sums.putIfAbsent(sum.text(), sum);
      }
    }
    Subject money = new Subject.Cost();
    sums.putIfAbsent(money.text(), money);
    Columns columns = new Columns(feed, limits, currency);
    List<Column> all = new ArrayList<>();
    for (Subject sum : sums.values()) {
      Column column = columns.of(sum);
      if (!column.cells().isEmpty()) {
        all.add(column);
      }
    }
    return all;
  }

  private static List<Subject> sums(Subject subject) {
    return subject.byKind(
        sum -> List.of(sum),
        ratio -> List.of(ratio.over(), ratio.under()),
        inclusion -> List.of(inclusion),
        cost -> List.of(cost));
  }

  private Column of(Subject sum) {
    return sum.byKind(
        this::nutrients,
        ratio -> {
          throw new IllegalArgumentException("a ratio is no sum: " + ratio.text());
        },
        this::inclusion,
        cost -> cost());
  }

  private Column nutrients(Subject.Nutrients sum) {
    Unit unit = sum.nutrients().get(0).unit();
    double finished = feed.balances().expected().finished();
    List<Share> shares = shares(sum);
    List<Double> exact = new ArrayList<>();
    for (Share share : shares) {
      exact.add(unit.fromBase(share.amount() / finished));
    }
    double whole = readings.at(sum, new Basis.AsFed(), Scenario.EXPECTED).value();
    return column(sum, unit.symbol(), unit.fromBase(whole), shares, exact);
  }

  private List<Share> shares(Subject.Nutrients sum) {
    List<Share> shares = new ArrayList<>();
    for (Row row : feed.rows()) {
      if (row.kg(Scenario.RICHEST) > 0) {
        double amount = 0;
        double full = 0;
        for (Nutrient one : sum.nutrients()) {
          if (!Explainer.isMoisture(one) || feed.keepsItsWater(row)) {
            amount += row.amount(Scenario.EXPECTED, one.index());
            full += row.composition().expected().at(one.index()) * row.kg();
          }
        }
        if (amount > 0) {
          shares.add(new Share(line(row), title(row), amount, kept(amount, full)));
        }
      }
    }
    if (sum.nutrients().stream().anyMatch(Explainer::isMoisture)) {
      for (Brought step : new Water(feed).brought()) {
        shares.add(new Share(step.line(), step.line(), step.amount(), step.kept()));
      }
    }
    shares.sort(LARGEST_FIRST);
    return shares;
  }

  private static String kept(double amount, double full) {
    double percent = full > 0 ? amount / full * 100 : 100;
    return percent < ALL ? Figures.visible(percent, 1) : "";
  }

  private Column inclusion(Subject.Inclusion inclusion) {
    List<Share> shares = new ArrayList<>();
    for (Row row : feed.rows()) {
      if (row.kg(Scenario.RICHEST) > 0 && Readings.isOneOf(row, inclusion.names())) {
        shares.add(new Share(line(row), title(row), row.kg(), ""));
      }
    }
    return plain(inclusion, "%", shares, 1);
  }

  private Column cost() {
    List<Share> shares = new ArrayList<>();
    for (Row row : feed.rows()) {
      if (row.kg(Scenario.RICHEST) > 0) {
        shares.add(new Share(line(row), title(row), row.money(), ""));
      }
    }
    return plain(new Subject.Cost(), currency + "/kg", shares, feed.bagged());
  }

  private Column plain(Subject subject, String unit, List<Share> shares, double over) {
    shares.sort(LARGEST_FIRST);
    double whole = 0;
    List<Double> exact = new ArrayList<>();
    for (Share share : shares) {
      whole += share.amount();
      exact.add(share.amount() / over);
    }
    return column(subject, unit, whole / over, shares, exact);
  }

  private Column column(
      Subject subject, String unit, double whole, List<Share> shares, List<Double> exact) {
    BigDecimal total = Explainer.digits(whole);
    List<BigDecimal> brings = Remainders.out(exact, total);
    List<Column.Cell> cells = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      if (brings.get(i).signum() != 0) {
        Share share = shares.get(i);
        cells.add(
            new Column.Cell(
                share.line(), share.title(), brings.get(i).toPlainString(), share.kept()));
      }
    }
    return new Column(subject.title(), unit, total.toPlainString(), cells, held(subject));
  }

  /** In the unit of the limit, as it is asked. */
  private List<Column.Held> held(Subject subject) {
    List<Column.Held> held = new ArrayList<>();
    for (LimitStatus one : limits) {
      if (one.limit().subject().text().equals(subject.text())
          && Double.isFinite(one.verdict().judged())) {
        held.add(
            new Column.Held(
                one.limit().side() == Bound.Side.MIN,
                Margin.of(one).inWords(one.limit().inBatches().isPresent()),
                one.limit().demand().askedNow()));
      }
    }
    return held;
  }

  /** A premix is known by its code, an ingredient by what it is called. */
  private static String title(Row row) {
    List<String> path = new ArrayList<>(row.path());
    path.set(path.size() - 1, row.ingredient().title());
    return String.join(" > ", path);
  }

  private static String line(Row row) {
    return String.join(" > ", row.path());
  }
}
