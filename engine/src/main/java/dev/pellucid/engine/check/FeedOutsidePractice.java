package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.Practice.BoundOf;
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
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
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

  private record Look(RuleContext recipe, ComputedFeed feed, OutsidePractice practice) {
    void all() {
      moisture();
      starch();
      fat();
      oil();
      rework();
    }

    private void rework() {
      List<Row> rows = new ArrayList<>();
      for (Row row : feed.rows()) {
        if (isInMix(row) && row.line().material().reworked().isPresent()) {
          rows.add(row);
        }
      }
      if (!rows.isEmpty()) {
        double share = sum(rows, Row::kg) / feed.balances().expected().mix();
        if (practice.isOutside(BoundOf.REWORK, share)) {
          hold(BoundOf.REWORK, largest(rows, Row::kg), "rework in the mix is", share);
        }
      }
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

    private void starch() {
      Optional<Word> told = feed.recipe().habit();
      String habit = told.isPresent() ? told.get().text() : "";
      boolean floats = habit.equals("floating");
      boolean expands = !floats || FloatingNotExpanded.cold(recipe).isEmpty();
      if (process().has(Step.EXTRUDE) && expands && (floats || habit.equals("sinking"))) {
        BoundOf which = floats ? BoundOf.STARCH_FLOATING : BoundOf.STARCH_SINKING;
        String what =
            floats
                ? "starch in the mix of a floating feed is"
                : "starch in the mix of a sinking feed is";
        inMix("starch", which, what);
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
      Optional<Nutrient> one = feed.nutrients().named(nutrient);
      if (one.isEmpty()) {
        return;
      }
      int index = one.get().index();
      double amount = 0;
      for (Row row : feed.rows()) {
        amount += isInMix(row) ? row.amount(Scenario.EXPECTED, index) : 0;
      }
      double share = amount / feed.balances().expected().mix();
      if (practice.isOutside(which, share)) {
        List<Row> mix = feed.rows().stream().filter(Look::isInMix).toList();
        hold(which, largest(mix, row -> row.amount(Scenario.EXPECTED, index)), what, share);
      }
    }

    private void oil() {
      List<Row> oils = new ArrayList<>();
      for (Row row : feed.rows()) {
        if (!isInMix(row) && row.ingredient().form() == Form.OIL) {
          oils.add(row);
        }
      }
      if (oils.isEmpty()) {
        return;
      }
      double perKernel = sum(oils, Row::kg) / feed.balances().expected().kernel();
      Optional<String> method = method();
      BoundOf which = method.isPresent() ? bound(method.get()) : BoundOf.OIL_UNDER_VACUUM;
      if (practice.isOutside(which, perKernel)) {
        String how = method.map(Look::how).orElse(", however it is put on,");
        hold(which, largest(oils, Row::kg), "oil on the kernel" + how + " is", perKernel);
      }
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

    private Span largest(List<Row> rows, ToDoubleFunction<Row> amount) {
      return rows.stream()
          .max(Comparator.comparingDouble(amount))
          .map(row -> row.line().name())
          .orElse(feed.recipe().declared());
    }

    private static double sum(List<Row> rows, ToDoubleFunction<Row> amount) {
      double sum = 0;
      for (Row row : rows) {
        sum += amount.applyAsDouble(row);
      }
      return sum;
    }

    private void hold(BoundOf which, Span span, String what, double figure) {
      practice.hold(which, span, what, figure, figure, base -> Figures.plain(base, Unit.PERCENT));
    }
  }
}
