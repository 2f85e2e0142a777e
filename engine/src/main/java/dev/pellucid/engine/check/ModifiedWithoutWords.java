package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Modified;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An ingredient that says it is genetically modified, and label rules without words for it. */
final class ModifiedWithoutWords implements Rule {
  private static final Code CODE = new Code("genetically-modified-without-words");

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
      if (one.bag().modified() == Modified.YES
          && rules.get().modified(one).isEmpty()
          && OnBags.isFirst(row, seen)) {
        out.accept(finding(one, rules.get()));
      }
    }
  }

  private static Finding finding(Ingredient one, LabelRules rules) {
    return Finding.warning(
            CODE,
            one.bag().modifiedAt(),
            one.name() + " comes of genetically modified plants, and the bag does not say so")
        .seeing("label rules", rules.declared())
        .noting("no row of genetically-modified in label/" + rules.name() + ".yaml holds it")
        .helping(
            "add " + one.name() + " to the holds: of the row of its plant there, or write a row")
        .about(new About(one.name(), About.Side.NONE, List.of("genetically-modified")));
  }
}
