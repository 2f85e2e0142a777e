package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.text.Meant;
import java.util.List;
import java.util.Optional;

/**
 * A share outside the span that the ingredient tells as usual: of an amino acid, a salt or an
 * antioxidant most often a slipped point. A {@code rest} is what is left and no slip of its own.
 */
final class ShareOutsideUsual implements Rule {
  private static final Code CODE = new Code("share-outside-usual");

  /** What is moved by one place and falls this near to the span may be meant. */
  private static final double TEN = 10;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Line line : recipe.recipe().taken()) {
      Optional<Material.Single> single = line.material().single();
      if (single.isPresent()
          && !line.rest()
          && single.get().ingredient().usualShare().isPresent()) {
        Ingredient.Usual usual = single.get().ingredient().usualShare().get();
        double part = line.designed().part();
        if (part > 0
            && (Closeness.isAbove(part, usual.high()) || Closeness.isBelow(part, usual.low()))) {
          out.accept(finding(line, part, usual));
        }
      }
    }
  }

  private static Finding finding(Line line, double part, Ingredient.Usual usual) {
    String name = line.material().name();
    boolean above = part > usual.high();
    Finding finding =
        Finding.warning(
                CODE,
                line.figure(),
                name + " is at " + line.designed() + ", feed usually has " + usual.asWritten())
            .seeing("the usual span", usual.place())
            .about(new About(name, above ? About.Side.MAX : About.Side.MIN, List.of(name)));
    double meant = above ? part / TEN : part * TEN;
    if (meant < usual.low() || meant > usual.high()) {
      return finding.helping("fix the share, or widen usual-share of " + name);
    }
    String words = Figures.plain(meant * 100) + " %";
    return finding
        .helping(Meant.question(words))
        .fixing(line.figure(), words)
        .helping("if it is meant so, widen usual-share of " + name);
  }
}
