package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** One file of {@code prices/}: it holds from a day on. */
final class PricesReader {
  private static final double HOURS_A_DAY = 24;

  private final Sources sources;
  private final String currency;
  private final Known ingredients;
  private final Remarks remarks;
  private final List<Written> prices = new ArrayList<>();
  private final List<Ordering> ordering = new ArrayList<>();

  private PricesReader(Frame frame, Known ingredients, Remarks remarks) {
    this.sources = frame.names().sources();
    this.currency = frame.settings().currency();
    this.ingredients = ingredients;
    this.remarks = remarks;
  }

  /** A price as it is written; whether another is from the same day is not known here. */
  record Written(Scalar ingredient, Price price) {}

  /** What one file tells. */
  record Listed(List<Written> prices, List<Ordering> ordering) {
    Listed {
      prices = List.copyOf(prices);
      ordering = List.copyOf(ordering);
    }
  }

  static Read<Listed> read(DataFile file, Frame frame, Known ingredients) {
    Remarks remarks = new Remarks();
    PricesReader reader = new PricesReader(frame, ingredients, remarks);
    Optional<Fields> fields = file.fields(PricesVocabulary.PRICES_KEYS, remarks);
    if (fields.isPresent()) {
      reader.file(fields.get());
    }
    return file.read(new Listed(reader.prices, reader.ordering), remarks);
  }

  private void file(Fields fields) {
    Source source = sources.of(fields);
    Optional<LocalDate> from = new FigureReader(remarks).day(fields.text(PricesVocabulary.FROM));
    Optional<Fields> block = fields.block(PricesVocabulary.PRICES);
    if (block.isPresent()) {
      for (Entry entry : block.get().others()) {
        price(block.get(), entry, from, source);
      }
    }
    Optional<Fields> ordered = fields.block(PricesVocabulary.ORDERING);
    if (ordered.isPresent()) {
      for (Entry entry : ordered.get().others()) {
        ordering(ordered.get(), entry, from);
      }
    }
  }

  private void ordering(Fields block, Entry entry, Optional<LocalDate> from) {
    Scalar name = entry.key();
    boolean known = ingredients.check(name, remarks);
    Optional<Fields> told = block.blockOf(entry, PricesVocabulary.ORDERING_KEYS);
    if (told.isEmpty()) {
      return;
    }
    Fields its = told.get();
    OptionalDouble pack = pack(its.text(PricesVocabulary.PACK));
    OptionalLong days = leadDays(its.text(PricesVocabulary.LEAD_TIME));
    if (its.isEmpty()) {
      remarks.add(ReferenceFindings.orderingEmpty(name));
    }
    if (known && from.isPresent()) {
      ordering.add(
          new Ordering(
              name.text(),
              from.get(),
              pack,
              days,
              its.string(PricesVocabulary.SUPPLIER),
              its.has(PricesVocabulary.PACK) ? its.placeOf(PricesVocabulary.PACK) : name.span(),
              name.span()));
    }
  }

  private OptionalDouble pack(Optional<Scalar> written) {
    OptionalDouble pack = new FigureReader(remarks).positive(written, Extent.WEIGHT);
    CommonSpan.PACK.look(written, pack, remarks);
    return pack;
  }

  /** Part of a day is a day: who orders counts in days. */
  private OptionalLong leadDays(Optional<Scalar> written) {
    OptionalDouble hours = new FigureReader(remarks).base(written, Kind.TIME);
    CommonSpan.LEAD_TIME.look(written, hours, remarks);
    return hours.isPresent()
        ? OptionalLong.of((long) Math.ceil(hours.getAsDouble() / HOURS_A_DAY))
        : OptionalLong.empty();
  }

  private void price(Fields block, Entry entry, Optional<LocalDate> from, Source source) {
    Scalar name = entry.key();
    boolean known = ingredients.check(name, remarks);
    Optional<Scalar> value = block.textOf(entry);
    OptionalDouble perKg = value.isPresent() ? perKg(value.get()) : OptionalDouble.empty();
    if (!known || value.isEmpty() || perKg.isEmpty() || from.isEmpty()) {
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
    prices.add(new Written(name, price));
  }

  private OptionalDouble perKg(Scalar value) {
    OptionalDouble perKg = new FigureReader(remarks).base(value, Kind.PRICE);
    Optional<String> written = FigureReader.currency(value);
    if (perKg.isPresent() && !currency.isEmpty() && !written.orElse("").equals(currency)) {
      remarks.add(FigureFindings.currency(value, written.orElse("no currency"), currency));
      return OptionalDouble.empty();
    }
    return perKg;
  }
}
