package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/** Choline or trace salts lie beside vitamins in a premix that is kept: they destroy them. */
final class CholineBesideVitamins implements Rule {
  private static final Code CODE = new Code("choline-beside-vitamins");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Line line : recipe.recipe().taken()) {
      Optional<ResolvedPremix> premix = line.material().premixed();
      if (premix.isPresent() && premix.get().keeping().isPresent()) {
        look(line, premix.get().ingredients(), out);
      }
    }
  }

  private static void look(Line line, List<Ingredient> together, Remarks out) {
    boolean vitamins = false;
    Ingredient first = null;
    for (Ingredient one : together) {
      vitamins |= one.traits().contains(Trait.VITAMIN);
      first = first == null && destroys(one) ? one : first;
    }
    if (vitamins && first != null) {
      out.accept(finding(line, first));
    }
  }

  private static boolean destroys(Ingredient one) {
    return one.traits().contains(Trait.CHOLINE) || one.traits().contains(Trait.TRACE_SALT);
  }

  private static Finding finding(Line line, Ingredient one) {
    String premix = line.material().name();
    return Finding.warning(
            CODE,
            line.name(),
            one.name() + " lies beside vitamins in " + premix + ", which is kept")
        .helping("weigh " + one.name() + " into the feed by itself, or into another premix")
        .about(new About(one.name(), About.Side.NONE, List.of(premix)));
  }
}
