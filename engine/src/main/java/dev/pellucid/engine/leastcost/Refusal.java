package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Silence;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Why an ingredient may not rise above its share of today, or come in.
 *
 * @param ingredient its name
 * @param file that does not tell what is missing, below the folder
 * @param missing what it does not tell, in words: {@code no cap for common-carp}
 */
public record Refusal(String ingredient, String file, String missing) {
  /** None of what is no single ingredient. */
  static List<Refusal> of(ResolvedRecipe recipe, Line line, FeedComputer computer) {
    Optional<Material.Single> single = line.material().single();
    if (single.isEmpty()) {
      return List.of();
    }
    List<Refusal> refusals = new ArrayList<>();
    for (Silence silence : computer.silences(single.get().ingredient(), recipe)) {
      refusals.add(
          new Refusal(
              silence.ingredient().name(),
              silence.ingredient().declared().file().path(),
              missing(silence)));
    }
    return refusals;
  }

  private static String missing(Silence silence) {
    return silence.byKind(
        content ->
            "how much "
                + content.nutrient().name()
                + " it holds, of which "
                + content.limit().origin().name()
                + " asks for "
                + content.limit().side().name().toLowerCase(java.util.Locale.ROOT)
                + " "
                + content.limit().writtenInForce().asWritten(),
        cap -> "a cap for " + cap.species().name() + ", or max: none with the reason",
        digested ->
            "how much of its "
                + digested.whole().name()
                + " "
                + digested.species().name()
                + " digests",
        need ->
            "how much "
                + need.nutrient().name()
                + " it holds, which "
                + need.species().name()
                + " needs told");
  }
}
