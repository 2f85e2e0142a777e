package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.Optional;

/**
 * A feed that is to keep more than twice as long as a premix in it keeps by itself. What is lost of
 * it until then is reckoned, first in the premix and then in the feed; but rows of retention are
 * for such times as makers try. Silent where one of the two times cannot be meant.
 */
final class FeedOutlivesPremix implements Rule {
  private static final Code CODE = new Code("feed-outlives-premix");
  private static final double TIMES = 2;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Setting> life = recipe.recipe().process().setting(Step.STORE, Property.SHELF_LIFE);
    if (life.isEmpty() || ProcessBounds.of(recipe).isOutside(Step.STORE, Property.SHELF_LIFE)) {
      return;
    }
    Practice practice = recipe.tables().practice();
    Optional<ResolvedPremix> first = Optional.empty();
    double least = life.get().most() / TIMES;
    for (Line line : recipe.recipe().taken()) {
      Optional<ResolvedPremix> premix = line.material().premixed();
      if (premix.isPresent()
          && premix.get().keeping().isPresent()
          && Closeness.isBelow(premix.get().keeping().get().hours(), least)
          && !isSaid(practice, premix.get().keeping().get())) {
        least = premix.get().keeping().get().hours();
        first = premix;
      }
    }
    if (first.isPresent()) {
      out.accept(finding(life.get(), first.get(), first.get().keeping().orElseThrow()));
    }
  }

  private static boolean isSaid(Practice practice, ResolvedPremix.Keeping keeping) {
    Optional<PracticeBound> bound = practice.bound(BoundOf.PREMIX_SHELF_LIFE);
    return bound.isPresent() && Closeness.isBelow(keeping.hours(), bound.get().low());
  }

  private static Finding finding(
      Setting life, ResolvedPremix premix, ResolvedPremix.Keeping keeping) {
    return Finding.warning(
            CODE,
            life.span(),
            "the feed is to keep "
                + Figures.plain(life.most(), Unit.DAY)
                + ", "
                + premix.code()
                + " in it keeps "
                + Figures.plain(keeping.hours(), Unit.DAY))
        .seeing("shelf life of " + premix.code(), keeping.span())
        .helping("let the feed keep less long, or take a premix of stabler forms");
  }
}
