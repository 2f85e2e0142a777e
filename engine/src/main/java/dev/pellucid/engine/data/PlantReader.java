package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** One file of {@code plant/}. */
final class PlantReader {
  static final Code SCALE = new Code("data-scale");

  /** What a mash is taken to have where the file cannot be read, in °C. */
  private static final double ROOM = 20;

  /** Below 20 divisions a class III scale is not used in trade (OIML R 76, from memory). */
  private static final int LEAST_DIVISIONS = 20;

  /** Common practice, no source. */
  private static final int MOST_WEIGHINGS = 4;

  private final Remarks remarks;
  private final FigureReader figures;

  private PlantReader(Remarks remarks) {
    this.remarks = remarks;
    this.figures = new FigureReader(remarks);
  }

  static Read<Optional<Plant>> read(DataFile file) {
    Remarks remarks = new Remarks();
    Optional<Plant> plant =
        file.isNamed("a plant", remarks)
            ? Optional.of(new PlantReader(remarks).named(file))
            : Optional.empty();
    return file.read(plant, remarks);
  }

  private Plant named(DataFile file) {
    return file.fields(PlantVocabulary.PLANT_KEYS, remarks)
        .map(fields -> plant(file, fields))
        .orElseGet(() -> unread(file));
  }

  private static Plant unread(DataFile file) {
    return new Plant(
        file.stem(),
        file.stem(),
        0,
        ROOM,
        OptionalDouble.empty(),
        OptionalInt.empty(),
        List.of(),
        Optional.empty(),
        OptionalDouble.empty(),
        List.of(),
        MOST_WEIGHINGS,
        List.of(),
        file.place());
  }

  private Plant plant(DataFile file, Fields fields) {
    OptionalDouble shrink =
        fields.text(PlantVocabulary.SHRINK).map(figures::share).orElse(OptionalDouble.empty());
    return new Plant(
        file.stem(),
        fields.text(PlantVocabulary.NAME).map(Scalar::text).orElse(file.stem()),
        shrink.orElse(0),
        base(fields, PlantVocabulary.AIR_TEMPERATURE, Kind.TEMPERATURE).orElse(ROOM),
        positive(fields, PlantVocabulary.TRAY_LOAD, Extent.WEIGHT),
        count(fields, PlantVocabulary.TRAYS),
        dies(fields),
        fields.oneOf(PlantVocabulary.COATER, "a coater"),
        positive(fields, PlantVocabulary.COATER_LOAD, Extent.WEIGHT),
        scales(fields),
        count(fields, PlantVocabulary.MOST_WEIGHINGS).orElse(MOST_WEIGHINGS),
        fields.blocks(PlantVocabulary.MIXERS).stream()
            .flatMap(block -> mixer(block).stream())
            .toList(),
        fields.has(PlantVocabulary.NAME) ? fields.placeOf(PlantVocabulary.NAME) : fields.place());
  }

  /** Where one cannot be read, none are known. */
  private List<Double> dies(Fields fields) {
    List<OptionalDouble> dies =
        fields.texts(PlantVocabulary.DIES).stream()
            .map(die -> figures.positive(die, Extent.HOLE))
            .toList();
    return dies.stream().anyMatch(OptionalDouble::isEmpty)
        ? List.of()
        : dies.stream().map(OptionalDouble::getAsDouble).sorted().toList();
  }

  private List<Scale> scales(Fields fields) {
    return fields.blocks(PlantVocabulary.SCALES).stream()
        .flatMap(block -> scale(block).stream())
        .sorted(Comparator.comparingDouble(Scale::division).thenComparingDouble(Scale::most))
        .toList();
  }

  private Optional<Scale> scale(Fields block) {
    OptionalDouble most = positive(block, PlantVocabulary.SCALE_MOST, Extent.WEIGHT);
    OptionalDouble division = positive(block, PlantVocabulary.SCALE_DIVISION, Extent.WEIGHT);
    OptionalDouble told = positive(block, PlantVocabulary.SCALE_LEAST, Extent.WEIGHT);
    if (most.isEmpty()
        || division.isEmpty()
        || (block.has(PlantVocabulary.SCALE_LEAST) && told.isEmpty())) {
      return Optional.empty();
    }
    double least = told.orElse(division.getAsDouble() * LEAST_DIVISIONS);
    if (least < division.getAsDouble() || most.getAsDouble() < least) {
      remarks.add(
          Finding.error(
                  SCALE,
                  block.placeOf(PlantVocabulary.SCALE_MOST),
                  "a scale must carry more than its least weight, and that more than its division")
              .helping("write most: 15 kg, division: 5 g, least: 100 g"));
      return Optional.empty();
    }
    return Optional.of(
        new Scale(
            name(block, PlantVocabulary.SCALE_NAME),
            most.getAsDouble(),
            division.getAsDouble(),
            least));
  }

  private Optional<Mixer> mixer(Fields block) {
    OptionalDouble litres = positive(block, PlantVocabulary.MIXER_VOLUME, Extent.VOLUME);
    Optional<FigureReader.Ends> fill =
        block.text(PlantVocabulary.MIXER_FILL).flatMap(value -> figures.part(value));
    return litres.isPresent()
        ? fill.map(
            ends ->
                new Mixer(
                    name(block, PlantVocabulary.MIXER_NAME),
                    litres.getAsDouble(),
                    ends.low(),
                    ends.high()))
        : Optional.empty();
  }

  private static String name(Fields block, Key<Text> key) {
    return block.text(key).map(Scalar::text).orElse("");
  }

  private OptionalInt count(Fields fields, Key<Text> key) {
    return fields.text(key).map(figures::count).orElse(OptionalInt.empty());
  }

  private OptionalDouble positive(Fields fields, Key<Text> key, Extent extent) {
    return fields
        .text(key)
        .map(value -> figures.positive(value, extent))
        .orElse(OptionalDouble.empty());
  }

  private OptionalDouble base(Fields fields, Key<Text> key, Kind kind) {
    return fields.text(key).map(value -> figures.base(value, kind)).orElse(OptionalDouble.empty());
  }
}
