package dev.pellucid.engine.check;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Price;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Plural;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A list of prices from a day after that of the run: none of its prices counts, the older ones do.
 * Most often the day is a slip; a list that is written ahead is told until its day has come.
 */
final class PricesNotYet {
  static final Code CODE = new Code("prices-not-yet");

  private PricesNotYet() {}

  static void look(FeedTables tables, LocalDate day, Consumer<Finding> out) {
    Map<SourceFile, Price> later = new LinkedHashMap<>();
    LocalDate counting = null;
    for (List<Price> prices : tables.prices().values()) {
      for (Price price : prices) {
        if (price.from().isAfter(day)) {
          later.putIfAbsent(price.place().file(), price);
        } else if (counting == null || price.from().isAfter(counting)) {
          counting = price.from();
        }
      }
    }
    String until =
        counting == null
            ? "until then there are none"
            : "until then those from " + counting + " count";
    for (Map.Entry<SourceFile, Price> each : later.entrySet()) {
      out.accept(
          finding(each.getKey(), each.getValue().from(), day)
              .noting(until)
              .helping("look whether the day is meant; else write the day from which they hold"));
    }
  }

  private static Finding finding(SourceFile file, LocalDate from, LocalDate day) {
    return Finding.warning(
        CODE,
        place(file, from),
        "these prices count from "
            + from
            + " on, "
            + Plural.of(ChronoUnit.DAYS.between(day, from), "day")
            + " after this run of "
            + day);
  }

  private static Span place(SourceFile file, LocalDate from) {
    String written = from.toString();
    int at = file.text().indexOf(written, Math.max(0, file.text().indexOf("from:")));
    return at < 0 ? file.beginning() : file.span(at, at + written.length());
  }
}
