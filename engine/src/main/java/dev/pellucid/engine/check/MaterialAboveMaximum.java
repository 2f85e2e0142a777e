package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.resolve.MaterialMaxima;
import dev.pellucid.engine.resolve.MaterialMaxima.Over;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * An ingredient that is told with more of a substance than its kind of material may hold. What the
 * library tells is a mean: half of the lots would be over, and the law judges each by itself.
 */
final class MaterialAboveMaximum {
  static final Code CODE = new Code("material-above-maximum");

  private MaterialAboveMaximum() {}

  static void look(FeedTables tables, MaterialMaxima maxima, Consumer<Finding> out) {
    for (Ingredient one : tables.ingredients().values()) {
      Optional<Content> moisture = told(one, Nutrients.MOISTURE);
      if (moisture.isPresent()) {
        for (Over over : maxima.over(one.name(), it -> least(one, it), moisture.get().low())) {
          out.accept(finding(one, over));
        }
      }
    }
  }

  private static Finding finding(Ingredient one, Over over) {
    Content most = most(one, over.limit().subject().addends());
    Finding finding =
        Finding.warning(CODE, most.place(), one.name() + " holds " + over.words())
            .seeing("limit written", over.limit().origin().span())
            .helping("look for a slipped point, or for a figure that is given on another basis");
    return (over.isLaw()
            ? finding
                .noting(
                    "the law judges each lot, and one that is over it may not be diluted into a feed")
                .helping("have the lots analysed before they are used, or buy another")
            : finding.helping("have the lots analysed before they are used"))
        .about(new About(over.limit().subject().text(), About.Side.MAX, List.of(one.name())));
  }

  /** Of what adds up the most. */
  private static Content most(Ingredient one, List<Nutrient> addends) {
    Content most = null;
    for (Nutrient nutrient : addends) {
      Optional<Content> told = told(one, nutrient.name());
      if (told.isPresent() && (most == null || told.get().low() > most.low())) {
        most = told.get();
      }
    }
    if (most == null) {
      throw new IllegalStateException("over a maximum of what is not given: " + one.name());
    }
    return most;
  }

  private static OptionalDouble least(Ingredient one, Nutrient nutrient) {
    Optional<Content> told = told(one, nutrient.name());
    return told.isPresent() ? OptionalDouble.of(told.get().low()) : OptionalDouble.empty();
  }

  private static Optional<Content> told(Ingredient one, String nutrient) {
    for (ContentBlock block : one.contents()) {
      Content told = block.byNutrient().get(nutrient);
      if (block.species().isEmpty() && told != null) {
        return Optional.of(told);
      }
    }
    return Optional.empty();
  }
}
