package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.Ingredient.ContentBlock;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Extent;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files of {@code lots/}, each a list of lots. */
final class LotsReader {
  static final String NUMBER = "[A-Za-z0-9]+([./_-][A-Za-z0-9]+)*";

  private final Nutrients nutrients;
  private final Names names;
  private final Known ingredients;
  private final List<Finding> findings;
  private final FigureReader figures;
  private final SortedMap<String, Lot> lots = new TreeMap<>();
  private final Map<String, Span> told = new HashMap<>();
  private final Map<String, Lot> byLetters = new HashMap<>();
  private boolean whole = true;

  LotsReader(Nutrients nutrients, Names names, Known ingredients, List<Finding> findings) {
    this.nutrients = nutrients;
    this.names = names;
    this.ingredients = ingredients;
    this.findings = findings;
    this.figures = new FigureReader(findings);
  }

  void read(List<DataFile> files) {
    for (DataFile file : files) {
      whole &= file.read().whole();
      file.fields(Vocabulary.LOTS, findings)
          .ifPresent(fields -> fields.blocks("lots", Vocabulary.LOT).forEach(this::lot));
    }
  }

  SortedMap<String, Lot> byNumber() {
    return lots;
  }

  /** The lot of a number, capitals or not. */
  Optional<Lot> named(String number) {
    return Optional.ofNullable(byLetters.get(key(number)));
  }

  /** A finding for each lot that has the number of a batch: who names it could mean either. */
  void checkAgainst(Collection<String> batches) {
    for (String batch : batches) {
      named(batch).ifPresent(lot -> findings.add(LotFindings.numberOfBatch(lot.declared(), batch)));
    }
  }

  /** Every number that was written, also of a lot that could not be read. */
  boolean knows(String number) {
    return !whole || told.containsKey(key(number));
  }

  /** A number without regard to capitals. */
  static String key(String number) {
    return number.toLowerCase(Locale.ROOT);
  }

  private void lot(Fields block) {
    Optional<Scalar> number = block.text("number").filter(this::isNumber);
    Optional<Scalar> ingredient = block.text("ingredient");
    boolean known = ingredient.filter(word -> ingredients.check(word, findings)).isPresent();
    Optional<LocalDate> received = block.text("received").flatMap(figures::day);
    Optional<LocalDate> bestBefore = block.text("best-before").flatMap(figures::day);
    OptionalDouble kg =
        block
            .text("quantity")
            .map(value -> figures.positive(value, Extent.WEIGHT))
            .orElse(OptionalDouble.empty());
    List<ContentBlock> measured = new ContentsReader(nutrients, names, findings).read(block);
    Optional<Lot.Inspection> inspection =
        block.oneOf("inspection", "an inspection", Lot.Inspection.class);
    boolean dated = bestBefore.isPresent() || !block.has("best-before");
    if (number.isEmpty() || !known || received.isEmpty() || kg.isEmpty() || !dated) {
      return;
    }
    checkDates(block, received.get(), bestBefore);
    measured.stream()
        .flatMap(it -> Optional.ofNullable(it.byNutrient().get(Nutrients.MOISTURE)).stream())
        .filter(Content::isBound)
        .forEach(
            it -> findings.add(NutrientFindings.moistureBound(it, "lot " + number.get().text())));
    Lot lot =
        new Lot(
            number.get().text(),
            ingredient.get().text(),
            received.get(),
            bestBefore,
            kg.getAsDouble(),
            inspection,
            block.text("supplier").map(Scalar::text),
            block.text("remark").map(Scalar::text).orElse(""),
            measured,
            number.get().span(),
            block.has("best-before") ? block.placeOf("best-before") : number.get().span(),
            block.has("inspection") ? block.placeOf("inspection") : number.get().span());
    lots.put(lot.number(), lot);
    byLetters.put(key(lot.number()), lot);
  }

  private boolean isNumber(Scalar number) {
    if (!number.text().matches(NUMBER)) {
      findings.add(LotFindings.number(number));
      return false;
    }
    Span earlier = told.putIfAbsent(key(number.text()), number.span());
    if (earlier != null) {
      findings.add(LotFindings.twice(number, earlier));
    }
    return earlier == null;
  }

  private void checkDates(Fields block, LocalDate received, Optional<LocalDate> bestBefore) {
    if (bestBefore.filter(received::isAfter).isPresent()) {
      block
          .text("best-before")
          .ifPresent(day -> findings.add(LotFindings.dates(day, received.toString())));
    }
  }
}
