package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Additive;
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

/** An additive that the bag must tell with its identification number, and that has none. */
final class AdditiveNumberMissing implements Rule {
  private static final Code CODE = new Code("additive-number-missing");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<LabelRules> rules = OnBags.rules(recipe);
    if (rules.isEmpty()
        || !rules.get().additivesApart()
        || !rules.get().mustTell().containsKey(Must.ADDITIVE_NUMBERS)) {
      return;
    }
    List<String> seen = new ArrayList<>();
    for (Row row : OnBags.rows(recipe)) {
      Ingredient one = row.ingredient();
      Optional<Additive> additive = one.additive();
      if (additive.isPresent()
          && additive.get().number().isEmpty()
          && rules.get().declares(additive.get()).isPresent()
          && OnBags.isFirst(row, seen)) {
        out.accept(finding(one, rules.get().mustTell().get(Must.ADDITIVE_NUMBERS)));
      }
    }
  }

  private static Finding finding(Ingredient one, Asked asked) {
    Finding finding =
        Finding.warning(
            CODE,
            one.declared(),
            one.name() + " must stand on the bag with its number, and has none");
    return OnBags.asking(finding, asked)
        .helping(
            "add number: to the block additive: of its file, with the one on the sack, as 3b605")
        .about(new About(one.name(), About.Side.NONE, List.of("number")));
  }
}
