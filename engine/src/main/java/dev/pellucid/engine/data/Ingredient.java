package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Digestibility.Coefficient;
import dev.pellucid.engine.data.Digestibility.ProcessKind;
import dev.pellucid.text.Span;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One file of {@code ingredients/}.
 *
 * @param name the name of the file, as recipes call it
 * @param title for people
 * @param formerly names it had before
 * @param contents in the order of the file; a block for a species stands before a general one
 * @param stability nutrient to class, where it differs from the nutrient's own
 * @param protein the species whose protein it is, for example {@code african-catfish}
 * @param usualShare where its share of a feed usually lies, where it tells that
 * @param bulkDensity kg per litre as it lies in the mixer, where it tells its own
 * @param particle one grain of it, where the folder tells
 * @param maxMoisture the moisture above which it must not be used, a share
 * @param additive what makes it a feed additive on a label, where it is one
 * @param bag what the bag of a feed must know of it
 * @param lot the number of the lot whose measured contents these are; empty: those of the library
 * @param whole false when a part of its file could not be read: then what is here is not all
 */
public record Ingredient(
    String name,
    String title,
    List<String> formerly,
    Set<String> groups,
    Form form,
    Set<Trait> traits,
    List<ContentBlock> contents,
    List<Digestibility> digestibility,
    Map<String, String> stability,
    List<String> protein,
    List<Cap> caps,
    Optional<Usual> usualShare,
    OptionalDouble bulkDensity,
    Optional<Particle> particle,
    OptionalDouble maxMoisture,
    List<String> cautions,
    Optional<Additive> additive,
    OnBag bag,
    String lot,
    boolean whole,
    Span declared) {
  public Ingredient {
    formerly = List.copyOf(formerly);
    groups = Set.copyOf(groups);
    traits = Set.copyOf(traits);
    contents = List.copyOf(contents);
    digestibility = List.copyOf(digestibility);
    stability = Map.copyOf(stability);
    protein = List.copyOf(protein);
    caps = List.copyOf(caps);
    cautions = List.copyOf(cautions);
  }

  /** The same with the contents of one lot of it. */
  public Ingredient ofLot(String number, List<ContentBlock> measured) {
    return new Ingredient(
        name,
        title,
        formerly,
        groups,
        form,
        traits,
        measured,
        digestibility,
        stability,
        protein,
        caps,
        usualShare,
        bulkDensity,
        particle,
        maxMoisture,
        cautions,
        additive,
        bag,
        number,
        whole,
        declared);
  }

  /**
   * The same as a part of finished feed. It is no longer raw nor poured, harms nobody by the gram
   * and is handled as feed.
   */
  public Ingredient worked(String number, List<ContentBlock> left) {
    Set<Trait> stays = EnumSet.of(Trait.MEDICATED, Trait.SALT);
    stays.retainAll(traits);
    return new Ingredient(
        name,
        title,
        formerly,
        groups,
        form,
        stays,
        left,
        digestibility,
        stability,
        protein,
        caps,
        usualShare,
        bulkDensity,
        particle,
        maxMoisture,
        List.of(),
        additive,
        bag,
        number,
        whole,
        declared);
  }

  /**
   * One grain.
   *
   * @param mass kg
   * @param density kg per litre of the grain itself, where it was told by its diameter
   */
  public record Particle(
      double mass, OptionalDouble density, String asWritten, Source source, Span place) {}

  /**
   * What the bag of a feed must know of an ingredient.
   *
   * @param name what feed law calls it, where the file says it
   * @param modifiedAt where the file answers whether it is modified, or its name
   */
  public record OnBag(Optional<String> name, Modified modified, Span modifiedAt) {}

  /** Whether it comes of genetically modified plants, as its supplier declares. */
  public enum Modified {
    YES,
    NO,
    /** The file says that nobody knows. */
    NOT_KNOWN,
    /** The file says nothing. */
    UNTOLD
  }

  /** What a bag calls it. */
  public String onBag() {
    return bag.name().orElse(title);
  }

  /** Whether it is one of some groups or ingredients, by their names. */
  public boolean isOf(List<String> names) {
    if (names.contains(name)) {
      return true;
    }
    for (String group : groups) {
      if (names.contains(group)) {
        return true;
      }
    }
    return false;
  }

  /** What it is like in the hand. */
  public enum Form {
    MEAL,
    GRAIN,
    POWDER,
    CRYSTAL,
    OIL,
    LIQUID;

    /** Whether it is poured and not shovelled. */
    public boolean isLiquid() {
      return switch (this) {
        case OIL, LIQUID -> true;
        case MEAL, GRAIN, POWDER, CRYSTAL -> false;
      };
    }
  }

  /** What a rule must know of an ingredient; in files in lower case with hyphens. */
  public enum Trait {
    RAW_ANIMAL,
    RAW_LEGUME,
    MARINE_OIL,
    ANTIOXIDANT,
    VITAMIN,
    CHOLINE,
    TRACE_SALT,
    MEDICATED,
    /** Counts as salt when salt and the element sodium are told apart. */
    SALT
  }

  /**
   * A block of contents.
   *
   * @param species a species or group of species it holds for; empty: any
   * @param analyses how many analyses the figures and their spread rest on; empty where untold
   * @param byNutrient by the name of the nutrient
   * @param notKnown nutrients of which the file says that nobody knows
   */
  public record ContentBlock(
      Optional<String> species,
      Source source,
      OptionalInt analyses,
      Map<String, Content> byNutrient,
      Set<String> notKnown) {
    public ContentBlock {
      byNutrient = Map.copyOf(byNutrient);
      notKnown = Set.copyOf(notKnown);
    }

    public ContentBlock(
        Optional<String> species,
        Source source,
        OptionalInt analyses,
        Map<String, Content> byNutrient) {
      this(species, source, analyses, byNutrient, Set.of());
    }
  }

  /**
   * The most of it that a species takes.
   *
   * @param species a species or group of species
   * @param most a share; empty where the file says that there is no most
   * @param onPurpose whether the file says that it is meant so, however far from others
   */
  public record Cap(
      String species,
      OptionalDouble most,
      String asWritten,
      String because,
      boolean onPurpose,
      Source source,
      Span place) {

    /** Whether it stands before another: that of the species itself, then the lower. */
    private boolean isBefore(Cap other, String fed) {
      boolean own = species.equals(fed);
      if (own != other.species.equals(fed)) {
        return own;
      }
      return most.isPresent()
          && (other.most.isEmpty() || most.getAsDouble() < other.most.getAsDouble());
    }
  }

  /** Where its share of a feed usually lies, as parts of one. */
  public record Usual(double low, double high, String asWritten, Span place) {}

  /** Whether the file says that nobody knows how much of a nutrient it holds. */
  public boolean isNotKnown(String nutrient) {
    for (ContentBlock block : contents) {
      if (block.notKnown().contains(nutrient)) {
        return true;
      }
    }
    return false;
  }

  /** The block that tells a nutrient to a species: one of its own before one for all. */
  public Optional<ContentBlock> telling(String nutrient, Optional<Species> fed) {
    Optional<ContentBlock> general = Optional.empty();
    for (ContentBlock block : contents) {
      if (!block.byNutrient().containsKey(nutrient)) {
        continue;
      }
      if (block.species().isEmpty()) {
        general = Optional.of(block);
      } else if (fed.isPresent() && fed.get().is(block.species().get())) {
        return Optional.of(block);
      }
    }
    return general;
  }

  /**
   * What it tells a species of the most: that of the species, else of a group; of several the
   * lowest. Empty where it tells nothing, which is not the same as telling that there is no most.
   */
  public Optional<Cap> cap(Species fed) {
    Cap first = null;
    for (Cap cap : caps) {
      if (fed.is(cap.species()) && (first == null || cap.isBefore(first, fed.name()))) {
        first = cap;
      }
    }
    return Optional.ofNullable(first);
  }

  /**
   * The coefficient by which a digestible nutrient follows from what it is the part of, for a
   * species and a kind of process: its own, else that of what may stand in for it.
   */
  public Optional<Coefficient> coefficient(
      Nutrient digestible, Optional<Species> species, ProcessKind kind) {
    Optional<Coefficient> own = coefficient(digestible.digestibleOf(), species, kind);
    return own.isPresent() ? own : coefficient(digestible.standsIn(), species, kind);
  }

  /** Of several rows the one that is told most narrowly. */
  private Optional<Coefficient> coefficient(
      Optional<String> nutrient, Optional<Species> species, ProcessKind kind) {
    Digestibility best = null;
    for (Digestibility one : digestibility) {
      boolean holds =
          nutrient.isPresent()
              && one.coefficients().containsKey(nutrient.get())
              && one.isFor(species, kind);
      if (holds && (best == null || one.narrowness() > best.narrowness())) {
        best = one;
      }
    }
    return best == null
        ? Optional.empty()
        : Optional.of(
            new Coefficient(
                nutrient.get(), best.coefficients().getOrDefault(nutrient.get(), 0.0), best));
  }

  /** Whether a coefficient for a digestible nutrient is told for anyone. */
  public boolean isDigestibleForSome(Nutrient digestible) {
    for (Digestibility one : digestibility) {
      for (String nutrient : one.coefficients().keySet()) {
        if (digestible.digestibleOf().filter(nutrient::equals).isPresent()
            || digestible.standsIn().filter(nutrient::equals).isPresent()) {
          return true;
        }
      }
    }
    return false;
  }
}
