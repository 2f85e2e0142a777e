package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FigureReader.Ends;
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
  private final Remarks remarks;

  SpeciesReader(Sources sources, Remarks remarks) {
    this.sources = sources;
    this.remarks = remarks;
  }

  Species read(DataFile file) {
    return file.fields(SpeciesVocabulary.SPECIES_KEYS, remarks)
        .map(fields -> species(file, fields))
        .orElseGet(
            () ->
                new Species(
                    file.stem(),
                    file.stem(),
                    Set.of(),
                    Set.of(),
                    List.of(),
                    List.of(),
                    file.place()));
  }

  private Species species(DataFile file, Fields fields) {
    List<Size> sizes = new ArrayList<>();
    for (Fields block : fields.blocks(SpeciesVocabulary.SIZES)) {
      size(block).ifPresent(sizes::add);
    }
    return new Species(
        file.stem(),
        fields.text(SpeciesVocabulary.NAME).map(Scalar::text).orElse(file.stem()),
        groups(fields),
        habits(fields),
        sizes,
        fields.texts(SpeciesVocabulary.FEEDING).stream().map(Scalar::text).toList(),
        fields.has(SpeciesVocabulary.NAME)
            ? fields.placeOf(SpeciesVocabulary.NAME)
            : fields.place());
  }

  private Set<String> groups(Fields fields) {
    Set<String> groups = new LinkedHashSet<>();
    for (Scalar group : fields.texts(SpeciesVocabulary.GROUPS)) {
      if (group.text().matches(Vocabulary.NAME)) {
        groups.add(group.text());
      } else {
        remarks.add(KeyFindings.name(group.span(), group.text(), "a group of species"));
      }
    }
    return groups;
  }

  private static Set<String> habits(Fields fields) {
    Set<String> habits = new LinkedHashSet<>();
    fields.words(SpeciesVocabulary.HABITS, "a habit").forEach(word -> habits.add(word.text()));
    return habits;
  }

  private Optional<Size> size(Fields block) {
    FigureReader figures = new FigureReader(remarks);
    Source source = sources.of(block);
    Optional<Scalar> fish = block.text(SpeciesVocabulary.SIZE_FISH);
    Optional<Ends> mass = fish.flatMap(value -> figures.range(value, Kind.MASS));
    Optional<Ends> pellet =
        block
            .text(SpeciesVocabulary.SIZE_PELLET)
            .flatMap(value -> figures.range(value, Kind.LENGTH));
    OptionalDouble meal = meal(block, figures);
    if (fish.isEmpty() || mass.isEmpty() || pellet.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Size(
            mass.get().low(),
            mass.get().high(),
            pellet.get().low(),
            pellet.get().high(),
            meal,
            fish.get().text(),
            source,
            fish.get().span()));
  }

  private static OptionalDouble meal(Fields block, FigureReader figures) {
    return block
        .text(SpeciesVocabulary.SIZE_DAILY_MEAL)
        .map(value -> figures.positive(value, Extent.SHARE))
        .orElse(OptionalDouble.empty());
  }
}
