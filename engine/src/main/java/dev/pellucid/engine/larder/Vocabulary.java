package dev.pellucid.engine.larder;

import static dev.pellucid.engine.larder.Keys.may;
import static dev.pellucid.engine.larder.Keys.must;

import dev.pellucid.engine.larder.Digestibility.ProcessKind;
import dev.pellucid.engine.larder.Ingredient.Form;
import dev.pellucid.engine.larder.Ingredient.Trait;
import dev.pellucid.engine.larder.Keys.Holds;
import dev.pellucid.engine.larder.Keys.Holds.Block;
import dev.pellucid.engine.larder.Keys.Holds.ListOf;
import dev.pellucid.engine.larder.Keys.Holds.OneOf;
import dev.pellucid.engine.larder.Keys.Holds.Text;
import dev.pellucid.engine.larder.Keys.Key;
import dev.pellucid.engine.larder.Plant.Coater;
import dev.pellucid.engine.larder.Practice.BoundOf;
import dev.pellucid.engine.larder.Source.Standing;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Every key of every data file. Its order is the order in which people write them. */
final class Vocabulary {
  static final String NAME = "[a-z][a-z0-9]*(-[a-z0-9]+)*";
  static final String FIGURE = "[0-9]{1,12}(\\.[0-9]{1,12})?";

  static final Holds TEXT = new Text("");
  static final Holds WORD = new Text("^" + NAME + "$");
  static final Holds WORDS = new ListOf(WORD);
  static final Holds TEXTS = new ListOf(TEXT);
  static final Holds AMOUNT = new Text("^" + FIGURE + "\\s*\\S+$");
  static final Holds RANGE = new Text("^" + FIGURE + " to " + FIGURE + "\\s*\\S+$");
  static final Holds CONTENT =
      new Text(
          "^(none|below "
              + FIGURE
              + "\\s*\\S+|"
              + FIGURE
              + "(\\s*(±|\\+/-)\\s*"
              + FIGURE
              + ")?\\s*\\S+)$");
  static final Holds YES = new OneOf(List.of("yes"));
  static final List<String> WHERE_TOLD = List.of("where-told");
  static final Holds DAY = new Text("^[0-9]{4}-[0-9]{2}-[0-9]{2}$");

  static final Key SOURCE =
      must("source", WORD, "where the figures come from: a name of sources.yaml");

  static final Keys SETTINGS =
      Keys.of(
          "pellucid.yaml",
          must("format", new OneOf(List.of("1")), "the format of the folder"),
          must("name", TEXT, "what the folder is called on sheets"),
          must("currency", new Text("^[A-Z]{3}$"), "three capital letters, as in EUR"),
          must("jurisdiction", new Text("^(none|[A-Z]{2,8})$"), "whose law applies, or none"),
          may("plant", WORD, "the plant that makes the feed: a file of plant/"),
          may("label", WORD, "the rules of the bag label: a file of label/"));

  static final Keys SOURCE_ENTRY =
      Keys.of(
          "a source",
          must("standing", new OneOf(words(Standing.values())), "how far it can be trusted"),
          must("cite", TEXT, "the source in words"),
          may("address", TEXT, "where it can be read"),
          may("read", DAY, "the day on which it was read"),
          may("licence", TEXT, "the terms of the data"));

  static final Keys SOURCES =
      Keys.of("sources.yaml").orElse("the name of a source", new Block(SOURCE_ENTRY));

  static final Keys GROUPS = Keys.of("groups.yaml").orElse("the name of a group", TEXT);

  static final Keys NUTRIENT =
      Keys.of(
          "a nutrient",
          must("title", TEXT, "its name for people"),
          must("unit", TEXT, "the unit in which it is printed"),
          may("of-the-whole", YES, "one of the parts that add up to 100 %"),
          may("part-of", WORD, "the nutrient whose mass it is a part of"),
          may("judged", new OneOf(WHERE_TOLD), "only by what tells it; untold is nothing"),
          may("stability", WORD, "stable, or a class of practice/retention.yaml"),
          may("formula", TEXT, "how it follows from other nutrients"),
          may("digestible-of", WORD, "the nutrient of which it is the digestible part"),
          may("source", WORD, "where the formula comes from"));

  static final Keys NUTRIENTS =
      Keys.of("a file of nutrients").orElse("the name of a nutrient", new Block(NUTRIENT));

  static final Key FOR_SPECIES = may("species", WORD, "the species or group of species it is for");

  static final Keys CONTENTS =
      Keys.of("a block of contents", SOURCE, FOR_SPECIES).orElse("the name of a nutrient", CONTENT);

  static final Keys DIGESTIBILITY =
      Keys.of(
              "a block of digestibility",
              SOURCE,
              FOR_SPECIES,
              may("process", new OneOf(words(ProcessKind.values())), "the kind of process"))
          .orElse("the name of a nutrient", AMOUNT);

  static final Keys CAP =
      Keys.of(
          "a cap",
          must("species", WORD, "the species or group of species"),
          must("max", AMOUNT, "the most that a feed may hold"),
          must("because", TEXT, "the reason"),
          SOURCE);

  static final Keys CLASSES =
      Keys.of("a block of stability").orElse("the name of a nutrient", WORD);

  static final Keys PARTICLE =
      Keys.of(
          "a particle",
          SOURCE,
          may("mass", AMOUNT, "what one grain weighs"),
          may("diameter", AMOUNT, "how wide one grain is, in place of its mass"),
          may("density", AMOUNT, "of the grain itself, beside the diameter"));

  static final Keys INGREDIENT =
      Keys.of(
          "an ingredient",
          must("name", TEXT, "its name for people"),
          may("formerly", WORDS, "names it had before"),
          must("groups", WORDS, "groups of groups.yaml"),
          must("form", new OneOf(words(Form.values())), "what it is like in the hand"),
          may("traits", new ListOf(new OneOf(words(Trait.values()))), "what rules must know of it"),
          must("contents", new ListOf(new Block(CONTENTS)), "what it holds, as fed"),
          may("digestibility", new ListOf(new Block(DIGESTIBILITY)), "the parts that fish digest"),
          may("stability", new Block(CLASSES), "where the form differs from the nutrient's class"),
          may("protein", WORDS, "the species whose protein it is"),
          may("caps", new ListOf(new Block(CAP)), "the most that species take"),
          may("bulk-density", AMOUNT, "mass per volume as it lies in the mixer"),
          may("particle", new Block(PARTICLE), "one grain of it"),
          may("use-below-moisture", AMOUNT, "above this moisture it must not be used"),
          may("cautions", TEXTS, "what the batch sheet warns of"),
          may(
              "additive",
              new Block(LabelVocabulary.ADDITIVE),
              "where a label lists it as an additive"));

  static final Keys SIZE =
      Keys.of(
          "a size",
          must("fish", RANGE, "masses of the fish: 50 to 250 g"),
          must("pellet", RANGE, "sizes of the pellet: 3 to 4 mm"),
          may("daily-meal", AMOUNT, "feed of one day as a share of the fish: 3 %"),
          SOURCE);

  static final Keys SPECIES =
      Keys.of(
          "a species",
          must("name", TEXT, "its name for people"),
          may("groups", WORDS, "groups of species that it belongs to"),
          must("habits", new ListOf(new OneOf(SpeciesReader.HABITS)), "where it takes its feed"),
          may("sizes", new ListOf(new Block(SIZE)), "which pellet a fish takes"),
          may("feeding", TEXTS, "how it is fed, for the bag"));

  static final Holds COUNT = new Text("^[1-9][0-9]{0,5}$");

  static final Keys SCALE =
      Keys.of(
          "a scale",
          must("name", TEXT, "what people call it"),
          must("most", AMOUNT, "the most that it carries, net of the container"),
          must("division", AMOUNT, "the step of its display"),
          may("least", AMOUNT, "the least that is sensibly weighed on it; else 20 divisions"));

  static final Keys MIXER =
      Keys.of(
          "a mixer",
          must("name", TEXT, "what people call it"),
          must("volume", AMOUNT, "its whole volume"),
          must("fill", RANGE, "the part of the volume at which it mixes: 40 to 75 %"));

  static final Keys PLANT =
      Keys.of(
          "a plant",
          must("name", TEXT, "its name for people"),
          must("shrink", AMOUNT, "the part of the feed lost to dust, fines and start-up"),
          must("air-temperature", AMOUNT, "the temperature of the mash before steam"),
          may("scales", new ListOf(new Block(SCALE)), "what is weighed on"),
          may("most-weighings", COUNT, "in how many weighings one line may be weighed; else 4"),
          may("mixers", new ListOf(new Block(MIXER)), "what is mixed in"),
          may("tray-load", AMOUNT, "wet feed on one tray"),
          may("trays", COUNT, "how many trays the dryer takes at once"),
          may("dies", new ListOf(AMOUNT), "the holes of the dies that are there"),
          may("coater", new OneOf(words(Coater.values())), "how oil goes on"),
          may("coater-load", AMOUNT, "the most feed that the coater takes at once"));

  static final Keys BOUND =
      Keys.of(
          "a bound", may("from", AMOUNT, "the low end"), may("to", AMOUNT, "the high end"), SOURCE);

  static final Keys BOUNDS =
      new Keys(
          "bounds.yaml",
          Arrays.stream(BoundOf.values())
              .map(bound -> may(bound.word(), new Block(BOUND), "what practice bounds"))
              .toList(),
          java.util.Optional.empty());

  static final Keys ROWS =
      Keys.of("a list of temperatures").orElse("a temperature, as in 80 °C", AMOUNT);

  static final Keys RETENTION_CLASS = retentionClass();

  static final Keys RETENTION =
      Keys.of("retention.yaml").orElse("the name of a class", new Block(RETENTION_CLASS));

  static final Keys SPREADS =
      Keys.of("spreads.yaml", SOURCE).orElse("the name of a nutrient", AMOUNT);

  static final Keys DENSITIES =
      new Keys(
          "densities.yaml",
          Stream.concat(
                  Stream.of(SOURCE, may(DensitiesReader.WET_MASH, AMOUNT, "a mash with its water")),
                  words(Form.values()).stream()
                      .map(
                          form ->
                              may(form, AMOUNT, "what has this form and no density of its own")))
              .toList(),
          java.util.Optional.empty());

  static final Keys STEAM_ROW =
      Keys.of(
          "a row of steam",
          must("temperature", AMOUNT, "in °C"),
          must("liquid", AMOUNT, "enthalpy of the water, kJ/kg"),
          must("vapour", AMOUNT, "enthalpy of the steam, kJ/kg"));

  static final Keys STEAM =
      Keys.of(
          "steam.yaml",
          SOURCE,
          must("rows", new ListOf(new Block(STEAM_ROW)), "by rising temperature"));

  static final Keys CAUTIONS = cautions();

  static final Keys FLUSH =
      Keys.of(
          "a flush",
          must("quantity", AMOUNT, "what is run through"),
          must("with", WORD, "an ingredient"),
          must("to", TEXT, "where it goes afterwards"));

  static final Keys PRICE_ENTRIES =
      Keys.of("a list of prices").orElse("the name of an ingredient", AMOUNT);

  static final Keys PRICES =
      Keys.of(
          "a file of prices",
          must("from", DAY, "the day from which the prices hold"),
          SOURCE,
          must("prices", new Block(PRICE_ENTRIES), "money per kg or t"));

  static final Keys LOT =
      Keys.of(
          "a lot",
          must("number", new Text("^" + LotsReader.NUMBER + "$"), "the number on the sack"),
          must("ingredient", WORD, "what it is a lot of"),
          must("received", DAY, "the day it came"),
          may("best-before", DAY, "its last good day"),
          must("quantity", AMOUNT, "what came"),
          may("inspection", new OneOf(words(Lot.Inspection.values())), "what was found at receipt"),
          may("supplier", TEXT, "who sold it, for a recall"),
          may("remark", TEXT, "what was seen"),
          may("contents", new ListOf(new Block(CONTENTS)), "what was measured in it, as fed"));

  static final Keys LOTS =
      Keys.of("a file of lots", must("lots", new ListOf(new Block(LOT)), "one after the other"));

  static final Keys WEIGHED =
      Keys.of(
          "a weighed line",
          must("line", TEXT, "the line of the recipe"),
          may("lot", TEXT, "the lot it was taken from, or the batch of a premix"),
          may("weight", AMOUNT, "what was weighed"));

  static final Keys READING =
      Keys.of(
          "a reading",
          must("at", AMOUNT, "time since the start"),
          may("moisture", AMOUNT, "what the meter said"),
          may("tray", AMOUNT, "what the tray weighed, net"));

  static final Keys DRYING =
      Keys.of(
          "drying",
          must("before", AMOUNT, "the moisture when it was loaded"),
          may("load", AMOUNT, "what was on the tray, net"),
          must("readings", new ListOf(new Block(READING)), "in the order of time"));

  static final Keys BAGS =
      Keys.of(
          "bags",
          may("full", COUNT, "how many are full"),
          may("of", AMOUNT, "what a full one holds"),
          may("rest", AMOUNT, "what is in the last one"));

  static final Keys MIXER_TEST =
      Keys.of(
          "a mixer test",
          may("tracer", TEXT, "what was looked for"),
          must("readings", TEXTS, "one for each sample, ten of them if you can"));

  static final Keys SIEVE_ROW =
      Keys.of(
          "a sieve",
          must("opening", AMOUNT, "its opening"),
          must("mass", AMOUNT, "what stayed on it"));

  static final Keys SIEVE =
      Keys.of(
          "a sieve analysis",
          may("charge", AMOUNT, "what went onto the stack"),
          must("rows", new ListOf(new Block(SIEVE_ROW)), "one for each sieve"),
          may("pan", AMOUNT, "what fell through all of them"));

  static final Keys DURABILITY =
      Keys.of(
          "durability",
          must("before", AMOUNT, "pellets that went into the box"),
          must("after", AMOUNT, "pellets left on the sieve"));

  static final Keys RELEASE =
      Keys.of(
          "a release",
          must("decision", new OneOf(words(BatchRecord.Decision.values())), "what becomes of it"),
          must("by", TEXT, "who decided"),
          may("because", TEXT, "the reason"));

  static final Holds BATCH_NUMBER =
      new Text("^[A-Z][A-Z0-9]*(-[A-Z0-9]+)*-[0-9]{4}-[0-9]{2}-[0-9]{2}-[1-9][0-9]{0,3}$");

  static final Keys BATCH =
      Keys.of(
          "a batch record",
          must("size", AMOUNT, "the kg planned, weighed, before overage and water"),
          may("after", BATCH_NUMBER, "the batch that was made on the same line before it"),
          may("flushed", new Block(FLUSH), "what was run through between the two"),
          may("weighed", new ListOf(new Block(WEIGHED)), "line by line"),
          may("water", AMOUNT, "water added to the mix"),
          may("mixer-test", new Block(MIXER_TEST), "how even the mix was"),
          may("sieve", new Block(SIEVE), "how fine the grind was"),
          may("drying", new Block(DRYING), "how the moisture came down"),
          may("durability", new Block(DURABILITY), "how hard the pellets are"),
          may("bags", new Block(BAGS), "what was filled"),
          may("deviations", TEXTS, "what went otherwise than planned"),
          may("release", new Block(RELEASE), "whether it may be fed"),
          may("closed", YES, "it is fed or gone: kept for the trace, no longer judged"));

  private Vocabulary() {}

  private static Keys retentionClass() {
    List<Key> keys = new ArrayList<>();
    keys.add(SOURCE);
    keys.add(may("unprotected", YES, "a form that should not go into a heated feed"));
    for (Step step : RetentionReader.STEPS) {
      keys.add(may(step.word(), new Block(ROWS), "what is left after the step, by temperature"));
    }
    keys.add(may(Step.STORE.word(), new Block(ROWS), "what is left after a month, by temperature"));
    return new Keys("a stability class", keys, java.util.Optional.empty());
  }

  private static Keys cautions() {
    List<Key> keys = new ArrayList<>();
    keys.add(may(CautionsReader.INSPECTION, TEXTS, "what to look at before anything is weighed"));
    for (Step step : Step.values()) {
      keys.add(may(step.word(), TEXTS, "cautions at this step"));
    }
    for (String trait : words(Trait.values())) {
      keys.add(may(trait, TEXTS, "cautions where an ingredient of this trait is weighed"));
    }
    return new Keys("cautions.yaml", keys, java.util.Optional.empty());
  }

  /** The words of an enum as files write them: lower case with hyphens. */
  static List<String> words(Enum<?>[] values) {
    return Arrays.stream(values)
        .map(value -> value.name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .toList();
  }

  /** The value of an enum that a word of {@link #words} means. */
  static <E extends Enum<E>> E named(Class<E> type, String word) {
    return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
