package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.Tolerance.Band;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One tolerance. Figures with a unit count in it; bare figures count in the unit in which the label
 * declares. A part may be a formula, {@code 20 / X + 2 %} of the declared figure: X is that figure,
 * in percent or, among bare figures, in its own unit, so that the tolerance is a hundredth of
 * {@code 20 + 2 X} in the same unit.
 */
final class ToleranceReader {
  static final Code CODE = new Code("data-tolerance");

  private static final Pattern BARE = Pattern.compile(Vocabulary.FIGURE);
  private static final Pattern FORMULA =
      Pattern.compile("(" + Vocabulary.FIGURE + ")\\s*/\\s*X\\s*\\+\\s*(.+)");

  private final Remarks remarks;
  private final Kind kind;
  private final boolean bare;

  private ToleranceReader(Kind kind, boolean bare, Remarks remarks) {
    this.kind = kind;
    this.bare = bare;
    this.remarks = remarks;
  }

  /**
   * Empty, with a finding, where a band cannot be read.
   *
   * @param constituents what it is for, at least one
   */
  static Read<Optional<Tolerance>> read(Fields block, List<Nutrient> constituents) {
    Remarks remarks = new Remarks();
    Optional<Tolerance> read = read(block.into(remarks), constituents, remarks);
    return new Read<>(
        remarks.isSound() ? read : Optional.empty(), remarks.findings(), remarks.isSound());
  }

  private static Optional<Tolerance> read(
      Fields fields, List<Nutrient> constituents, Remarks remarks) {
    List<Fields> below = fields.blocks(LabelVocabulary.TOLERANCE_BELOW);
    List<Fields> above = fields.blocks(LabelVocabulary.TOLERANCE_ABOVE);
    List<Scalar> measures = new ArrayList<>(measures(below));
    measures.addAll(measures(above));
    boolean bare = isAnyBare(measures);
    if (!bare && !measures.isEmpty()) {
      oneKind(fields, constituents, remarks);
    }
    ToleranceReader reader = new ToleranceReader(constituents.get(0).unit().kind(), bare, remarks);
    List<Band> under = reader.bands(below, fields.placeOf(LabelVocabulary.TOLERANCE_BELOW));
    List<Band> over = reader.above(fields, above, under);
    return under.isEmpty() || over.isEmpty()
        ? Optional.empty()
        : Optional.of(new Tolerance(under, over, bare, fields.place()));
  }

  /** The figures of bands that have a unit or are bare. */
  private static List<Scalar> measures(List<Fields> bands) {
    List<Scalar> measures = new ArrayList<>();
    for (Fields band : bands) {
      Optional<Scalar> under = band.text(LabelVocabulary.BAND_UNDER);
      if (under.isPresent()) {
        measures.add(under.get());
      }
      Optional<Scalar> absolute = band.text(LabelVocabulary.BAND_ABSOLUTE);
      if (absolute.isPresent()) {
        measures.add(absolute.get());
      }
    }
    return measures;
  }

  private static boolean isAnyBare(List<Scalar> measures) {
    for (Scalar value : measures) {
      if (BARE.matcher(value.text()).matches()) {
        return true;
      }
    }
    return false;
  }

  private static void oneKind(Fields fields, List<Nutrient> constituents, Remarks remarks) {
    Nutrient first = constituents.get(0);
    for (Nutrient other : constituents) {
      if (other.unit().kind() != first.unit().kind()) {
        remarks.add(
            Finding.error(
                    CODE,
                    fields.placeOf(LabelVocabulary.TOLERANCE_CONSTITUENTS),
                    first.name()
                        + " and "
                        + other.name()
                        + " are given in units of different kinds")
                .helping("give each kind a tolerance of its own"));
        return;
      }
    }
  }

  private List<Band> above(Fields fields, List<Fields> above, List<Band> below) {
    Optional<Scalar> times = fields.text(LabelVocabulary.TOLERANCE_ABOVE_TIMES);
    if (fields.has(LabelVocabulary.TOLERANCE_ABOVE) == times.isPresent()) {
      remarks.add(
          Finding.error(CODE, fields.place(), "a tolerance needs one of above and above-times")
              .helping("write the bands above the label, or how many times those below it count"));
      return List.of();
    }
    if (times.isEmpty()) {
      return bands(above, fields.placeOf(LabelVocabulary.TOLERANCE_ABOVE));
    }
    OptionalDouble factor = number(times.get());
    if (factor.isEmpty()) {
      return List.of();
    }
    List<Band> bands = new ArrayList<>();
    for (Band band : below) {
      bands.add(band.times(factor.getAsDouble()));
    }
    return bands;
  }

  private List<Band> bands(List<Fields> blocks, Span place) {
    List<Band> bands = new ArrayList<>();
    double lastEnd = 0;
    for (int i = 0; i < blocks.size(); i++) {
      Fields block = blocks.get(i);
      OptionalDouble end = measure(block, LabelVocabulary.BAND_UNDER);
      boolean last = i == blocks.size() - 1;
      if (block.has(LabelVocabulary.BAND_UNDER) == last) {
        remarks.add(
            Finding.error(
                    CODE,
                    block.place(),
                    last ? "the last band has an end" : "a band before the last has no end")
                .helping("give each band but the last the key under, by rising figure"));
      } else if (end.isPresent() && end.getAsDouble() <= lastEnd) {
        remarks.add(
            Finding.error(
                    CODE,
                    block.placeOf(LabelVocabulary.BAND_UNDER),
                    "the band ends where it should begin")
                .helping("write the bands by rising figure"));
      }
      lastEnd = end.orElse(lastEnd);
      bands.add(band(block, end));
    }
    if (blocks.isEmpty()) {
      remarks.add(
          Finding.error(CODE, place, "a tolerance without a band takes nothing")
              .helping("write a band: absolute: 1 %"));
    }
    return bands;
  }

  private Band band(Fields block, OptionalDouble end) {
    int told =
        (block.has(LabelVocabulary.BAND_ABSOLUTE) ? 1 : 0)
            + (block.has(LabelVocabulary.BAND_RELATIVE) ? 1 : 0)
            + (block.has(LabelVocabulary.BAND_NO_LIMIT) ? 1 : 0);
    if (told != 1) {
      remarks.add(
          Finding.error(CODE, block.place(), "a band needs one of absolute, relative and no-limit")
              .helping("write absolute: 1 %, or relative: 12.5 %, or no-limit: yes"));
    }
    Optional<Scalar> part = block.text(LabelVocabulary.BAND_RELATIVE);
    if (part.isEmpty()) {
      block.word(LabelVocabulary.BAND_NO_LIMIT, "an answer");
      return new Band(
          end,
          measure(block, LabelVocabulary.BAND_ABSOLUTE).orElse(0),
          0,
          block.has(LabelVocabulary.BAND_NO_LIMIT));
    }
    Matcher formula = FORMULA.matcher(FigureReader.spaced(part.get()));
    if (!formula.matches()) {
      return new Band(end, 0, share(part.get()), false);
    }
    Scalar rest = new Scalar(formula.group(3), part.get().plain(), part.get().span());
    double over = new BigDecimal(formula.group(1)).doubleValue() / 100;
    return new Band(end, bare ? over : Unit.PERCENT.toBase(over), share(rest), false);
  }

  private double share(Scalar value) {
    return new FigureReader(remarks).share(value).orElse(0);
  }

  private OptionalDouble measure(Fields block, Key<Text> key) {
    Optional<Scalar> value = block.text(key);
    if (value.isEmpty()) {
      return OptionalDouble.empty();
    }
    return bare ? number(value.get()) : new FigureReader(remarks).base(value.get(), kind);
  }

  private OptionalDouble number(Scalar value) {
    if (!BARE.matcher(value.text()).matches()) {
      remarks.add(
          FigureFindings.at(FigureFindings.FIGURE, value, "is no bare number")
              .helping("write the number alone: it counts in the unit of the label"));
      return OptionalDouble.empty();
    }
    Optional<String> number = new FigureReader(remarks).number(value, value.text());
    return number.isPresent()
        ? OptionalDouble.of(new BigDecimal(number.get()).doubleValue())
        : OptionalDouble.empty();
  }
}
