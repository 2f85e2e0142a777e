package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.SteamTable.Row;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * {@code practice/steam.yaml}. Steam tables print enthalpies in kJ/kg, and so does this file alone;
 * elsewhere energy in a mass is that of feed.
 */
final class SteamReader {
  static final String FILE = "practice/steam.yaml";
  static final Code ROWS = new Code("data-steam-rows");

  private static final Pattern ENTHALPY =
      Pattern.compile("^(" + Vocabulary.FIGURE + ")\\s*(\\S+)$");

  private final Sources sources;
  private final Remarks remarks;

  SteamReader(Sources sources, Remarks remarks) {
    this.sources = sources;
    this.remarks = remarks;
  }

  Optional<SteamTable> read(Optional<DataFile> file) {
    Optional<Fields> fields = DataFile.fields(file, PracticeVocabulary.STEAM_KEYS, remarks);
    return fields.isPresent() ? table(fields.get()) : Optional.empty();
  }

  private Optional<SteamTable> table(Fields fields) {
    Source source = sources.of(fields);
    List<Fields> blocks = fields.blocks(PracticeVocabulary.STEAM_ROWS);
    List<Row> rows = new ArrayList<>();
    for (Fields block : blocks) {
      Optional<Row> row = row(block);
      if (row.isPresent() && isOfSteam(block, row.get())) {
        add(block, row.get(), rows);
      }
    }
    if (rows.size() >= 2) {
      return Optional.of(new SteamTable(rows, source));
    }
    if (fields.has(PracticeVocabulary.STEAM_ROWS) && blocks.size() < 2) {
      remarks.add(
          Finding.error(
                  ROWS,
                  fields.placeOf(PracticeVocabulary.STEAM_ROWS),
                  "a steam table needs at least two rows")
              .helping("add rows of a steam table from the mash's temperature to the steam's"));
    }
    return Optional.empty();
  }

  /** Whether water can be so; where not, a finding at the figure that does not fit. */
  private boolean isOfSteam(Fields block, Row row) {
    Optional<Finding> odd = SaturatedSteam.odd(block, row);
    if (odd.isPresent()) {
      remarks.add(odd.get());
    }
    return odd.isEmpty();
  }

  private void add(Fields block, Row row, List<Row> rows) {
    boolean rises = rows.isEmpty() || row.temperature() > rows.get(rows.size() - 1).temperature();
    if (rises) {
      rows.add(row);
    } else {
      remarks.add(
          Finding.error(
                  ROWS,
                  block.placeOf(PracticeVocabulary.STEAM_TEMPERATURE),
                  "the temperature does not rise from the row above")
              .helping("put the rows in the order of their temperature, each once"));
    }
  }

  private Optional<Row> row(Fields block) {
    OptionalDouble temperature =
        new FigureReader(remarks)
            .base(block.text(PracticeVocabulary.STEAM_TEMPERATURE), Kind.TEMPERATURE);
    OptionalDouble liquid = enthalpy(block, PracticeVocabulary.STEAM_LIQUID);
    OptionalDouble vapour = enthalpy(block, PracticeVocabulary.STEAM_VAPOUR);
    if (temperature.isEmpty() || liquid.isEmpty() || vapour.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Row(temperature.getAsDouble(), liquid.getAsDouble(), vapour.getAsDouble()));
  }

  private OptionalDouble enthalpy(Fields block, Key<Text> key) {
    Optional<Scalar> value = block.text(key);
    return value.isPresent() ? enthalpy(value.get()) : OptionalDouble.empty();
  }

  private OptionalDouble enthalpy(Scalar value) {
    Matcher figure = ENTHALPY.matcher(FigureReader.spaced(value));
    if (!figure.matches()) {
      remarks.add(
          value.text().matches(Vocabulary.FIGURE)
              ? FigureFindings.unitMissing(value, Kind.ENERGY, "kJ/kg")
              : NumberSlips.explain(value));
      return OptionalDouble.empty();
    }
    if (!figure.group(3).equals("kJ/kg")) {
      remarks.add(
          FigureFindings.unitUnknown(value, figure.group(3)).helping("steam is given in kJ/kg"));
      return OptionalDouble.empty();
    }
    Optional<String> number = new FigureReader(remarks).number(value, figure.group(1));
    return number.isPresent()
        ? OptionalDouble.of(Double.parseDouble(number.get()))
        : OptionalDouble.empty();
  }
}
