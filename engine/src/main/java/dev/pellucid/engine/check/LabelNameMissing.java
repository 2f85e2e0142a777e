package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.LabelRules.Asked;
import dev.pellucid.engine.data.LabelRules.Must;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An ingredient that the bag would call by the name that the store has for it. */
final class LabelNameMissing implements Rule {
  private static final Code CODE = new Code("label-name-missing");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<LabelRules> rules = OnBags.rules(recipe);
    if (rules.isEmpty() || !rules.get().mustTell().containsKey(Must.INGREDIENT_NAMES)) {
      return;
    }
    List<String> seen = new ArrayList<>();
    for (Row row : OnBags.rows(recipe)) {
      Ingredient one = row.ingredient();
      if (one.bag().name().isEmpty() && OnBags.isFirst(row, seen)) {
        out.accept(finding(one, rules.get().mustTell().get(Must.INGREDIENT_NAMES)));
      }
    }
  }

  private static Finding finding(Ingredient one, Asked asked) {
    Finding finding =
        Finding.warning(
            CODE,
            one.declared(),
            one.name() + " has no label-name, so the bag calls it \"" + one.title() + "\"");
    String whose = one.additive().isPresent() ? "the act that allows the additive" : "feed law";
    return OnBags.asking(finding, asked)
        .helping("add a line to its file: label-name: and what " + whose + " calls it")
        .about(new About(one.name(), About.Side.NONE, List.of("label-name")));
  }
}
