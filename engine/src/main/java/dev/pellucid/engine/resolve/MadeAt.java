package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Word;
import java.util.List;
import java.util.Optional;

/**
 * The plant at which a recipe or a premix is made: the one that its head names, else the one of the
 * settings, where these name one.
 */
final class MadeAt {
  static final Code UNKNOWN = new Code("unknown-plant");

  private final Lookup lookup;
  private final List<Finding> findings;

  MadeAt(Lookup lookup, List<Finding> findings) {
    this.lookup = lookup;
    this.findings = findings;
  }

  /**
   * @param told what the head says; an unknown name is a finding, and gives no plant
   */
  Optional<Plant> of(Optional<Word> told) {
    if (told.isEmpty()) {
      Optional<String> usual = lookup.frame().settings().plant();
      return usual.isPresent() ? lookup.plant(usual.get()) : Optional.empty();
    }
    Word name = told.get();
    Optional<Plant> plant = lookup.plant(name.text());
    if (plant.isEmpty()) {
      findings.add(
          Limits.near(
              Finding.error(UNKNOWN, name.span(), name + " is not a plant of this folder"),
              name,
              lookup.plants(),
              "add the file plant/" + name + ".yaml, or fix the name"));
    }
    return plant;
  }
}
