package dev.pellucid.engine.larder;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Kind;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A file of {@code species/}. */
final class SpeciesReader {
  static final List<String> HABITS = List.of("floating", "sinking", "slow-sinking");

  private final Shelf shelf;

  SpeciesReader(Shelf shelf) {
    this.shelf = shelf;
  }

  Species read(SourceFile file, Fields block) {
    List<Species.Size> sizes = new ArrayList<>();
    for (Fields one : block.blocks("sizes", Vocabulary.SIZE)) {
      Optional<Scalar> fish = one.text("fish");
      Optional<FigureReader.Ends> mass = fish.flatMap(t -> shelf.figures().range(t, Kind.MASS));
      Optional<FigureReader.Ends> pellet =
          one.text("pellet").flatMap(text -> shelf.figures().range(text, Kind.LENGTH));
      Optional<Source> source = shelf.source(one);
      if (mass.isPresent() && pellet.isPresent() && source.isPresent()) {
        sizes.add(
            new Species.Size(
                mass.get().low(),
                mass.get().high(),
                pellet.get().low(),
                pellet.get().high(),
                one.text("pellet").orElseThrow().text(),
                source.get(),
                fish.orElseThrow().span()));
      }
    }
    return new Species(
        file.stem(),
        block.text("name").map(Scalar::text).orElse(file.stem()),
        texts(block.texts("groups")),
        texts(block.words("habits", "a habit", HABITS)),
        sizes,
        file.beginning());
  }

  private static Set<String> texts(List<Scalar> scalars) {
    return scalars.stream().map(Scalar::text).collect(Collectors.toUnmodifiableSet());
  }
}
