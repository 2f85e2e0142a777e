package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.RetentionGap;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Property;
import java.util.List;

/**
 * A step of an approved recipe that does not tell what the hand at the machine has to set, so that
 * nothing holds it against practice. What a step must tell for the feed to be computed at all is
 * asked elsewhere.
 */
final class SettingMissing implements Rule {
  private static final Code CODE = new Code("setting-missing");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    ResolvedRecipe told = recipe.recipe();
    if (!told.isApproved() || !told.process().isTold()) {
      return;
    }
    boolean die = told.process().die().isPresent();
    for (Pass pass : told.process().inOrder()) {
      switch (pass.step()) {
        case CONDITION ->
            need(
                pass,
                Property.TIME,
                "how long the steam works",
                "90 s",
                "heat without time kills no germs and cooks no starch",
                out);
        case PELLET, EXTRUDE -> {
          if (!die) {
            String silent =
                "not looked at: the die against the fish, the screen and the dies of the plant";
            need(pass, Property.DIE, "which die it takes", "4.0 mm", silent, out);
          }
        }
        case DRY -> {
          String silent = "nothing holds it to what practice says of dryers";
          if (!isGap(recipe, pass)) {
            need(pass, Property.TEMPERATURE, "how hot the dryer is", "70 °C", silent, out);
          }
          need(pass, Property.TIME, "how long it takes", "1 to 2 h", silent, out);
        }
        case COOL ->
            need(
                pass,
                Property.TEMPERATURE,
                "down to which temperature",
                "25 °C",
                "warm feed sweats in the bag and moulds",
                out);
        case COAT ->
            need(
                pass,
                Property.METHOD,
                "how the oil goes on, in a drum, under vacuum or by hand",
                "drum",
                "not looked at: how much oil the kernel takes so",
                out);
        case STORE ->
            need(
                pass,
                Property.TEMPERATURE,
                "how warm the store is",
                "25 °C",
                "what is lost in the store is computed at the temperature of the air",
                out);
        case GRIND, BLEND, ADD_LIQUID, ADD_WATER, SIEVE, PACK -> {}
      }
    }
  }

  /** What a dryer leaves of vitamins without a temperature has a finding of its own. */
  private static boolean isGap(RuleContext recipe, Pass dryer) {
    if (recipe.feed().isPresent()) {
      for (RetentionGap gap : recipe.feed().get().retentionGaps()) {
        if (gap.temperature().isEmpty() && gap.span().equals(dryer.span())) {
          return true;
        }
      }
    }
    return false;
  }

  private static void need(
      Pass pass, Property property, String what, String like, String silent, Remarks out) {
    if (pass.setting(property).isEmpty()) {
      String step = pass.word();
      String word = property.word();
      out.accept(
          Finding.warning(CODE, pass.span(), step + " does not say " + what)
              .noting(silent)
              .helping("add a line like: " + step + " " + word + " " + like + ", with your own")
              .about(new About(step + " " + word, About.Side.NONE, List.of())));
    }
  }
}
