package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FigureReader.Ends;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.Plant.Besides;
import dev.pellucid.engine.data.PlantChecks.ScaleAt;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** One file of {@code plant/}. */
final class PlantReader {
  static final Code SCALE = new Code("data-scale");

  /** What a mash is taken to have where the file cannot be read, in °C. */
  private static final double ROOM = 20;

  /** Below 20 divisions a class III scale is not used in trade (OIML R 76, from memory). */
  private static final int LEAST_DIVISIONS = 20;

  /** Common practice, no source. */
  private static final int MOST_WEIGHINGS = 4;

  /** What a crane lifts begins about here, in kg; it is no bag of the same row. */
  private static final double BIG_BAG = 300;

  private final Remarks remarks;
  private final FigureReader figures;
  private final PlantChecks checks;

  private PlantReader(Remarks remarks) {
    this.remarks = remarks;
    this.figures = new FigureReader(remarks);
    this.checks = new PlantChecks(remarks);
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
    Optional<Fields> fields = file.fields(PlantVocabulary.PLANT_KEYS, remarks);
    return fields.isPresent() ? plant(file, fields.get()) : unread(file);
  }

  private static Plant unread(DataFile file) {
    return new Plant(
        file.stem(),
        file.stem(),
        0,
        ROOM,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        OptionalDouble.empty(),
        List.of(),
        MOST_WEIGHINGS,
        List.of(),
        List.of(),
        file.place());
  }

  private Plant plant(DataFile file, Fields fields) {
    OptionalDouble shrink = figures.share(fields.text(PlantVocabulary.SHRINK));
    OptionalDouble air = base(fields, PlantVocabulary.AIR_TEMPERATURE, Kind.TEMPERATURE);
    CommonSpan.SHRINK.look(fields.text(PlantVocabulary.SHRINK), shrink, remarks);
    CommonSpan.AIR.look(fields.text(PlantVocabulary.AIR_TEMPERATURE), air, remarks);
    OptionalDouble coated = positive(fields, PlantVocabulary.COATER_LOAD, Extent.WEIGHT);
    List<Mixer> mixers = mixers(fields);
    checks.lookAtCoater(fields, coated, mixers);
    return new Plant(
        file.stem(),
        fields.textOr(PlantVocabulary.NAME, file.stem()),
        shrink.orElse(0),
        air.orElse(ROOM),
        new DryerReader(mixers, remarks).dryers(fields),
        positives(fields, PlantVocabulary.DIES, Extent.HOLE, "a die", Double.MAX_VALUE),
        positives(fields, PlantVocabulary.BAGS, Extent.BAG, "a bag", BIG_BAG),
        fields.oneOf(PlantVocabulary.COATER, "a coater"),
        coated,
        scales(fields),
        count(fields, PlantVocabulary.MOST_WEIGHINGS).orElse(MOST_WEIGHINGS),
        mixers,
        alsoMakes(fields),
        fields.has(PlantVocabulary.NAME) ? fields.placeOf(PlantVocabulary.NAME) : fields.place());
  }

  /** Each once. */
  private static List<Besides> alsoMakes(Fields fields) {
    List<Besides> all = new ArrayList<>();
    Set<AlsoMade> told = EnumSet.noneOf(AlsoMade.class);
    for (Scalar word :
        fields.words(PlantVocabulary.ALSO_MAKES, "a kind of feed that is also made")) {
      AlsoMade what = Vocabulary.named(AlsoMade.class, word.text());
      if (told.add(what)) {
        all.add(new Besides(what, word.span()));
      }
    }
    return all;
  }

  /** Rising. Where one cannot be read, none are known. */
  private List<Double> positives(
      Fields fields, Key<ListOf<Text>> key, Extent extent, String what, double most) {
    List<Double> all = new ArrayList<>();
    boolean whole = true;
    List<Scalar> told = fields.texts(key);
    for (Scalar written : told) {
      OptionalDouble one = figures.positive(written, extent);
      whole &= one.isPresent();
      all.add(one.orElse(0));
    }
    new ListSlips(what, most, remarks).look(told, all);
    Collections.sort(all);
    return whole ? all : List.of();
  }

  private List<Scale> scales(Fields fields) {
    List<ScaleAt> scales = new ArrayList<>();
    boolean slipped = false;
    for (Fields block : fields.blocks(PlantVocabulary.SCALES)) {
      int before = remarks.findings().size();
      Optional<Scale> scale = scale(block);
      slipped |= remarks.findings().size() > before;
      if (scale.isPresent()) {
        scales.add(new ScaleAt(scale.get(), block));
      }
    }
    scales.sort(
        Comparator.comparingDouble((ScaleAt one) -> one.scale().division())
            .thenComparingDouble(one -> one.scale().most()));
    if (!slipped) {
      checks.lookAtScales(scales);
    }
    List<Scale> all = new ArrayList<>();
    for (ScaleAt one : scales) {
      all.add(one.scale());
    }
    return all;
  }

  private List<Mixer> mixers(Fields fields) {
    List<Mixer> mixers = new ArrayList<>();
    for (Fields block : fields.blocks(PlantVocabulary.MIXERS)) {
      Optional<Mixer> mixer = mixer(block);
      if (mixer.isPresent()) {
        mixers.add(mixer.get());
      }
    }
    return mixers;
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
    checks.look(block, most.getAsDouble(), division.getAsDouble(), told);
    return Optional.of(
        new Scale(
            block.textOr(PlantVocabulary.SCALE_NAME, ""),
            most.getAsDouble(),
            division.getAsDouble(),
            least));
  }

  private Optional<Mixer> mixer(Fields block) {
    OptionalDouble litres = positive(block, PlantVocabulary.MIXER_VOLUME, Extent.VOLUME);
    Optional<Scalar> written = block.text(PlantVocabulary.MIXER_FILL);
    Optional<Ends> fill = written.isPresent() ? figures.part(written.get()) : Optional.empty();
    if (fill.isPresent() && fill.get().low() > 0) {
      CommonSpan.FILL.lookAtQuotient(written.get(), fill.get().high() / fill.get().low(), remarks);
    }
    return litres.isPresent() && fill.isPresent()
        ? Optional.of(
            new Mixer(
                block.textOr(PlantVocabulary.MIXER_NAME, ""),
                litres.getAsDouble(),
                fill.get().low(),
                fill.get().high(),
                time(block),
                evenness(block)))
        : Optional.empty();
  }

  private Optional<Mixer.Time> time(Fields block) {
    Optional<Scalar> written = block.text(PlantVocabulary.MIXER_TIME);
    Optional<Ends> time = figures.range(written, Kind.TIME);
    if (time.isPresent() && written.isPresent() && time.get().low() > 0) {
      double times = time.get().high() / time.get().low();
      CommonSpan.MIXING_TIME.lookAtQuotient(written.get(), times, remarks);
    }
    return time.isPresent() && written.isPresent()
        ? Optional.of(
            new Mixer.Time(
                time.get().low(), time.get().high(), written.get().text(), written.get().span()))
        : Optional.empty();
  }

  private Optional<Mixer.Evenness> evenness(Fields block) {
    Optional<Scalar> written = block.text(PlantVocabulary.MIXER_EVENNESS);
    OptionalDouble share = figures.share(written);
    CommonSpan.EVENNESS.lookForTooLittle(written, share, remarks);
    Optional<LocalDate> day = figures.day(block.text(PlantVocabulary.MIXER_TESTED));
    return share.isPresent() && written.isPresent()
        ? Optional.of(new Mixer.Evenness(share.getAsDouble(), day, written.get().span()))
        : Optional.empty();
  }

  private OptionalInt count(Fields fields, Key<Text> key) {
    return figures.count(fields.text(key));
  }

  private OptionalDouble positive(Fields fields, Key<Text> key, Extent extent) {
    return figures.positive(fields.text(key), extent);
  }

  private OptionalDouble base(Fields fields, Key<Text> key, Kind kind) {
    return figures.base(fields.text(key), kind);
  }
}
