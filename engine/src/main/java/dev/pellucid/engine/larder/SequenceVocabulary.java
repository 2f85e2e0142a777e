package dev.pellucid.engine.larder;

import static dev.pellucid.engine.larder.Keys.may;
import static dev.pellucid.engine.larder.Keys.must;

import dev.pellucid.engine.larder.Ingredient.Trait;
import dev.pellucid.engine.larder.Keys.Holds.Block;
import dev.pellucid.engine.larder.Keys.Holds.ListOf;
import dev.pellucid.engine.larder.Keys.Holds.OneOf;

/** The keys of {@code practice/sequence.yaml}; that of a flush is one of batch records too. */
final class SequenceVocabulary {
  static final Keys LEFT_BEHIND =
      Keys.of(
          "what is left behind",
          may("holds", Vocabulary.WORD, "a group of groups.yaml, or an ingredient"),
          may("trait", new OneOf(Vocabulary.words(Trait.values())), "a trait of ingredients"),
          may("nutrient", Vocabulary.WORD, "a nutrient, beside above"),
          may("above", Vocabulary.AMOUNT, "as much of the nutrient leaves nothing worth a flush"));

  static final Keys ROW =
      Keys.of(
          "a row of the sequence",
          must("after", new Block(LEFT_BEHIND), "what a batch leaves behind"),
          may(
              "before",
              Vocabulary.WORDS,
              "species or groups it matters for; else all that do not hold it"),
          may("flush", new Block(Vocabulary.FLUSH), "what is run through in between"),
          may("never", Vocabulary.YES, "in place of a flush: the one must not follow the other"),
          must("because", Vocabulary.TEXT, "the reason"),
          Vocabulary.SOURCE);

  static final Keys SEQUENCE =
      Keys.of("sequence.yaml", must("rows", new ListOf(new Block(ROW)), "what may follow what"));

  private SequenceVocabulary() {}
}
