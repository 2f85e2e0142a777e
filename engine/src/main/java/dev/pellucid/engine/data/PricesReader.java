package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One file of {@code prices/}: it holds from a day on. */
final class PricesReader {
  private final Sources sources;
  private final String currency;
  private final Known ingredients;
  private final Remarks remarks;
  private final List<Written> prices = new ArrayList<>();

  private PricesReader(Frame frame, Known ingredients, Remarks remarks) {
    this.sources = frame.names().sources();
    this.currency = frame.settings().currency();
    this.ingredients = ingredients;
    this.remarks = remarks;
  }

  /** A price as it is written; whether another is from the same day is not known here. */
  record Written(Scalar ingredient, Price price) {}

  static Read<List<Written>> read(DataFile file, Frame frame, Known ingredients) {
    Remarks remarks = new Remarks();
    PricesReader reader = new PricesReader(frame, ingredients, remarks);
    Optional<Fields> fields = file.fields(PricesVocabulary.PRICES_KEYS, remarks);
    if (fields.isPresent()) {
      reader.file(fields.get());
    }
    return file.read(List.copyOf(reader.prices), remarks);
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
