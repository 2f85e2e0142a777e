package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * A meal, a grain or a premix among what is put on after the dryer: it does not stick to a pellet,
 * and most often its line slipped out of the mix. Common practice, no source.
 */
final class CoatOfDry implements Rule {
  private static final Code CODE = new Code("coat-of-dry");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isCause() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (!recipe.recipe().isApproved()) {
      return;
    }
    for (Line line : recipe.recipe().taken()) {
      if (line.place() == Line.Place.COAT && isDry(line)) {
        out.accept(finding(line));
      }
    }
  }

  private static boolean isDry(Line line) {
    if (line.material().premixed().isPresent()) {
      return true;
    }
    Optional<Ingredient.Form> form =
        line.material().single().map(single -> single.ingredient().form());
    return form.isPresent()
        && (form.get() == Ingredient.Form.MEAL || form.get() == Ingredient.Form.GRAIN);
  }

  private static Finding finding(Line line) {
    String name = line.material().name();
    return Finding.warning(
            CODE,
            line.name(),
            name + " stands under coat, and it is dry: it does not stay on a pellet")
        .helping("move the line to mix, if it slipped out of there")
        .about(new About(name, About.Side.NONE, List.of()));
  }
}
