package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.Particle;
import dev.pellucid.engine.quality.Particles;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Extent;
import java.util.Optional;
import java.util.OptionalDouble;

/** {@code particle} of an ingredient: its mass, or its diameter and density, taken as a ball. */
final class ParticleReader {
  static final Code PARTICLE = new Code("data-particle");

  private final Sources sources;
  private final Remarks remarks;
  private final FigureReader figures;

  ParticleReader(Sources sources, Remarks remarks) {
    this.sources = sources;
    this.remarks = remarks;
    this.figures = new FigureReader(remarks);
  }

  Optional<Particle> read(Fields ingredient) {
    Optional<Fields> block = ingredient.block(IngredientVocabulary.PARTICLE);
    return block.isPresent() ? particle(block.get()) : Optional.empty();
  }

  private Optional<Particle> particle(Fields block) {
    Source source = sources.of(block);
    boolean byMass = block.has(IngredientVocabulary.PARTICLE_MASS);
    boolean byBall =
        block.has(IngredientVocabulary.PARTICLE_DIAMETER)
            && block.has(IngredientVocabulary.PARTICLE_DENSITY);
    if (byMass == byBall
        || (byMass
            && (block.has(IngredientVocabulary.PARTICLE_DIAMETER)
                || block.has(IngredientVocabulary.PARTICLE_DENSITY)))) {
      remarks.add(
          Finding.error(
                  PARTICLE,
                  block.place(),
                  "a particle is given by its mass, or by its diameter and density")
              .helping("write mass: 0.002 mg, or diameter: 100 µm and density: 1.5 kg/L"));
      return Optional.empty();
    }
    Optional<Scalar> value =
        block.text(
            byMass ? IngredientVocabulary.PARTICLE_MASS : IngredientVocabulary.PARTICLE_DIAMETER);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    return byMass ? ofMass(value.get(), source) : ofBall(value.get(), block, source);
  }

  private Optional<Particle> ofMass(Scalar value, Source source) {
    OptionalDouble mass = figures.positive(value, Extent.PARTICLE);
    return mass.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Particle(
                mass.getAsDouble(), OptionalDouble.empty(), value.text(), source, value.span()));
  }

  private Optional<Particle> ofBall(Scalar value, Fields block, Source source) {
    OptionalDouble diameter = figures.positive(value, Extent.LENGTH);
    OptionalDouble density =
        figures.positive(block.text(IngredientVocabulary.PARTICLE_DENSITY), Extent.DENSITY);
    if (diameter.isEmpty() || density.isEmpty()) {
      return Optional.empty();
    }
    double mass = Particles.massOfBall(diameter.getAsDouble(), density.getAsDouble());
    return Optional.of(new Particle(mass, density, value.text(), source, value.span()));
  }
}
