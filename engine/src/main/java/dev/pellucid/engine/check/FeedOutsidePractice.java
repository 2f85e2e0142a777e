package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.judge.PracticeFigure;
import dev.pellucid.engine.judge.PracticeFigure.Whole;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A figure that the process depends on outside what the trade does: moisture of the finished feed,
 * starch and fat in the mix before the die (per kg of mix before water), oil per kg of kernel, feed
 * that is worked in again.
 */
final class FeedOutsidePractice implements Rule {
  private static final Code CODE = new Code("feed-outside-practice");

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
    if (recipe.feed().isPresent()) {
      OutsidePractice practice = new OutsidePractice(CODE, recipe.tables().practice(), out);
      new Look(recipe, recipe.feed().get(), practice).all();
    }
  }

  /** The figures of a feed that hang on its shares and that practice bounds. */
  static List<PracticeFigure> figures(RuleContext recipe, ComputedFeed feed) {
    List<PracticeFigure> figures = new ArrayList<>();
    new Look(recipe, feed, new OutsidePractice(CODE, recipe.tables().practice(), none -> {}))
        .figures(figures);
    return figures;
  }

  private record Look(RuleContext recipe, ComputedFeed feed, OutsidePractice practice) {
    void all() {
      moisture();
      List<PracticeFigure> figures = new ArrayList<>();
      figures(figures);
      for (PracticeFigure figure : figures) {
        hold(figure);
      }
    }

    void figures(List<PracticeFigure> out) {
      starch(out);
      fat(out);
      oil(out);
      rework(out);
    }

    private void hold(PracticeFigure one) {
      double share = one.figure(feed);
      if (practice.isOutside(one.bound(), share)) {
        Row most = feed.rows().get(0);
        for (Row row : feed.rows()) {
          most = one.amount(row) > one.amount(most) ? row : most;
        }
        hold(one.bound(), most.line().name(), words(one.bound()), share);
      }
    }

    private String words(BoundOf bound) {
      return switch (bound) {
        case STARCH_FLOATING -> "starch in the mix of a floating feed is";
        case STARCH_SINKING -> "starch in the mix of a sinking feed is";
        case FAT_BEFORE_EXTRUDING, FAT_BEFORE_PELLETING -> "fat in the mix before the die is";
        case REWORK -> "rework in the mix is";
        default ->
            "oil on the kernel" + method().map(Look::how).orElse(", however it is put on,") + " is";
      };
    }

    private Passes process() {
      return feed.recipe().process();
    }

    private void moisture() {
      double figure = feed.balances().expected().moisture();
      if (practice.isOutside(BoundOf.FINISHED_MOISTURE, figure)) {
        Span span = MoistureTarget.place(feed);
        hold(BoundOf.FINISHED_MOISTURE, span, "the moisture of the finished feed is", figure);
      }
    }

    private void rework(List<PracticeFigure> out) {
      boolean some = false;
      for (Row row : feed.rows()) {
        some |= isRework(row);
      }
      if (some) {
        out.add(new PracticeFigure(BoundOf.REWORK, Whole.MIX, row -> isRework(row) ? 1 : 0));
      }
    }

    private static boolean isRework(Row row) {
      return isInMix(row) && row.line().material().reworked().isPresent();
    }

    private void starch(List<PracticeFigure> out) {
      Optional<Word> told = feed.recipe().habit();
      String habit = told.isPresent() ? told.get().text() : "";
      boolean floats = habit.equals("floating");
      boolean expands = !floats || FloatingNotExpanded.cold(recipe).isEmpty();
      if (process().has(Step.EXTRUDE) && expands && (floats || habit.equals("sinking"))) {
        inMix("starch", floats ? BoundOf.STARCH_FLOATING : BoundOf.STARCH_SINKING, out);
      }
    }

    private void fat(List<PracticeFigure> out) {
      if (process().has(Step.EXTRUDE)) {
        inMix("crude-fat", BoundOf.FAT_BEFORE_EXTRUDING, out);
      } else if (process().has(Step.PELLET)) {
        inMix("crude-fat", BoundOf.FAT_BEFORE_PELLETING, out);
      }
    }

    private void inMix(String nutrient, BoundOf which, List<PracticeFigure> out) {
      Optional<Nutrient> one = feed.nutrients().named(nutrient);
      if (one.isPresent()) {
        int index = one.get().index();
        out.add(
            new PracticeFigure(
                which, Whole.MIX, row -> isInMix(row) ? row.perKg(Scenario.EXPECTED, index) : 0));
      }
    }

    private void oil(List<PracticeFigure> out) {
      boolean some = false;
      for (Row row : feed.rows()) {
        some |= isOilOnKernel(row);
      }
      if (some) {
        Optional<String> method = method();
        BoundOf which = method.isPresent() ? bound(method.get()) : BoundOf.OIL_UNDER_VACUUM;
        out.add(new PracticeFigure(which, Whole.KERNEL, row -> isOilOnKernel(row) ? 1 : 0));
      }
    }

    private static boolean isOilOnKernel(Row row) {
      return !isInMix(row) && row.ingredient().form() == Form.OIL;
    }

    /** As the recipe says, else what the plant has. */
    private Optional<String> method() {
      Optional<Setting> told = process().setting(Step.COAT, Property.METHOD);
      if (told.isPresent()) {
        return Optional.of(told.get().manner());
      }
      Optional<Plant> plant = recipe.recipe().plant();
      return plant.isPresent() && plant.get().coater().isPresent()
          ? Optional.of(plant.get().coater().get().name().toLowerCase(Locale.ROOT))
          : Optional.empty();
    }

    private static String how(String method) {
      return method.equals("vacuum") ? ", put on under vacuum," : ", put on by " + method + ",";
    }

    /** What no vacuum takes, nothing else takes. */
    private static BoundOf bound(String method) {
      return switch (method) {
        case "hand" -> BoundOf.OIL_BY_HAND;
        case "drum" -> BoundOf.OIL_IN_DRUM;
        default -> BoundOf.OIL_UNDER_VACUUM;
      };
    }

    private static boolean isInMix(Row row) {
      return row.line().place() == Place.MIX;
    }

    private void hold(BoundOf which, Span span, String what, double figure) {
      practice.hold(which, span, what, figure, figure, base -> Figures.plain(base, Unit.PERCENT));
    }
  }
}
