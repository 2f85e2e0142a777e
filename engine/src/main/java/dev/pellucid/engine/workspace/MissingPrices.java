package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.data.Price;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An ingredient without a price in several feeds: told once, at the newest file of prices, where a
 * person must go.
 */
final class MissingPrices {
  private MissingPrices() {}

  /** The same findings with those of one ingredient as one. */
  static List<Finding> fold(Shared shared, List<Finding> findings) {
    Map<String, List<Finding>> without = new LinkedHashMap<>();
    List<Finding> told = new ArrayList<>();
    for (Finding finding : findings) {
      if (finding.code().equals(Rules.UNPRICED)) {
        without.computeIfAbsent(finding.about().subject(), none -> new ArrayList<>()).add(finding);
      } else {
        told.add(finding);
      }
    }
    Optional<Span> newest = newest(shared);
    without.forEach(
        (ingredient, alike) -> {
          if (newest.isPresent()) {
            told.add(together(ingredient, alike, newest.get()));
          } else {
            told.addAll(alike);
          }
        });
    return told;
  }

  private static Finding together(String ingredient, List<Finding> alike, Span place) {
    Finding first = alike.stream().min(FixOrder.ORDER).orElseThrow();
    Severity gravest = first.severity();
    for (Finding one : alike) {
      gravest = one.severity().compareTo(gravest) < 0 ? one.severity() : gravest;
    }
    Finding all =
        Finding.of(
                first.code(),
                gravest,
                place,
                ingredient
                    + " has no price on this day and counts as free in "
                    + Plural.of(alike.size(), "feed")
                    + (gravest == Severity.NOTE ? "" : ", so limits of cost cannot be judged"))
            .seeing("used", first.span());
    for (String help : first.helps()) {
      all = all.helping(help);
    }
    return all.about(first.about());
  }

  /** The line of the newest file of prices under which they stand, or its beginning. */
  private static Optional<Span> newest(Shared shared) {
    Price newest = null;
    for (List<Price> prices : shared.tables().prices().values()) {
      for (Price price : prices) {
        boolean counts = !price.from().isAfter(shared.day());
        if (counts && (newest == null || price.from().isAfter(newest.from()))) {
          newest = price;
        }
      }
    }
    return newest == null ? Optional.empty() : Optional.of(heading(newest.place().file()));
  }

  private static Span heading(SourceFile file) {
    String heading = "\nprices:";
    int at = file.text().indexOf(heading);
    return at < 0 ? file.beginning() : file.span(at + 1, at + heading.length());
  }
}
