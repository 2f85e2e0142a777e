package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Retention;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A form that does not stand heat in a mix that is heated. */
final class UnprotectedVitamin implements Rule {
  private static final Code CODE = new Code("unprotected-vitamin");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Setting> heat = Heat.possible(recipe);
    if (heat.isEmpty()) {
      return;
    }
    Map<String, Retention> classes = recipe.tables().practice().retention();
    for (Line line : recipe.recipe().taken()) {
      if (line.place() == Line.Place.COAT) {
        continue;
      }
      for (Ingredient one : line.material().ingredients()) {
        if (isUnprotected(one, classes)) {
          out.accept(finding(line, one, heat.get()));
        }
      }
    }
  }

  private static boolean isUnprotected(Ingredient one, Map<String, Retention> classes) {
    if (one.stability().isEmpty()) {
      return false;
    }
    for (String name : one.stability().values()) {
      Retention retention = classes.get(name);
      if (retention != null && retention.unprotected()) {
        return true;
      }
    }
    return false;
  }

  private static Finding finding(Line line, Ingredient one, Setting heat) {
    return Finding.warning(
            CODE,
            line.name(),
            one.name()
                + " is not protected and is heated to "
                + Figures.plain(heat.most(), Unit.CELSIUS))
        .seeing("heat written", heat.span())
        .helping("take a protected form, or coat it on after the heat")
        .about(new About(one.name(), About.Side.NONE, List.of(line.material().name())));
  }
}
