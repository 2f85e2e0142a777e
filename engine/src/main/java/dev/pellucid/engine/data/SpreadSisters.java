package dev.pellucid.engine.data;

import dev.pellucid.engine.data.MeantContent.Written;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Spreads between lots beside those of the nutrients that stand in one file of nutrients. */
final class SpreadSisters {
  private static final int ENOUGH = 5;
  private static final double TIMES = 3.5;

  private final Nutrients nutrients;
  private final Remarks remarks;
  private final Map<String, List<Spread>> byFile = new LinkedHashMap<>();

  SpreadSisters(Nutrients nutrients, Remarks remarks) {
    this.nutrients = nutrients;
    this.remarks = remarks;
  }

  private record Spread(String nutrient, Scalar written, double share) {}

  void add(String name, Scalar written, double share) {
    Optional<Nutrient> nutrient = nutrients.named(name);
    if (nutrient.isPresent() && share > 0) {
      String file = nutrient.get().declared().file().path();
      byFile
          .computeIfAbsent(file, first -> new ArrayList<>())
          .add(new Spread(name, written, share));
    }
  }

  /** Says which are far from the middle of the others. */
  void look() {
    for (List<Spread> sisters : byFile.values()) {
      if (sisters.size() >= ENOUGH) {
        double middle = middle(sisters);
        for (Spread one : sisters) {
          if (one.share() > middle * TIMES || one.share() * TIMES < middle) {
            say(one, middle);
          }
        }
      }
    }
  }

  private static double middle(List<Spread> sisters) {
    double[] shares = new double[sisters.size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = sisters.get(i).share();
    }
    Arrays.sort(shares);
    return shares[shares.length / 2];
  }

  private void say(Spread one, double middle) {
    Optional<Written> read = Written.of(one.written().text());
    Optional<String> meant =
        read.isPresent()
            ? MeantContent.of(
                read.get(), Unit.PERCENT, share -> share < middle * TIMES && share * TIMES > middle)
            : Optional.empty();
    remarks.add(
        Finding.warning(
                Common.CODE,
                one.written().span(),
                one.nutrient()
                    + " varies by "
                    + one.written().text()
                    + " between lots, nutrients of its kind by about "
                    + Figures.plain(middle, Unit.PERCENT))
            .helping(
                meant.isPresent()
                    ? Meant.question(meant.get())
                    : "look for a slipped decimal point"));
  }
}
