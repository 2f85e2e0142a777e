package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

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
  public void look(RuleContext recipe, Remarks out) {
    OutsidePractice practice = new OutsidePractice(CODE, recipe.tables().practice(), out);
    recipe.feed().ifPresent(feed -> new Look(recipe, feed, practice).all());
  }

  private record Look(RuleContext recipe, ComputedFeed feed, OutsidePractice practice) {
    void all() {
      moisture();
      starch();
      fat();
      oil();
      rework();
    }

    private void rework() {
      List<Row> rows =
          mix().stream().filter(row -> row.line().material().reworked().isPresent()).toList();
      if (!rows.isEmpty()) {
        double share = sum(rows, row -> row.kg()) / feed.balances().expected().mix();
        hold(BoundOf.REWORK, largest(rows, row -> row.kg()), "rework in the mix is", share);
      }
    }

    private Passes process() {
      return feed.recipe().process();
    }

    private void moisture() {
      Span span = MoistureTarget.place(feed);
      double figure = feed.balances().expected().moisture();
      hold(BoundOf.FINISHED_MOISTURE, span, "the moisture of the finished feed is", figure);
    }

    private void starch() {
      String habit = feed.recipe().habit().orElse("");
      boolean floats = habit.equals("floating");
      if (process().has(Step.EXTRUDE) && (floats || habit.equals("sinking"))) {
        BoundOf which = floats ? BoundOf.STARCH_FLOATING : BoundOf.STARCH_SINKING;
        inMix("starch", which, "starch in the mix of a " + habit + " feed is");
      }
    }

    private void fat() {
      if (process().has(Step.EXTRUDE)) {
        inMix("crude-fat", BoundOf.FAT_BEFORE_EXTRUDING, "fat in the mix before the die is");
      } else if (process().has(Step.PELLET)) {
        inMix("crude-fat", BoundOf.FAT_BEFORE_PELLETING, "fat in the mix before the die is");
      }
    }

    private void inMix(String nutrient, BoundOf which, String what) {
      feed.nutrients()
          .named(nutrient)
          .ifPresent(
              one -> {
                ToDoubleFunction<Row> amount = row -> row.amount(Scenario.EXPECTED, one.index());
                double share = sum(mix(), amount) / feed.balances().expected().mix();
                hold(which, largest(mix(), amount), what, share);
              });
    }

    private void oil() {
      List<Row> oils =
          feed.rows().stream()
              .filter(row -> row.line().place() == Place.COAT)
              .filter(row -> row.ingredient().form() == Form.OIL)
              .toList();
      if (!oils.isEmpty()) {
        double perKernel = sum(oils, row -> row.kg()) / feed.balances().expected().kernel();
        String how = method().map(Look::how).orElse(", however it is put on,");
        BoundOf which = method().map(Look::bound).orElse(BoundOf.OIL_UNDER_VACUUM);
        hold(which, largest(oils, row -> row.kg()), "oil on the kernel" + how + " is", perKernel);
      }
    }

    /** As the recipe says, else what the plant has. */
    private Optional<String> method() {
      return process()
          .setting(Step.COAT, Property.METHOD)
          .map(Setting::manner)
          .or(
              () ->
                  recipe
                      .tables()
                      .plant()
                      .flatMap(plant -> plant.coater())
                      .map(coater -> coater.name().toLowerCase(java.util.Locale.ROOT)));
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

    private List<Row> mix() {
      return feed.rows().stream().filter(row -> row.line().place() == Place.MIX).toList();
    }

    private Span largest(List<Row> rows, ToDoubleFunction<Row> amount) {
      return rows.stream()
          .max(Comparator.comparingDouble(amount))
          .map(row -> row.line().name())
          .orElse(feed.recipe().declared());
    }

    private static double sum(List<Row> rows, ToDoubleFunction<Row> amount) {
      return rows.stream().mapToDouble(amount).sum();
    }

    private void hold(BoundOf which, Span span, String what, double figure) {
      practice.hold(which, span, what, figure, figure, base -> Figures.plain(base, Unit.PERCENT));
    }
  }
}
