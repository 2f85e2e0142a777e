package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FeedPlan.Planned;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What can hardly be so in a plan: a feed twice for one day, and a quantity that is ten times off,
 * by what is made of it in a month, else by the other feeds.
 */
final class PlanChecks {
  /** So many months of a feed nobody plans at once, nor so small a part; common practice. */
  private static final double MONTHS = 6;

  private static final double PART = 0.005;

  /** So many times all others are no plan of one mill; common practice, no source. */
  private static final double TIMES = 20;

  private static final double TONNE = 1000;

  private final Settings settings;
  private final List<Planned> feeds;
  private final Remarks remarks;

  private PlanChecks(Settings settings, List<Planned> feeds, Remarks remarks) {
    this.settings = settings;
    this.feeds = feeds;
    this.remarks = remarks;
  }

  static void look(Settings settings, List<Planned> feeds, Remarks remarks) {
    PlanChecks checks = new PlanChecks(settings, feeds, remarks);
    checks.twice();
    feeds.forEach(checks::quantity);
  }

  private void twice() {
    Map<String, Span> seen = new HashMap<>();
    for (Planned one : feeds) {
      Span earlier = seen.putIfAbsent(one.recipe() + " " + one.by(), one.place());
      if (earlier != null) {
        remarks.add(PlanFindings.twice(one.place(), one.recipe(), earlier));
      }
    }
  }

  private void quantity(Planned one) {
    OptionalDouble month = settings.tonnesPerMonth(one.recipe());
    double tonnes = one.kg() / TONNE;
    if (month.isPresent()) {
      boolean far = tonnes > MONTHS * month.getAsDouble() || tonnes < PART * month.getAsDouble();
      if (far) {
        remarks.add(
            PlanFindings.farFromMonth(
                one.quantity(), one.recipe(), told(one.kg()), told(month.getAsDouble() * TONNE)));
      }
      return;
    }
    double most = 0;
    for (Planned other : feeds) {
      most = other.recipe().equals(one.recipe()) ? most : Math.max(most, other.kg());
    }
    if (most > 0 && one.kg() > TIMES * most) {
      remarks.add(
          PlanFindings.farFromOthers(one.quantity(), one.recipe(), told(one.kg()), told(most)));
    }
  }

  private static String told(double kg) {
    return Figures.plain(kg, kg < TONNE ? Unit.KG : Unit.T);
  }
}
