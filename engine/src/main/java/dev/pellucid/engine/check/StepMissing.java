package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A step that an approved recipe cannot well do without and does not name: whole grain that nothing
 * grinds, meals that go to a die through no screen, several lines that nothing blends, an extruder
 * that gets neither water nor steam, a feed that is stored and not packed.
 */
final class StepMissing implements Rule {
  private static final Code CODE = new Code("step-missing");
  private static final int NAMED = 4;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    ResolvedRecipe told = recipe.recipe();
    if (told.isApproved() && told.process().isTold()) {
      grinding(told, out);
      blending(told, out);
      water(told, out);
      packing(told, out);
    }
  }

  private static void grinding(ResolvedRecipe told, Remarks out) {
    Passes passes = told.process();
    Optional<Pass> shape = shape(passes);
    boolean none = !passes.has(Step.GRIND);
    List<String> whole = new ArrayList<>();
    List<String> coarse = new ArrayList<>();
    for (Line line : told.taken()) {
      if (line.place() == Place.MIX && line.material().reworked().isEmpty()) {
        for (Ingredient one : line.material().ingredients()) {
          if (isAlone(line, one) && !isGround(passes, one.name())) {
            (one.form() == Form.GRAIN ? whole : coarse).add(one.name());
          }
        }
      }
    }
    Span place = place(told);
    if (!whole.isEmpty()) {
      out.accept(
          finding("grind", place, "no step grinds " + named(whole))
              .noting("whole grain does not go through a die, and fish digest little of it")
              .helping("add a line like: grind screen 1.0 mm, with the screen of your mill"));
    } else if (none && shape.isPresent() && !coarse.isEmpty()) {
      out.accept(
          finding(
                  "grind",
                  shape.get().span(),
                  "no step grinds, so the die gets " + named(coarse) + " through no screen")
              .noting("not looked at: the screen against the die")
              .helping("add a line like: grind screen 1.0 mm, with the screen of your mill"));
    }
  }

  /** A feed that is stored so many days lies in something. */
  private static void packing(ResolvedRecipe told, Remarks out) {
    if (told.process().has(Step.STORE) && !told.process().has(Step.PACK)) {
      out.accept(
          finding("pack", place(told), "no step packs the feed, and it is stored")
              .noting("not looked at: the bag against the batch, and warm feed in it")
              .helping("add a line before store: pack bag 25 kg, with your bag"));
    }
  }

  /** Of a premix nobody grinds the parts. */
  private static boolean isAlone(Line line, Ingredient one) {
    return line.material().name().equals(one.name())
        && (one.form() == Form.GRAIN || one.form() == Form.MEAL);
  }

  private static boolean isGround(Passes passes, String name) {
    for (Pass pass : passes.inOrder()) {
      for (Setting setting : pass.settings()) {
        boolean its = setting.ingredient().isEmpty() || setting.ingredient().get().equals(name);
        if (pass.step() == Step.GRIND && its) {
          return true;
        }
      }
    }
    return false;
  }

  private static void blending(ResolvedRecipe told, Remarks out) {
    int lines = 0;
    for (Line line : told.taken()) {
      lines += line.place() == Place.MIX ? 1 : 0;
    }
    if (lines > 1 && !told.process().has(Step.BLEND)) {
      out.accept(
          finding("blend", place(told), "no step blends the " + lines + " lines of the mix")
              .noting("not looked at: the time in the mixer")
              .helping("add a line like: blend time 5 min, with the time your mixer needs"));
    }
  }

  private static void water(ResolvedRecipe told, Remarks out) {
    Passes passes = told.process();
    boolean wet =
        passes.has(Step.ADD_WATER) || passes.has(Step.ADD_LIQUID) || passes.has(Step.CONDITION);
    Optional<Pass> extruder = passes.first(Step.EXTRUDE);
    if (extruder.isPresent() && !wet) {
      out.accept(
          finding("add-water", extruder.get().span(), "the extruder gets neither water nor steam")
              .noting("a dry mix chokes it, or leaves it as crumbs")
              .helping("add a line like: add-water on-mix 18 %, with what your machine needs"));
    }
  }

  private static Optional<Pass> shape(Passes passes) {
    for (Pass pass : passes.inOrder()) {
      if (pass.step().shapes()) {
        return Optional.of(pass);
      }
    }
    return Optional.empty();
  }

  /** The first step that is written. */
  private static Span place(ResolvedRecipe told) {
    for (Pass pass : told.process().inOrder()) {
      if (!pass.settings().isEmpty()) {
        return pass.settings().get(0).span();
      }
    }
    return told.declared();
  }

  private static Finding finding(String step, Span place, String headline) {
    return Finding.warning(CODE, place, headline)
        .about(new About(step, About.Side.NONE, List.of()));
  }

  private static String named(List<String> names) {
    int more = names.size() - NAMED;
    return String.join(", ", names.subList(0, Math.min(NAMED, names.size())))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
