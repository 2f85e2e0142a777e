package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FigureReader.Ends;
import dev.pellucid.engine.data.SizeChecks.Row;
import dev.pellucid.engine.data.Species.Size;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** One file of {@code species/}. */
final class SpeciesReader {
  /** Where in the water a feed may go. */
  static final List<String> HABITS = List.of("floating", "sinking", "slow-sinking");

  private final Sources sources;
  private final Known nutrients;
  private final Remarks remarks;

  SpeciesReader(Sources sources, Known nutrients, Remarks remarks) {
    this.sources = sources;
    this.nutrients = nutrients;
    this.remarks = remarks;
  }

  Species read(DataFile file) {
    Optional<Fields> fields = file.fields(SpeciesVocabulary.SPECIES_KEYS, remarks);
    return fields.isPresent()
        ? species(file, fields.get())
        : new Species(
            file.stem(),
            file.stem(),
            Set.of(),
            Set.of(),
            List.of(),
            List.of(),
            List.of(),
            file.place());
  }

  private Species species(DataFile file, Fields fields) {
    List<Size> sizes = new ArrayList<>();
    List<Row> run = new ArrayList<>();
    for (Fields block : fields.blocks(SpeciesVocabulary.SIZES)) {
      Optional<Row> row = size(block);
      if (row.isPresent()) {
        run.add(row.get());
        sizes.add(row.get().size());
      } else {
        new SizeChecks(run, remarks).look();
        run.clear();
      }
    }
    new SizeChecks(run, remarks).look();
    return new Species(
        file.stem(),
        fields.textOr(SpeciesVocabulary.NAME, file.stem()),
        groups(fields),
        habits(fields),
        sizes,
        fields.strings(SpeciesVocabulary.FEEDING),
        needsTold(fields),
        fields.has(SpeciesVocabulary.NAME)
            ? fields.placeOf(SpeciesVocabulary.NAME)
            : fields.place());
  }

  private Set<String> groups(Fields fields) {
    Set<String> groups = new LinkedHashSet<>();
    for (Scalar group : fields.texts(SpeciesVocabulary.GROUPS)) {
      if (Vocabulary.isName(group.text())) {
        groups.add(group.text());
      } else {
        remarks.add(KeyFindings.name(group.span(), group.text(), "a group of species"));
      }
    }
    return groups;
  }

  private List<String> needsTold(Fields fields) {
    List<String> needed = new ArrayList<>();
    for (Scalar nutrient : fields.texts(SpeciesVocabulary.NEEDS_TOLD)) {
      if (nutrients.check(nutrient, remarks)) {
        needed.add(nutrient.text());
      }
    }
    return needed;
  }

  private static Set<String> habits(Fields fields) {
    Set<String> habits = new LinkedHashSet<>();
    for (Scalar word : fields.words(SpeciesVocabulary.HABITS, "a habit")) {
      habits.add(word.text());
    }
    return habits;
  }

  private Optional<Row> size(Fields block) {
    FigureReader figures = new FigureReader(remarks);
    Source source = sources.of(block);
    Optional<Scalar> fish = block.text(SpeciesVocabulary.SIZE_FISH);
    Optional<Ends> mass = figures.range(fish, Kind.MASS);
    Optional<Scalar> told = block.text(SpeciesVocabulary.SIZE_PELLET);
    Optional<Ends> pellet = figures.range(told, Kind.LENGTH);
    Optional<Scalar> daily = block.text(SpeciesVocabulary.SIZE_DAILY_MEAL);
    OptionalDouble meal = figures.positive(daily, Extent.SHARE);
    boolean slipped = CommonSpan.DAILY_MEAL.look(daily, meal, remarks);
    if (told.isEmpty() || fish.isEmpty() || mass.isEmpty() || pellet.isEmpty()) {
      return Optional.empty();
    }
    Size size =
        new Size(
            mass.get().low(),
            mass.get().high(),
            pellet.get().low(),
            pellet.get().high(),
            meal,
            fish.get().text(),
            source,
            fish.get().span());
    return Optional.of(new Row(size, fish.get(), told.get(), slipped ? Optional.empty() : daily));
  }
}
