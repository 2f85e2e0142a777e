package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;

/** Oil of marine animals turns rancid, and nothing in the recipe keeps it. */
final class MarineOilWithoutAntioxidant implements Rule {
  private static final Code CODE = new Code("marine-oil-without-antioxidant");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    List<Line> lines = recipe.recipe().taken();
    if (isKept(lines)) {
      return;
    }
    for (Line line : lines) {
      for (Ingredient one : line.material().ingredients()) {
        if (one.traits().contains(Trait.MARINE_OIL)) {
          out.accept(finding(line, one));
        }
      }
    }
  }

  private static boolean isKept(List<Line> lines) {
    for (Line line : lines) {
      for (Ingredient one : line.material().ingredients()) {
        if (one.traits().contains(Trait.ANTIOXIDANT)) {
          return true;
        }
      }
    }
    return false;
  }

  private static Finding finding(Line line, Ingredient oil) {
    return Finding.warning(CODE, line.name(), oil.name() + " is in the feed without an antioxidant")
        .helping(
            "add an antioxidant, or write the trait antioxidant into the file of what keeps it")
        .about(new About(oil.name(), About.Side.NONE, List.of()));
  }
}
