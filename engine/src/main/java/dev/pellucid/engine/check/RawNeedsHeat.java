package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.measure.Unit;
import java.util.List;

/**
 * Raw animal matter, which carries germs, or raw legumes, which hold what hinders digestion, in a
 * feed that is never heated; what is coated on after the die is never heated either.
 */
final class RawNeedsHeat implements Rule {
  private static final Code CODE = new Code("raw-needs-heat");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    boolean heated = Heat.isCertain(recipe);
    for (Line line : recipe.recipe().taken()) {
      if (!heated || line.place() == Line.Place.COAT) {
        look(recipe, line, Trait.RAW_ANIMAL, Severity.ERROR, out);
        look(recipe, line, Trait.RAW_LEGUME, Severity.WARNING, out);
      }
    }
  }

  private static void look(
      RuleContext recipe, Line line, Trait raw, Severity severity, Remarks out) {
    for (Ingredient one : line.material().ingredients()) {
      if (one.traits().contains(raw)) {
        String from = Figures.plain(Heat.from(recipe), Unit.CELSIUS);
        out.accept(finding(severity, line, one, from));
      }
    }
  }

  private static Finding finding(Severity severity, Line line, Ingredient one, String from) {
    return Finding.of(
            CODE, severity, line.name(), one.name() + " is raw and never heated to " + from)
        .helping("cook it first, or condition the mix at " + from + " or more")
        .about(new About(one.name(), About.Side.NONE, List.of(line.material().name())));
  }
}
