package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.SOURCE;
import static dev.pellucid.engine.data.Vocabulary.TEXT;
import static dev.pellucid.engine.data.Vocabulary.WORD;
import static dev.pellucid.engine.data.Vocabulary.WORDS;
import static dev.pellucid.engine.data.Vocabulary.YES;

import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Named;
import dev.pellucid.engine.data.Keys.Holds.OneOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;

/** The keys of {@code practice/sequence.yaml}; that of a flush is one of batch records too. */
final class SequenceVocabulary {
  static final Key<Text> LEFT_HOLDS =
      may("holds", WORD, "a group of groups.yaml, or an ingredient");
  static final Key<Named<Trait>> LEFT_TRAIT =
      may("trait", new Named<>(Trait.class), "a trait of ingredients");
  static final Key<Text> LEFT_NUTRIENT = may("nutrient", WORD, "a nutrient, beside above");
  static final Key<Text> LEFT_ABOVE =
      may("above", AMOUNT, "as much of the nutrient leaves nothing worth a flush");

  static final Key<Named<AlsoMade>> LEFT_MADE =
      may("made", new Named<>(AlsoMade.class), "something that the plant also makes");

  static final Keys LEFT_BEHIND_KEYS =
      Keys.of("what is left behind", LEFT_HOLDS, LEFT_TRAIT, LEFT_NUTRIENT, LEFT_ABOVE, LEFT_MADE);

  static final Key<Text> FLUSH_QUANTITY = must("quantity", AMOUNT, "what is run through");
  static final Key<Text> FLUSH_WITH = must("with", WORD, "an ingredient");
  static final Key<Text> FLUSH_TO = must("to", TEXT, "where it goes afterwards");

  static final Keys FLUSH_KEYS = Keys.of("a flush", FLUSH_QUANTITY, FLUSH_WITH, FLUSH_TO);

  static final Key<Block> ROW_AFTER =
      must("after", new Block(LEFT_BEHIND_KEYS), "what a batch leaves behind");
  static final Key<ListOf<Text>> ROW_BEFORE =
      may("before", WORDS, "species or groups it matters for; else all that do not hold it");
  static final Key<Block> ROW_FLUSH =
      may("flush", new Block(FLUSH_KEYS), "what is run through in between");
  static final Key<OneOf> ROW_NEVER =
      may("never", YES, "in place of a flush: the one must not follow the other");
  static final Key<Text> ROW_BECAUSE = must("because", TEXT, "the reason");

  static final Keys ROW_KEYS =
      Keys.of(
          "a row of the sequence",
          ROW_AFTER,
          ROW_BEFORE,
          ROW_FLUSH,
          ROW_NEVER,
          ROW_BECAUSE,
          SOURCE);

  static final Key<ListOf<Block>> ROWS =
      must("rows", new ListOf<>(new Block(ROW_KEYS)), "what may follow what");

  static final Keys SEQUENCE_KEYS = Keys.of("sequence.yaml", ROWS);

  private SequenceVocabulary() {}
}
