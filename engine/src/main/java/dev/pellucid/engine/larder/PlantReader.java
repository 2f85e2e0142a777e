package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.Plant.Coater;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One file of {@code plant/}. */
final class PlantReader {
  /** What a mash is taken to have where the file cannot be read, in °C. */
  private static final double ROOM = 20;

  private final List<Finding> findings;

  PlantReader(List<Finding> findings) {
    this.findings = findings;
  }

  Plant read(DataFile file) {
    return file.fields(Vocabulary.PLANT, findings)
        .map(fields -> plant(file, fields))
        .orElseGet(
            () ->
                new Plant(
                    file.stem(),
                    file.stem(),
                    0,
                    ROOM,
                    OptionalDouble.empty(),
                    Optional.empty(),
                    file.place()));
  }

  private Plant plant(DataFile file, Fields fields) {
    FigureReader figures = new FigureReader(findings);
    OptionalDouble shrink =
        fields.text("shrink").map(figures::share).orElse(OptionalDouble.empty());
    return new Plant(
        file.stem(),
        fields.text("name").map(Scalar::text).orElse(file.stem()),
        shrink.orElse(0),
        base(fields, "air-temperature", Kind.TEMPERATURE).orElse(ROOM),
        base(fields, "tray-load", Kind.MASS),
        fields.oneOf("coater", "a coater", Coater.class),
        fields.has("name") ? fields.placeOf("name") : fields.place());
  }

  private OptionalDouble base(Fields fields, String key, Kind kind) {
    return fields
        .text(key)
        .map(value -> new FigureReader(findings).base(value, kind))
        .orElse(OptionalDouble.empty());
  }
}
