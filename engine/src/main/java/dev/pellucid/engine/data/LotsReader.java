package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Extent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** One file of {@code lots/}, a list of lots. */
final class LotsReader {
  static final String NUMBER = "[A-Za-z0-9]+([./_-][A-Za-z0-9]+)*";

  /** Hardly a vitamin or a salt is sold to be kept longer; common practice, no source. */
  private static final int MOST_YEARS = 6;

  private static final Pattern SHAPE = Pattern.compile(NUMBER);

  private final Frame frame;
  private final Known ingredients;
  private final Remarks remarks;
  private final FigureReader figures;
  private final List<Written> lots = new ArrayList<>();

  private LotsReader(Frame frame, Known ingredients, Remarks remarks) {
    this.frame = frame;
    this.ingredients = ingredients;
    this.remarks = remarks;
    this.figures = new FigureReader(remarks);
  }

  /**
   * A lot as it is written; whether another has its number is not known here.
   *
   * @param lot empty where a part that it must have could not be read
   * @param ofLot what is wrong with it, said only where it is the first of its number
   */
  record Written(Scalar number, Optional<Lot> lot, List<Finding> ofLot) {
    Written {
      ofLot = List.copyOf(ofLot);
    }
  }

  /** That a bin was empty. */
  record Emptied(String bin, Located<LocalDate> day) {}

  /** What a file tells. */
  record Told(List<Written> lots, List<Emptied> bins) {
    static final Told NOTHING = new Told(List.of(), List.of());

    Told {
      lots = List.copyOf(lots);
      bins = List.copyOf(bins);
    }
  }

  static Read<Told> read(DataFile file, Frame frame, Known ingredients) {
    Remarks remarks = new Remarks();
    LotsReader reader = new LotsReader(frame, ingredients, remarks);
    Optional<Fields> fields = file.fields(LotsVocabulary.LOTS_KEYS, remarks);
    List<Emptied> bins = new ArrayList<>();
    if (fields.isPresent()) {
      for (Fields block : fields.get().blocks(LotsVocabulary.LOTS)) {
        reader.lot(block);
      }
      for (Fields block : fields.get().blocks(LotsVocabulary.BINS)) {
        reader.emptied(block).ifPresent(bins::add);
      }
    }
    return file.read(new Told(reader.lots, bins), remarks);
  }

  private Optional<Emptied> emptied(Fields block) {
    Optional<Scalar> bin = block.text(LotsVocabulary.EMPTIED_BIN);
    Optional<LocalDate> day = figures.day(block.text(LotsVocabulary.EMPTIED));
    return bin.isPresent() && day.isPresent()
        ? Optional.of(
            new Emptied(
                bin.get().text(), new Located<>(day.get(), block.placeOf(LotsVocabulary.EMPTIED))))
        : Optional.empty();
  }

  /** A number without regard to capitals. */
  static String key(String number) {
    return number.toLowerCase(Locale.ROOT);
  }

  private void lot(Fields block) {
    Optional<Scalar> number = number(block);
    Optional<Scalar> ingredient = block.text(LotsVocabulary.INGREDIENT);
    boolean known = ingredient.isPresent() && ingredients.check(ingredient.get(), remarks);
    Optional<LocalDate> received = figures.day(block.text(LotsVocabulary.RECEIVED));
    Optional<LocalDate> bestBefore = figures.day(block.text(LotsVocabulary.BEST_BEFORE));
    OptionalDouble kg = figures.positive(block.text(LotsVocabulary.QUANTITY), Extent.WEIGHT);
    List<ContentBlock> measured =
        new ContentsReader(frame.nutrients(), frame.names(), remarks)
            .read(block, LotsVocabulary.CONTENTS);
    Optional<List<LotState>> states = new LotStateReader(figures, remarks).states(block, received);
    LotMoves moves = new LotMovesReader(figures, remarks).moves(block);
    Optional<String> supplier = block.string(LotsVocabulary.SUPPLIER);
    Optional<String> supplierLot = block.string(LotsVocabulary.SUPPLIER_LOT);
    boolean dated = bestBefore.isPresent() || !block.has(LotsVocabulary.BEST_BEFORE);
    if (number.isEmpty()) {
      return;
    }
    if (!known || received.isEmpty() || kg.isEmpty() || !dated || states.isEmpty()) {
      lots.add(new Written(number.get(), Optional.empty(), List.of()));
      return;
    }
    Remarks ofLot = new Remarks();
    Fields counted = block.into(ofLot);
    checkDates(counted, received.get(), bestBefore);
    for (ContentBlock told : measured) {
      Content moisture = told.byNutrient().get(Nutrients.MOISTURE);
      if (moisture != null && moisture.isBound()) {
        ofLot.add(NutrientFindings.moistureBound(moisture, "lot " + number.get().text()));
      }
    }
    Lot lot =
        new Lot(
            number.get().text(),
            ingredient.get().text(),
            received.get(),
            bestBefore,
            kg.getAsDouble(),
            states.orElse(List.of()),
            supplier,
            supplierLot,
            counted.string(LotsVocabulary.DELIVERY_NOTE),
            counted.string(LotsVocabulary.BIN),
            moves,
            counted.textOr(LotsVocabulary.REMARK, ""),
            measured,
            IngredientReader.bag(block, Optional.empty(), number.get().span()),
            number.get().span(),
            block.has(LotsVocabulary.QUANTITY)
                ? block.placeOf(LotsVocabulary.QUANTITY)
                : number.get().span(),
            block.has(LotsVocabulary.BEST_BEFORE)
                ? block.placeOf(LotsVocabulary.BEST_BEFORE)
                : number.get().span(),
            LotStateReader.place(block).orElse(number.get().span()));
    lots.add(new Written(number.get(), Optional.of(lot), ofLot.findings()));
  }

  private Optional<Scalar> number(Fields block) {
    Optional<Scalar> number = block.text(LotsVocabulary.NUMBER);
    if (number.isPresent() && !SHAPE.matcher(number.get().text()).matches()) {
      remarks.add(LotFindings.number(number.get()));
      return Optional.empty();
    }
    return number;
  }

  private static void checkDates(
      Fields counted, LocalDate received, Optional<LocalDate> bestBefore) {
    if (bestBefore.isEmpty()) {
      return;
    }
    Optional<Scalar> last = counted.text(LotsVocabulary.BEST_BEFORE);
    if (last.isPresent() && bestBefore.get().isAfter(received.plusYears(MOST_YEARS))) {
      counted.remarks().add(LotFindings.longDates(last.get(), received.toString(), MOST_YEARS));
    }
    if (!received.isAfter(bestBefore.get())) {
      return;
    }
    Optional<Scalar> day = counted.text(LotsVocabulary.BEST_BEFORE);
    if (day.isPresent()) {
      counted.remarks().add(LotFindings.dates(day.get(), received.toString()));
    }
  }
}
