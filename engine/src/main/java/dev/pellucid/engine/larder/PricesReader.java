package dev.pellucid.engine.larder;

import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/** {@code prices/}: each file holds from a day on. */
final class PricesReader {
  private final Sources sources;
  private final Known ingredients;
  private final String currency;
  private final List<Finding> findings;
  private final SortedMap<String, List<Price>> prices = new TreeMap<>();
  private final Map<String, Span> told = new HashMap<>();

  /**
   * @param currency of the folder; empty where it is not known
   */
  PricesReader(Sources sources, Known ingredients, String currency, List<Finding> findings) {
    this.sources = sources;
    this.ingredients = ingredients;
    this.currency = currency;
    this.findings = findings;
  }

  SortedMap<String, List<Price>> read(List<DataFile> files) {
    for (DataFile file : files) {
      file.fields(Vocabulary.PRICES, findings).ifPresent(this::file);
    }
    return prices;
  }

  private void file(Fields fields) {
    Source source = sources.of(fields);
    Optional<LocalDate> from = fields.text("from").flatMap(new FigureReader(findings)::day);
    fields
        .block("prices", Vocabulary.PRICE_ENTRIES)
        .ifPresent(block -> block.others().forEach(entry -> price(block, entry, from, source)));
  }

  private void price(Fields block, Entry entry, Optional<LocalDate> from, Source source) {
    Scalar name = entry.key();
    boolean known = ingredients.check(name, findings);
    Optional<Scalar> value = block.textOf(entry);
    OptionalDouble perKg = value.map(this::perKg).orElse(OptionalDouble.empty());
    if (!known || value.isEmpty() || perKg.isEmpty() || from.isEmpty()) {
      return;
    }
    Span earlier = told.putIfAbsent(name.text() + " " + from.get(), name.span());
    if (earlier != null) {
      findings.add(ReferenceFindings.priceTwice(name, earlier));
      return;
    }
    Price price =
        new Price(
            name.text(),
            from.get(),
            perKg.getAsDouble(),
            value.get().text(),
            source,
            value.get().span());
    prices.computeIfAbsent(name.text(), any -> new ArrayList<>()).add(price);
  }

  private OptionalDouble perKg(Scalar value) {
    OptionalDouble perKg = new FigureReader(findings).base(value, Kind.PRICE);
    Optional<String> written = FigureReader.currency(value);
    if (perKg.isPresent() && !currency.isEmpty() && written.filter(currency::equals).isEmpty()) {
      findings.add(FigureFindings.currency(value, written.orElse("no currency"), currency));
      return OptionalDouble.empty();
    }
    return perKg;
  }
}
