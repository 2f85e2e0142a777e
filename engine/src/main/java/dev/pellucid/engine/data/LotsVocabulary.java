package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.DAY;
import static dev.pellucid.engine.data.Vocabulary.TEXT;
import static dev.pellucid.engine.data.Vocabulary.TEXTS;
import static dev.pellucid.engine.data.Vocabulary.WORD;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Named;
import dev.pellucid.engine.data.Keys.Holds.OneOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import java.util.List;

/** Every key of a file of {@code lots/}. */
final class LotsVocabulary {
  static final Key<Text> NUMBER =
      must("number", new Text("^" + LotsReader.NUMBER + "$"), "the number on the sack");
  static final Key<Text> INGREDIENT = must("ingredient", WORD, "what it is a lot of");
  static final Key<Text> RECEIVED = must("received", DAY, "the day it came");
  static final Key<Text> BEST_BEFORE = may("best-before", DAY, "its last good day");
  static final Key<Text> QUANTITY = must("quantity", AMOUNT, "what came");
  static final Key<OneOf> INSPECTION =
      may(
          "inspection",
          new OneOf(List.of("waiting", "passed", "failed")),
          "what was found at receipt, where nothing else is told of it");

  static final Key<Named<LotState.State>> STATE =
      must("state", new Named<>(LotState.State.class), "how it stands from that day on");
  static final Key<ListOf<Text>> ONLY_FOR =
      may("only-for", TEXTS, "recipes, species, groups or profiles that it may go into");
  static final Key<ListOf<Text>> NOT_FOR = may("not-for", TEXTS, "those that it may not go into");
  static final Key<Text> AT_MOST = may("at-most", AMOUNT, "its largest share of a feed");
  static final Keys STATE_KEYS =
      Keys.of(
          "the state of a lot",
          SignedVocabulary.DAY,
          SignedVocabulary.BY,
          STATE,
          ONLY_FOR,
          NOT_FOR,
          AT_MOST,
          SignedVocabulary.MAY_BECAUSE);
  static final Key<ListOf<Block>> STATES =
      may(
          "states",
          new ListOf<>(new Block(STATE_KEYS)),
          "what was found and decided of it, in place of inspection");

  static final Key<Text> MOVED_WEIGHT = must("weight", AMOUNT, "how much");
  static final Keys OUT_KEYS =
      Keys.of(
          "what left the store",
          SignedVocabulary.DAY,
          SignedVocabulary.BY,
          MOVED_WEIGHT,
          SignedVocabulary.BECAUSE);
  static final Keys COUNTED_KEYS =
      Keys.of("a count", SignedVocabulary.DAY, SignedVocabulary.BY, MOVED_WEIGHT);
  static final Key<Text> LESS = may("less", AMOUNT, "so much less is there than the books say");
  static final Key<Text> MORE = may("more", AMOUNT, "so much more is there than the books say");
  static final Keys CORRECTION_KEYS =
      Keys.of(
          "a correction of the store",
          SignedVocabulary.DAY,
          SignedVocabulary.BY,
          LESS,
          MORE,
          SignedVocabulary.BECAUSE);
  static final Key<ListOf<Block>> RETURNED =
      may("returned", new ListOf<>(new Block(OUT_KEYS)), "what went back to who sold it");
  static final Key<ListOf<Block>> DISPOSED =
      may("disposed", new ListOf<>(new Block(OUT_KEYS)), "what was thrown away");
  static final Key<ListOf<Block>> CORRECTIONS =
      may("corrections", new ListOf<>(new Block(CORRECTION_KEYS)), "what was put right");
  static final Key<ListOf<Block>> COUNTED =
      may("counted", new ListOf<>(new Block(COUNTED_KEYS)), "what was found in the store");

  static final Key<Text> SUPPLIER = may("supplier", TEXT, "who sold it, for a recall");
  static final Key<Text> SUPPLIER_LOT =
      may("supplier-lot", TEXT, "the number that the supplier has for it");
  static final Key<Text> DELIVERY_NOTE =
      may("delivery-note", TEXT, "the number of the paper that it came with");
  static final Key<Text> BIN =
      may("bin", TEXT, "the bin or tank it was put into, on top of what was there");
  static final Key<Text> REMARK = may("remark", TEXT, "what was seen");
  static final Key<ListOf<Block>> CONTENTS =
      may(
          "contents",
          new ListOf<>(new Block(IngredientVocabulary.MEASURED_KEYS)),
          "what was measured in it, as fed");

  static final Keys LOT_KEYS =
      Keys.of(
          "a lot",
          NUMBER,
          INGREDIENT,
          RECEIVED,
          BEST_BEFORE,
          QUANTITY,
          INSPECTION,
          STATES,
          SUPPLIER,
          SUPPLIER_LOT,
          DELIVERY_NOTE,
          BIN,
          RETURNED,
          DISPOSED,
          CORRECTIONS,
          COUNTED,
          REMARK,
          IngredientVocabulary.GENETICALLY_MODIFIED,
          CONTENTS);

  static final Key<ListOf<Block>> LOTS =
      must("lots", new ListOf<>(new Block(LOT_KEYS)), "one after the other");

  static final Key<Text> EMPTIED_BIN = must("bin", TEXT, "its name");
  static final Key<Text> EMPTIED = must("emptied", DAY, "a day on which nothing was left in it");
  static final Keys EMPTIED_KEYS = Keys.of("a bin that was emptied", EMPTIED_BIN, EMPTIED);
  static final Key<ListOf<Block>> BINS =
      may("bins", new ListOf<>(new Block(EMPTIED_KEYS)), "one entry for each day it was empty");

  static final Keys LOTS_KEYS = Keys.of("a file of lots", LOTS, BINS);

  private LotsVocabulary() {}
}
