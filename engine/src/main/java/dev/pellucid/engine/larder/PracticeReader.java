package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.Practice.BoundOf;
import dev.pellucid.engine.larder.Practice.DefaultSpread;
import dev.pellucid.engine.larder.Practice.PracticeBound;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Files of {@code practice/}. */
final class PracticeReader {
  private static final Pattern ENTHALPY = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*kJ/kg");

  private final Shelf shelf;
  private final Nutrients nutrients;
  private final Map<BoundOf, PracticeBound> bounds = new EnumMap<>(BoundOf.class);
  private final Map<String, Retention> retention = new HashMap<>();
  private final Map<String, DefaultSpread> spreads = new HashMap<>();
  private final Map<String, List<String>> cautions = new HashMap<>();
  private Optional<SteamTable> steam = Optional.empty();

  PracticeReader(Shelf shelf, Nutrients nutrients) {
    this.shelf = shelf;
    this.nutrients = nutrients;
  }

  Practice practice() {
    List<String> inspection = cautions.getOrDefault(CautionsReader.INSPECTION, List.of());
    return new Practice(bounds, retention, spreads, steam, cautions, inspection);
  }

  static Optional<Keys> keys(String fileName) {
    return switch (fileName) {
      case "bounds.yaml" -> Optional.of(Vocabulary.BOUNDS);
      case "retention.yaml" -> Optional.of(Vocabulary.RETENTION);
      case "spreads.yaml" -> Optional.of(Vocabulary.SPREADS);
      case "steam.yaml" -> Optional.of(Vocabulary.STEAM);
      case "cautions.yaml" -> Optional.of(Vocabulary.CAUTIONS);
      default -> Optional.empty();
    };
  }

  void read(String fileName, Fields file) {
    switch (fileName) {
      case "bounds.yaml" -> bounds(file);
      case "retention.yaml" -> retention.putAll(new RetentionReader(shelf).read(file));
      case "spreads.yaml" -> spreads(file);
      case "steam.yaml" -> steam(file);
      default -> cautions.putAll(CautionsReader.read(file));
    }
  }

  private void bounds(Fields file) {
    for (BoundOf what : BoundOf.values()) {
      if (file.has(what.word())) {
        file.block(what.word(), Vocabulary.BOUND).ifPresent(block -> bound(what, block));
      }
    }
  }

  private void bound(BoundOf what, Fields block) {
    Kind kind =
        switch (what) {
          case CONDITIONING_TEMPERATURE, DRYING_TEMPERATURE -> Kind.TEMPERATURE;
          case DRYING_TIME, BLENDING_TIME, SHELF_LIFE -> Kind.TIME;
          case FINISHED_MOISTURE,
              WATER_WITHOUT_STEAM,
              SCREEN_OF_DIE,
              STARCH_FLOATING,
              STARCH_SINKING,
              FAT_BEFORE_PELLETING,
              FAT_BEFORE_EXTRUDING,
              OIL_BY_HAND,
              OIL_IN_DRUM,
              OIL_UNDER_VACUUM ->
              Kind.SHARE;
        };
    OptionalDouble low = end(block, "from", kind);
    OptionalDouble high = end(block, "to", kind);
    String written =
        block.text("from").map(text -> "from " + text.text() + " ").orElse("")
            + block.text("to").map(text -> "to " + text.text()).orElse("");
    shelf
        .source(block)
        .ifPresent(
            source ->
                bounds.put(
                    what,
                    new PracticeBound(
                        low.orElse(0), high.orElse(Double.MAX_VALUE), written.strip(), source)));
  }

  private OptionalDouble end(Fields block, String name, Kind kind) {
    return block.has(name)
        ? block.text(name).map(t -> shelf.figures().base(t, kind)).orElse(OptionalDouble.empty())
        : OptionalDouble.empty();
  }

  private void spreads(Fields file) {
    Optional<Source> source = shelf.source(file);
    for (Entry entry : file.others()) {
      if (shelf.known(entry.key(), "a nutrient of this folder", nutrients.names())) {
        OptionalDouble share =
            file.textOf(entry).map(shelf.figures()::share).orElse(OptionalDouble.empty());
        if (share.isPresent() && source.isPresent()) {
          spreads.put(entry.key().text(), new DefaultSpread(share.getAsDouble(), source.get()));
        }
      }
    }
  }

  private void steam(Fields file) {
    List<SteamTable.Row> rows = new ArrayList<>();
    for (Fields row : file.blocks("rows", Vocabulary.STEAM_ROW)) {
      OptionalDouble temperature = end(row, "temperature", Kind.TEMPERATURE);
      OptionalDouble liquid = enthalpy(row, "liquid");
      OptionalDouble vapour = enthalpy(row, "vapour");
      if (temperature.isPresent() && liquid.isPresent() && vapour.isPresent()) {
        rows.add(
            new SteamTable.Row(
                temperature.getAsDouble(), liquid.getAsDouble(), vapour.getAsDouble()));
      }
    }
    rows.sort(Comparator.comparingDouble(SteamTable.Row::temperature));
    Optional<Source> source = shelf.source(file);
    if (rows.size() > 1 && source.isPresent()) {
      steam = Optional.of(new SteamTable(rows, source.get()));
    }
  }

  private OptionalDouble enthalpy(Fields row, String name) {
    Optional<Scalar> text = row.text(name);
    Matcher figure = ENTHALPY.matcher(text.map(Scalar::text).orElse(""));
    if (figure.matches()) {
      return OptionalDouble.of(Double.parseDouble(figure.group(1)));
    }
    text.ifPresent(t -> shelf.findings().add(FigureFindings.unitMissing(t, Kind.ENERGY, "kJ/kg")));
    return OptionalDouble.empty();
  }
}
