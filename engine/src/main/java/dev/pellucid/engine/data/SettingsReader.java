package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Extent;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** {@code pellucid.yaml}. */
final class SettingsReader {
  static final String FILE = "pellucid.yaml";
  static final String FORMAT = "1";
  static final String OWN = "own";
  static final Code MISSING = new Code("data-no-settings");
  static final Code OTHER_FORMAT = new Code("data-format");
  static final Code VALUE = new Code("data-setting");

  static final List<Code> CODES = List.of(MISSING, OTHER_FORMAT, VALUE);

  private final Remarks remarks;

  SettingsReader(Remarks remarks) {
    this.remarks = remarks;
  }

  /** The settings; where they cannot be read, ones that ask for nothing. */
  Settings read(Optional<DataFile> file) {
    if (file.isEmpty()) {
      SourceFile absent = new SourceFile(FILE, "");
      remarks.add(
          Finding.error(MISSING, absent.beginning(), "the folder has no file pellucid.yaml")
              .helping("write one with format: 1, name, currency and jurisdiction"));
      return none(absent.beginning());
    }
    Optional<Fields> fields = file.get().fields(SettingsVocabulary.SETTINGS_KEYS, remarks);
    return fields.isPresent() ? settings(fields.get()) : none(file.get().place());
  }

  /** Whether a folder has all its data itself, so that nothing comes along. */
  static boolean isOwn(SourceFile settings) {
    Optional<Fields> fields =
        DataFile.of(FILE, settings).fields(SettingsVocabulary.SETTINGS_KEYS, new Remarks());
    return fields.isPresent()
        && fields.get().string(SettingsVocabulary.DATA).filter(OWN::equals).isPresent();
  }

  private static Settings none(Span place) {
    return new Settings(
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Settings.LAW_KEPT_IN,
        Optional.empty(),
        List.of(),
        place);
  }

  private Settings settings(Fields fields) {
    Optional<Scalar> format = fields.text(SettingsVocabulary.FORMAT);
    if (format.isPresent()) {
      format(format.get());
    }
    Optional<Scalar> data = fields.text(SettingsVocabulary.DATA);
    if (data.isPresent() && !data.get().text().equals(OWN)) {
      remarks.add(
          Finding.error(
                  VALUE,
                  data.get().span(),
                  KeyFindings.shown(data.get().text()) + " cannot be a data")
              .helping("write own where the folder has all data itself, or leave the line out"));
    }
    return new Settings(
        fields.textOr(SettingsVocabulary.NAME, ""),
        matching(fields, SettingsVocabulary.CURRENCY, "three capital letters, as in EUR")
            .orElse(""),
        jurisdiction(fields),
        fields.string(SettingsVocabulary.PLANT),
        fields.string(SettingsVocabulary.LABEL),
        lawKeptIn(fields.text(SettingsVocabulary.LAW_KEPT_IN)),
        maker(fields),
        made(fields),
        fields.placeOf(SettingsVocabulary.JURISDICTION));
  }

  private static Optional<Maker> maker(Fields fields) {
    Optional<Fields> block = fields.block(SettingsVocabulary.MAKER);
    if (block.isEmpty()) {
      return Optional.empty();
    }
    Optional<String> number = block.get().string(SettingsVocabulary.MAKER_APPROVAL_NUMBER);
    boolean none = number.isPresent() && number.get().equals("none");
    return Optional.of(
        new Maker(
            block.get().textOr(SettingsVocabulary.MAKER_NAME, ""),
            block.get().textOr(SettingsVocabulary.MAKER_ADDRESS, ""),
            none ? Optional.empty() : number,
            number.isPresent(),
            block.get().place()));
  }

  private List<Settings.Made> made(Fields fields) {
    List<Settings.Made> made = new ArrayList<>();
    Optional<Fields> block = fields.block(SettingsVocabulary.MADE_PER_MONTH);
    if (block.isPresent()) {
      for (Entry entry : block.get().others()) {
        Optional<Scalar> written = block.get().textOf(entry);
        OptionalDouble kg = new FigureReader(remarks).positive(written, Extent.WEIGHT);
        if (written.isPresent() && kg.isPresent()) {
          made.add(
              new Settings.Made(
                  entry.key().text(), kg.getAsDouble(), written.get().text(), entry.key().span()));
        }
      }
    }
    return made;
  }

  private Optional<String> jurisdiction(Fields fields) {
    Optional<String> told =
        matching(fields, SettingsVocabulary.JURISDICTION, "capital letters, as in EU, or none");
    return told.isPresent() && told.get().equals("none") ? Optional.empty() : told;
  }

  /** As for a limit of a recipe: below half of all it would loosen, and all can keep nothing. */
  private double lawKeptIn(Optional<Scalar> written) {
    if (written.isEmpty()) {
      return Settings.LAW_KEPT_IN;
    }
    OptionalDouble part = new FigureReader(remarks).share(written.get());
    if (part.isEmpty() || (part.getAsDouble() >= 0.5 && part.getAsDouble() < 1)) {
      CommonSpan.LAW_KEPT_IN.look(written, part, remarks);
      return part.orElse(Settings.LAW_KEPT_IN);
    }
    String text = written.get().text();
    remarks.add(
        Finding.error(
                VALUE,
                written.get().span(),
                part.getAsDouble() < 0.5
                    ? "law kept in "
                        + text
                        + " of batches would allow more than half of all batches to break it"
                    : "no law can be promised in " + text + " of batches")
            .helping("write from 50 % to 99.9 %, or leave the line out for 95 %"));
    return Settings.LAW_KEPT_IN;
  }

  private void format(Scalar format) {
    if (!format.text().equals(FORMAT)) {
      remarks.add(
          Finding.error(
                  OTHER_FORMAT,
                  format.span(),
                  "the folder has format "
                      + KeyFindings.shown(format.text())
                      + ", this version reads format "
                      + FORMAT)
              .helping("use a version of Pellucid that reads this format")
              .helping("if the folder was written for this version, write format: " + FORMAT));
    }
  }

  private Optional<String> matching(Fields fields, Key<Text> key, String shape) {
    Optional<Scalar> value = fields.text(key);
    if (value.isPresent() && !value.get().text().matches(key.holds().pattern())) {
      remarks.add(
          Finding.error(
                  VALUE,
                  value.get().span(),
                  KeyFindings.shown(value.get().text()) + " cannot be a " + key.name())
              .helping("write " + shape));
      return Optional.empty();
    }
    return value.isPresent() ? Optional.of(value.get().text()) : Optional.empty();
  }
}
