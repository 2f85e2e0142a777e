package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.judge.Silence;
import java.util.Locale;

/**
 * Why an ingredient may not rise above its share of today, or come in.
 *
 * @param ingredient its name
 * @param file that does not tell what is missing, below the folder
 * @param missing what it does not tell, or what is wrong with it, in words: {@code it does not tell
 *     a cap for common-carp, or max: none with the reason}
 */
public record Refusal(String ingredient, String file, String missing) {
  static Refusal of(Silence silence) {
    return new Refusal(
        silence.ingredient().name(),
        silence.ingredient().declared().file().path(),
        "it does not tell " + missing(silence));
  }

  private static String missing(Silence silence) {
    return silence.byKind(
        content ->
            "how much "
                + content.nutrient().name()
                + " it holds, of which "
                + content.limit().origin().name()
                + " asks for "
                + content.limit().side().name().toLowerCase(Locale.ROOT)
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
