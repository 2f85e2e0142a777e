package dev.pellucid.engine.records;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Ordering;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Consumer;

/** A pack that is larger than all that ever came of its ingredient in one delivery. */
final class PackOff {
  static final Code CODE = new Code("pack-above-deliveries");

  private PackOff() {}

  static void look(FeedTables tables, LocalDate day, Consumer<Finding> out) {
    for (String ingredient : tables.ordering().keySet()) {
      Optional<Ordering> told =
          tables.ordering(ingredient, day).filter(one -> one.pack().isPresent());
      Optional<Lot> largest =
          tables.lots().values().stream()
              .filter(lot -> lot.ingredient().equals(ingredient))
              .max(Comparator.comparing(Lot::kg));
      if (told.isPresent() && largest.isPresent()) {
        look(told.get(), largest.get()).ifPresent(out);
      }
    }
  }

  private static Optional<Finding> look(Ordering told, Lot largest) {
    double pack = told.pack().orElseThrow();
    if (!Closeness.isAbove(pack, largest.kg())) {
      return Optional.empty();
    }
    Optional<Double> meant = TenTimes.moved(pack, 0, largest.kg());
    Finding finding =
        Finding.warning(
                CODE,
                told.packAt(),
                "a pack of "
                    + told.ingredient()
                    + " is "
                    + Figures.plain(pack, Unit.KG)
                    + ", and no delivery of it was above "
                    + Figures.plain(largest.kg(), Unit.KG))
            .seeing("the largest delivery", largest.weighed());
    return Optional.of(
        finding
            .helping(
                meant
                    .map(kg -> Meant.question(Figures.plain(kg, Unit.KG)))
                    .orElse("look for a slipped decimal point or a wrong unit"))
            .helping("if it is sold by larger packs now, leave it until the first has come"));
  }
}
