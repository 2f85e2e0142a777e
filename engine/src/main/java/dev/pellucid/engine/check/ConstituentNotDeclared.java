package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.LabelRules.Compulsory;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Label;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * A constituent that the label rules ask for and the label does not tell. Silent where a line of
 * the label could not be read: that one may tell it.
 */
final class ConstituentNotDeclared implements Rule {
  private static final Code CODE = new Code("constituent-not-declared");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isConsequence() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<LabelRules> rules = recipe.tables().label();
    Optional<Label> label = recipe.recipe().label();
    if (rules.isEmpty() || label.isEmpty() || recipe.feed().isEmpty() || !label.get().whole()) {
      return;
    }
    ComputedFeed feed = recipe.feed().get();
    for (Compulsory one : rules.get().compulsory()) {
      Optional<Nutrient> nutrient = feed.nutrients().named(one.nutrient());
      if (nutrient.isPresent() && !label.get().tells(one.nutrient()) && holds(one, recipe, feed)) {
        out.accept(finding(one, nutrient.get(), label.get(), feed));
      }
    }
  }

  private static boolean holds(Compulsory one, RuleContext recipe, ComputedFeed feed) {
    boolean thisSpecies =
        one.species().isEmpty()
            || recipe.recipe().species().filter(s -> s.is(one.species().get())).isPresent();
    int index = feed.nutrients().named(one.nutrient()).orElseThrow().index();
    return thisSpecies
        && (one.above().isEmpty()
            || feed.content(Scenario.EXPECTED, index) > one.above().getAsDouble());
  }

  private static Finding finding(
      Compulsory one, Nutrient nutrient, Label label, ComputedFeed feed) {
    double content = nutrient.unit().fromBase(feed.content(Scenario.EXPECTED, nutrient.index()));
    String figure = Figures.visible(content, content < 1 ? 2 : 1) + " " + nutrient.unit().symbol();
    return Finding.error(CODE, label.heading(), "the label does not declare " + one.nutrient())
        .seeing("asked for", one.place())
        .helping("add the line: " + one.nutrient() + "  " + figure)
        .about(new About(one.nutrient(), About.Side.NONE, List.of("label")));
  }
}
