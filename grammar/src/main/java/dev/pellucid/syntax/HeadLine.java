package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.function.Consumer;

/** One of the lines between the opening line and the first section. */
public sealed interface HeadLine {
  Span span();

  /** A line that the head of a recipe may have. */
  sealed interface OfRecipe extends HeadLine {
    /** Hands the line to who takes its kind. */
    void into(Recipe head);
  }

  /** Who takes each kind of line in the head of a recipe. */
  record Recipe(
      Consumer<Status> status,
      Consumer<ForSpecies> species,
      Consumer<Fish> fish,
      Consumer<Habit> habit,
      Consumer<Meets> meets,
      Consumer<Batch> batch,
      Consumer<AtPlant> plant) {}

  /** A line that the head of a premix may have. */
  sealed interface OfPremix extends HeadLine {
    /** The dose, where the line tells it. */
    Optional<Amount> doseTold();

    /** The plant that makes it, where the line tells it. */
    default Optional<Word> plantTold() {
      return Optional.empty();
    }
  }

  /** A line that the head of a profile may have. */
  sealed interface OfProfile extends HeadLine {
    /** Hands the line to who takes its kind. */
    void into(Profile head);
  }

  /** Who takes each kind of line in the head of a profile. */
  record Profile(
      Consumer<ForSpecies> species,
      Consumer<Fish> fish,
      Consumer<ProfileKind> kind,
      Consumer<Jurisdiction> jurisdiction,
      Consumer<FromSource> source,
      Consumer<Status> status,
      Consumer<Holds> holds,
      Consumer<MustHold> mustHold,
      Consumer<OfMaterials> materials) {}

  /**
   * {@code reviewed by "A. Marsh" on 2026-11-20}.
   *
   * @param day as it is written
   */
  record Review(Quoted by, Word day, Span span) {}

  /** {@code status approved}, with the review that stands behind it. */
  record Status(Word status, Optional<Review> review, Span span)
      implements OfRecipe, OfPremix, OfProfile {
    @Override
    public void into(Recipe head) {
      head.status().accept(this);
    }

    @Override
    public Optional<Amount> doseTold() {
      return Optional.empty();
    }

    @Override
    public void into(Profile head) {
      head.status().accept(this);
    }
  }

  /** {@code species african-catfish}; in a profile it may name a group of species. */
  record ForSpecies(Word species, Span span) implements OfRecipe, OfPremix, OfProfile {
    @Override
    public void into(Recipe head) {
      head.species().accept(this);
    }

    @Override
    public Optional<Amount> doseTold() {
      return Optional.empty();
    }

    @Override
    public void into(Profile head) {
      head.species().accept(this);
    }
  }

  /** {@code fish 50 to 250 g}. */
  record Fish(Range mass, Span span) implements OfRecipe, OfProfile {
    @Override
    public void into(Recipe head) {
      head.fish().accept(this);
    }

    @Override
    public void into(Profile head) {
      head.fish().accept(this);
    }
  }

  /** {@code habit sinking}. */
  record Habit(Word habit, Span span) implements OfRecipe {
    @Override
    public void into(Recipe head) {
      head.habit().accept(this);
    }
  }

  /** {@code meets catfish-grower}; one profile a line. */
  record Meets(Word profile, Span span) implements OfRecipe {
    @Override
    public void into(Recipe head) {
      head.meets().accept(this);
    }
  }

  /** {@code batch 60 kg weighed} or {@code batch 60 kg finished}. */
  record Batch(Amount mass, Word basis, Span span) implements OfRecipe {
    @Override
    public void into(Recipe head) {
      head.batch().accept(this);
    }
  }

  /** {@code plant farm-shed}: the file of {@code plant/} that tells where it is made. */
  record AtPlant(Word plant, Span span) implements OfRecipe, OfPremix {
    @Override
    public void into(Recipe head) {
      head.plant().accept(this);
    }

    @Override
    public Optional<Amount> doseTold() {
      return Optional.empty();
    }

    @Override
    public Optional<Word> plantTold() {
      return Optional.of(plant);
    }
  }

  /** {@code dose 10 g/kg}, in a premix. */
  record Dose(Amount dose, Span span) implements OfPremix {
    @Override
    public Optional<Amount> doseTold() {
      return Optional.of(dose);
    }
  }

  /** {@code kind need}, {@code practice}, {@code law} or {@code guidance}, in a profile. */
  record ProfileKind(Word kind, Span span) implements OfProfile {
    @Override
    public void into(Profile head) {
      head.kind().accept(this);
    }
  }

  /** {@code jurisdiction EU}, in a profile of law. */
  record Jurisdiction(Word jurisdiction, Span span) implements OfProfile {
    @Override
    public void into(Profile head) {
      head.jurisdiction().accept(this);
    }
  }

  /** {@code source nrc-2011}, in a profile. */
  record FromSource(Word source, Span span) implements OfProfile {
    @Override
    public void into(Profile head) {
      head.source().accept(this);
    }
  }

  /** {@code holds 9 limits}, in a profile: how many lines its limits have. */
  record Holds(Numeral count, Span span) implements OfProfile {
    @Override
    public void into(Profile head) {
      head.holds().accept(this);
    }
  }

  /** {@code must hold antioxidants}, in a profile: a group, an ingredient or a premix. */
  record MustHold(Word what, Span span) implements OfProfile {
    @Override
    public void into(Profile head) {
      head.mustHold().accept(this);
    }
  }

  /** {@code materials fish-meals}, in a profile: a group or an ingredient that it bounds itself. */
  record OfMaterials(Word what, Span span) implements OfProfile {
    @Override
    public void into(Profile head) {
      head.materials().accept(this);
    }
  }
}
