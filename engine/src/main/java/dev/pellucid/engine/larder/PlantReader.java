package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.Plant.Coater;
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
    return file.fields(Vocabulary.PLANT, remarks)
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
        fields.text("shrink").map(figures::share).orElse(OptionalDouble.empty());
    return new Plant(
        file.stem(),
        fields.text("name").map(Scalar::text).orElse(file.stem()),
        shrink.orElse(0),
        base(fields, "air-temperature", Kind.TEMPERATURE).orElse(ROOM),
        positive(fields, "tray-load", Extent.WEIGHT),
        count(fields, "trays"),
        dies(fields),
        fields.oneOf("coater", "a coater", Coater.class),
        positive(fields, "coater-load", Extent.WEIGHT),
        scales(fields),
        count(fields, "most-weighings").orElse(MOST_WEIGHINGS),
        fields.blocks("mixers", Vocabulary.MIXER).stream()
            .flatMap(block -> mixer(block).stream())
            .toList(),
        fields.has("name") ? fields.placeOf("name") : fields.place());
  }

  /** Where one cannot be read, none are known. */
  private List<Double> dies(Fields fields) {
    List<OptionalDouble> dies =
        fields.texts("dies").stream().map(die -> figures.positive(die, Extent.HOLE)).toList();
    return dies.stream().anyMatch(OptionalDouble::isEmpty)
        ? List.of()
        : dies.stream().map(OptionalDouble::getAsDouble).sorted().toList();
  }

  private List<Scale> scales(Fields fields) {
    return fields.blocks("scales", Vocabulary.SCALE).stream()
        .flatMap(block -> scale(block).stream())
        .sorted(Comparator.comparingDouble(Scale::division).thenComparingDouble(Scale::most))
        .toList();
  }

  private Optional<Scale> scale(Fields block) {
    OptionalDouble most = positive(block, "most", Extent.WEIGHT);
    OptionalDouble division = positive(block, "division", Extent.WEIGHT);
    OptionalDouble told = positive(block, "least", Extent.WEIGHT);
    if (most.isEmpty() || division.isEmpty() || (block.has("least") && told.isEmpty())) {
      return Optional.empty();
    }
    double least = told.orElse(division.getAsDouble() * LEAST_DIVISIONS);
    if (least < division.getAsDouble() || most.getAsDouble() < least) {
      remarks.add(
          Finding.error(
                  SCALE,
                  block.placeOf("most"),
                  "a scale must carry more than its least weight, and that more than its division")
              .helping("write most: 15 kg, division: 5 g, least: 100 g"));
      return Optional.empty();
    }
    return Optional.of(new Scale(name(block), most.getAsDouble(), division.getAsDouble(), least));
  }

  private Optional<Mixer> mixer(Fields block) {
    OptionalDouble litres = positive(block, "volume", Extent.VOLUME);
    Optional<FigureReader.Ends> fill = block.text("fill").flatMap(value -> figures.part(value));
    return litres.isPresent()
        ? fill.map(ends -> new Mixer(name(block), litres.getAsDouble(), ends.low(), ends.high()))
        : Optional.empty();
  }

  private static String name(Fields block) {
    return block.text("name").map(Scalar::text).orElse("");
  }

  private OptionalInt count(Fields fields, String key) {
    return fields.text(key).map(figures::count).orElse(OptionalInt.empty());
  }

  private OptionalDouble positive(Fields fields, String key, Extent extent) {
    return fields
        .text(key)
        .map(value -> figures.positive(value, extent))
        .orElse(OptionalDouble.empty());
  }

  private OptionalDouble base(Fields fields, String key, Kind kind) {
    return fields.text(key).map(value -> figures.base(value, kind)).orElse(OptionalDouble.empty());
  }
}
