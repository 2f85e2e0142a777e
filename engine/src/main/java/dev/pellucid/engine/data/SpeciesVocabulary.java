package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.RANGE;
import static dev.pellucid.engine.data.Vocabulary.SOURCE;
import static dev.pellucid.engine.data.Vocabulary.TEXT;
import static dev.pellucid.engine.data.Vocabulary.TEXTS;
import static dev.pellucid.engine.data.Vocabulary.WORDS;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.OneOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;

/** Every key of a file of {@code species/}. */
final class SpeciesVocabulary {
  static final Key<Text> SIZE_FISH = must("fish", RANGE, "masses of the fish: 50 to 250 g");
  static final Key<Text> SIZE_PELLET = must("pellet", RANGE, "sizes of the pellet: 3 to 4 mm");
  static final Key<Text> SIZE_DAILY_MEAL =
      may("daily-meal", AMOUNT, "feed of one day as a share of the fish: 3 %");

  static final Keys SIZE_KEYS = Keys.of("a size", SIZE_FISH, SIZE_PELLET, SIZE_DAILY_MEAL, SOURCE);

  static final Key<Text> NAME = must("name", TEXT, "its name for people");
  static final Key<ListOf<Text>> GROUPS =
      may("groups", WORDS, "groups of species that it belongs to");
  static final Key<ListOf<OneOf>> HABITS =
      must("habits", new ListOf<>(new OneOf(SpeciesReader.HABITS)), "where it takes its feed");
  static final Key<ListOf<Block>> SIZES =
      may("sizes", new ListOf<>(new Block(SIZE_KEYS)), "which pellet a fish takes");
  static final Key<ListOf<Text>> FEEDING = may("feeding", TEXTS, "how it is fed, for the bag");

  static final Key<ListOf<Text>> NEEDS_TOLD =
      may("needs-told", WORDS, "nutrients that an ingredient must tell before it gets more");

  static final Keys SPECIES_KEYS =
      Keys.of("a species", NAME, GROUPS, HABITS, SIZES, FEEDING, NEEDS_TOLD);

  private SpeciesVocabulary() {}
}
