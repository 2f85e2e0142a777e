package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;

/** A medicated ingredient: a prescription and a licensed mill decide on it, no recipe here does. */
final class Medicated implements Rule {
  private static final Code CODE = new Code("medicated-ingredient");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Line line : recipe.recipe().taken()) {
      for (Ingredient one : line.material().ingredients()) {
        if (one.traits().contains(Trait.MEDICATED)) {
          out.accept(finding(line, one));
        }
      }
    }
  }

  private static Finding finding(Line line, Ingredient one) {
    return Finding.error(
            CODE, line.name(), one.name() + " is medicated, no recipe here may hold it")
        .seeing("ingredient written", one.declared())
        .helping("take it out; medicated feed needs a prescription and a licensed manufacturer")
        .about(new About(one.name(), About.Side.NONE, List.of(line.material().name())));
  }
}
