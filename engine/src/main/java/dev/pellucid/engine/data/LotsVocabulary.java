package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.DAY;
import static dev.pellucid.engine.data.Vocabulary.TEXT;
import static dev.pellucid.engine.data.Vocabulary.WORD;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Named;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;

/** Every key of a file of {@code lots/}. */
final class LotsVocabulary {
  static final Key<Text> NUMBER =
      must("number", new Text("^" + LotsReader.NUMBER + "$"), "the number on the sack");
  static final Key<Text> INGREDIENT = must("ingredient", WORD, "what it is a lot of");
  static final Key<Text> RECEIVED = must("received", DAY, "the day it came");
  static final Key<Text> BEST_BEFORE = may("best-before", DAY, "its last good day");
  static final Key<Text> QUANTITY = must("quantity", AMOUNT, "what came");
  static final Key<Named<Lot.Inspection>> INSPECTION =
      may("inspection", new Named<>(Lot.Inspection.class), "what was found at receipt");
  static final Key<Text> SUPPLIER = may("supplier", TEXT, "who sold it, for a recall");
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
          SUPPLIER,
          REMARK,
          IngredientVocabulary.GENETICALLY_MODIFIED,
          CONTENTS);

  static final Key<ListOf<Block>> LOTS =
      must("lots", new ListOf<>(new Block(LOT_KEYS)), "one after the other");

  static final Keys LOTS_KEYS = Keys.of("a file of lots", LOTS);

  private LotsVocabulary() {}
}
