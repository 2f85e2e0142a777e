package dev.pellucid.engine.records;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Modified;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.LabelRules.ModifiedWords;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A lot that comes of genetically modified plants, of an ingredient that says it does not: bags are
 * printed by the ingredient, and would not say so. The other way round a bag says more than it
 * must, and nothing is asked.
 */
final class ModifiedLot {
  static final Code CODE = new Code("lot-genetically-modified");

  private ModifiedLot() {}

  static void look(FeedTables tables, Consumer<Finding> out) {
    Optional<LabelRules> rules = tables.label();
    if (rules.isEmpty()) {
      return;
    }
    for (Lot lot : tables.lots().values()) {
      Ingredient one = tables.ingredients().get(lot.ingredient());
      if (one != null
          && lot.bag().modified() == Modified.YES
          && one.bag().modified() == Modified.NO) {
        Optional<ModifiedWords> words = rules.get().modified(one);
        if (words.isPresent()) {
          out.accept(finding(lot, one, words.get()));
        }
      }
    }
  }

  private static Finding finding(Lot lot, Ingredient one, ModifiedWords words) {
    return Finding.warning(
            CODE,
            lot.bag().modifiedAt(),
            "lot "
                + lot.number()
                + " comes of genetically modified plants, and "
                + one.name()
                + " says no")
        .seeing("ingredient written", one.bag().modifiedAt())
        .noting("no bag of a feed with this lot would say it")
        .seeing("asked for by " + words.asked().article() + ", written", words.asked().place())
        .helping(
            "write genetically-modified: yes in the file of "
                + one.name()
                + " and print the labels anew")
        .helping("or keep this lot for an ingredient of its own, in a bin of its own")
        .about(new About(lot.number(), About.Side.NONE, List.of("genetically-modified")));
  }
}
