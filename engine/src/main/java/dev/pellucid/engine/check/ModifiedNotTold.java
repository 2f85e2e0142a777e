package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Modified;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.LabelRules.ModifiedWords;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An ingredient of which the bag must say whether it comes of genetically modified plants, and
 * nobody says so.
 */
final class ModifiedNotTold implements Rule {
  private static final Code CODE = new Code("genetically-modified-not-told");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<LabelRules> rules = OnBags.rules(recipe);
    if (rules.isEmpty() || rules.get().modified().isEmpty()) {
      return;
    }
    List<String> seen = new ArrayList<>();
    for (Row row : OnBags.rows(recipe)) {
      Ingredient one = row.ingredient();
      Modified told = one.bag().modified();
      if (told == Modified.UNTOLD || told == Modified.NOT_KNOWN) {
        Optional<ModifiedWords> words = rules.get().modified(one);
        if (words.isPresent() && OnBags.isFirst(row, seen)) {
          out.accept(finding(one, words.get()));
        }
      }
    }
  }

  private static Finding finding(Ingredient one, ModifiedWords words) {
    String told =
        one.bag().modified() == Modified.NOT_KNOWN ? " says that nobody knows" : " does not say";
    Finding finding =
        Finding.warning(
            CODE,
            one.bag().modifiedAt(),
            one.name()
                + told
                + " whether it comes of genetically modified plants, and the bag must say it");
    return OnBags.asking(finding, words.asked())
        .noting("if it does, the bag says behind its name: (" + words.words() + ")")
        .helping(
            "ask the supplier, who must tell it in writing; then write in its file"
                + " genetically-modified: yes or genetically-modified: no")
        .about(new About(one.name(), About.Side.NONE, List.of("genetically-modified")));
  }
}
