package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A premix at another share of the feed than its dose: all that it supplies goes up or down with
 * it. A warning, since the limits judge the figures that come of it.
 */
final class PremixOffDose implements Rule {
  private static final Code CODE = new Code("premix-off-dose");
  private static final double CLOSE = 1e-6;
  private static final int NAMED = 3;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isCause() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Map<String, Supplied.Used> together = new LinkedHashMap<>();
    for (Supplied.Used used : Supplied.premixes(recipe.recipe())) {
      together.merge(used.premix().code(), used, PremixOffDose::plus);
    }
    for (Supplied.Used used : together.values()) {
      Optional<Double> times = used.times();
      if (times.isPresent() && Math.abs(times.get() - 1) > CLOSE) {
        out.accept(finding(used));
      }
    }
  }

  private static Supplied.Used plus(Supplied.Used one, Supplied.Used other) {
    return new Supplied.Used(
        one.line(), one.premix(), one.share().plus(other.share()), one.direct());
  }

  private static Finding finding(Supplied.Used used) {
    ResolvedPremix premix = used.premix();
    Share dose = premix.dose().orElseThrow();
    String code = premix.code();
    Finding finding =
        Finding.warning(
                CODE,
                used.direct() ? used.line().figure() : used.line().name(),
                code + " is at " + percent(used.share()) + ", its dose is " + percent(dose))
            .seeing("premix written", premix.declared());
    if (!premix.supplies().isEmpty()) {
      finding = finding.noting("it supplies " + supplies(used));
    }
    return finding
        .helping(
            used.direct()
                ? "bring it to "
                    + percent(dose)
                    + ", or make a premix with dose "
                    + Figures.plain(used.share().kgPer100() * 10)
                    + " g/kg"
                : "it comes with " + used.line().material().name() + ": change its share there")
        .about(new About(code, About.Side.NONE, List.of(used.line().material().name())));
  }

  private static String supplies(Supplied.Used used) {
    List<ResolvedPremix.Supply> all = used.premix().supplies();
    String named =
        all.stream()
            .limit(NAMED)
            .map(one -> new Supplied(used.line(), used.premix(), used.times().orElse(1.0), one))
            .map(
                one ->
                    one.supply().nutrient().name()
                        + " "
                        + one.told(one.amount())
                        + " instead of "
                        + one.supply().written().amount().asWritten())
            .collect(Collectors.joining(", "));
    return all.size() > NAMED ? named + " and so on" : named;
  }

  private static String percent(Share share) {
    return share.percent().precision() > 6
        ? Figures.plain(share.kgPer100()) + " %"
        : share.toString();
  }
}
