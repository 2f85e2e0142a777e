package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.COUNT;
import static dev.pellucid.engine.data.Vocabulary.DAY;
import static dev.pellucid.engine.data.Vocabulary.RANGE;
import static dev.pellucid.engine.data.Vocabulary.TEXT;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Named;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.Plant.Coater;

/** Every key of a file of {@code plant/}. */
final class PlantVocabulary {
  static final Key<Text> SCALE_NAME = must("name", TEXT, "what people call it");
  static final Key<Text> SCALE_MOST =
      must("most", AMOUNT, "the most that it carries, net of the container");
  static final Key<Text> SCALE_DIVISION = must("division", AMOUNT, "the step of its display");
  static final Key<Text> SCALE_LEAST =
      may("least", AMOUNT, "the least that is sensibly weighed on it; else 20 divisions");

  static final Keys SCALE_KEYS =
      Keys.of("a scale", SCALE_NAME, SCALE_MOST, SCALE_DIVISION, SCALE_LEAST);

  static final Key<Text> MIXER_NAME = must("name", TEXT, "what people call it");
  static final Key<Text> MIXER_VOLUME = must("volume", AMOUNT, "its whole volume");
  static final Key<Text> MIXER_FILL =
      must("fill", RANGE, "the part of the volume at which it mixes: 40 to 75 %");

  static final Key<Text> MIXER_TIME =
      may("time", RANGE, "how long it needs, and how long is still of use: 1 to 6 min");
  static final Key<Text> MIXER_EVENNESS =
      may("evenness", AMOUNT, "the variation of samples in its own test: 4.2 %");
  static final Key<Text> MIXER_TESTED = may("tested", DAY, "the day of that test");

  static final Keys MIXER_KEYS =
      Keys.of(
          "a mixer",
          MIXER_NAME,
          MIXER_VOLUME,
          MIXER_FILL,
          MIXER_TIME,
          MIXER_EVENNESS,
          MIXER_TESTED);

  static final Key<Text> DRYER_NAME = must("name", TEXT, "what people call it");
  static final Key<Named<DryerKind>> DRYER_KIND =
      must(
          "kind",
          new Named<>(DryerKind.class),
          "trays that are filled, a bed that is filled and blown through, or a belt that runs on");
  static final Key<Text> DRYER_TEMPERATURE =
      may("temperature", RANGE, "at which it works: 60 to 110 °C; else at any");
  static final Key<Text> DRYER_TRAY_LOAD =
      may("tray-load", AMOUNT, "wet feed on one tray; of trays alone");
  static final Key<Text> DRYER_TRAYS =
      may("trays", COUNT, "how many trays it takes at once; of trays alone");
  static final Key<Text> DRYER_WATER =
      may("water-per-hour", AMOUNT, "the most water that it takes off in an hour; of bed and belt");
  static final Key<Text> DRYER_HOLDS =
      may("holds", AMOUNT, "the wet feed that is in it at once; of bed and belt");

  static final Keys DRYER_KEYS =
      Keys.of(
          "a dryer",
          DRYER_NAME,
          DRYER_KIND,
          DRYER_TEMPERATURE,
          DRYER_TRAY_LOAD,
          DRYER_TRAYS,
          DRYER_WATER,
          DRYER_HOLDS);

  /** What a file calls the ways of drying. */
  enum DryerKind {
    TRAYS,
    BED,
    BELT
  }

  static final Key<Text> NAME = must("name", TEXT, "its name for people");
  static final Key<Text> SHRINK =
      must("shrink", AMOUNT, "the part of the feed lost to dust, fines and start-up");
  static final Key<Text> AIR_TEMPERATURE =
      must("air-temperature", AMOUNT, "the temperature of the mash before steam");
  static final Key<ListOf<Block>> SCALES =
      may("scales", new ListOf<>(new Block(SCALE_KEYS)), "what is weighed on");
  static final Key<Text> MOST_WEIGHINGS =
      may("most-weighings", COUNT, "in how many weighings one line may be weighed; else 4");
  static final Key<ListOf<Block>> MIXERS =
      may("mixers", new ListOf<>(new Block(MIXER_KEYS)), "what is mixed in");
  static final Key<ListOf<Block>> DRYERS =
      may("dryers", new ListOf<>(new Block(DRYER_KEYS)), "what is dried in");
  static final Key<Text> TRAY_LOAD =
      may("tray-load", AMOUNT, "wet feed on one tray, where the only dryer is one with trays");
  static final Key<Text> TRAYS = may("trays", COUNT, "how many trays that dryer takes at once");
  static final Key<ListOf<Text>> DIES =
      may("dies", new ListOf<>(AMOUNT), "the holes of the dies that are there");
  static final Key<ListOf<Text>> BAGS =
      may("bags", new ListOf<>(AMOUNT), "what goes into the bags that are filled there");
  static final Key<Named<Coater>> COATER =
      may("coater", new Named<>(Coater.class), "how oil goes on");
  static final Key<Text> COATER_LOAD =
      may("coater-load", AMOUNT, "the most feed that the coater takes at once");

  static final Key<ListOf<Named<AlsoMade>>> ALSO_MAKES =
      may(
          "also-makes",
          new ListOf<>(new Named<>(AlsoMade.class)),
          "what else is made on the same machines; practice/sequence.yaml must rule each");

  static final Keys PLANT_KEYS =
      Keys.of(
          "a plant",
          NAME,
          SHRINK,
          AIR_TEMPERATURE,
          SCALES,
          MOST_WEIGHINGS,
          MIXERS,
          DRYERS,
          TRAY_LOAD,
          TRAYS,
          DIES,
          BAGS,
          COATER,
          COATER_LOAD,
          ALSO_MAKES);

  private PlantVocabulary() {}
}
