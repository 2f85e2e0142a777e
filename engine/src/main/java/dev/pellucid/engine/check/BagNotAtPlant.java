package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Choices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A bag that the plant does not fill, where the plant tells its bags: of a feed or a premix. */
final class BagNotAtPlant implements Rule {
  private static final Code CODE = new Code("bag-not-at-plant");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    look(recipe.recipe().process(), recipe.recipe().plant(), out);
  }

  /** The same of a premix. */
  static void look(Passes passes, Optional<Plant> plant, Consumer<Finding> out) {
    Optional<Setting> bag = passes.setting(Step.PACK, Property.BAG);
    if (bag.isPresent() && plant.isPresent() && isAbsent(bag.get(), plant.get())) {
      out.accept(finding(bag.get(), plant.get()));
    }
  }

  /** Whether a plant that tells its bags has none of this weight. */
  static boolean isAbsent(Setting bag, Plant plant) {
    for (double one : plant.bags()) {
      if (!Closeness.isAbove(one, bag.aim()) && !Closeness.isBelow(one, bag.aim())) {
        return false;
      }
    }
    return !plant.bags().isEmpty();
  }

  private static Finding finding(Setting bag, Plant plant) {
    List<String> bags = new ArrayList<>();
    for (double one : plant.bags()) {
      bags.add(Figures.plain(one, Unit.KG));
    }
    return Finding.warning(
            CODE,
            bag.span(),
            plant.title() + " fills no bags of " + bag.written().target().asWritten())
        .seeing("plant written", plant.declared())
        .helping(
            "it fills "
                + Choices.of(bags).replace(" or ", " and ")
                + "; add the bag to plant/"
                + plant.name()
                + ".yaml where there is one");
  }
}
