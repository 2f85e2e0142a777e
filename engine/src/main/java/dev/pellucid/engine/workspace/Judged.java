package dev.pellucid.engine.workspace;

import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;

/**
 * By whom the limits of a folder are asked.
 *
 * @param law how many judged limits the jurisdiction asks
 * @param guidance how many guidance of its authorities advises
 * @param need how many profiles of need ask
 * @param practice how many the house asks, in profiles of practice
 * @param own how many recipes ask of themselves
 * @param fewer codes of recipes that are held to less than their sisters
 */
public record Judged(int law, int guidance, int need, int practice, int own, List<String> fewer) {
  /** Of a folder without recipes. */
  public static final Judged NOTHING = new Judged(0, 0, 0, 0, 0, List.of());

  public Judged {
    fewer = List.copyOf(fewer);
  }

  static Judged of(List<Summary> recipes, Sisters sisters) {
    Asked.Counts all = Asked.Counts.NONE;
    for (Summary one : recipes) {
      if (one.asked().isPresent()) {
        all = all.plus(one.asked().get().counts());
      }
    }
    return new Judged(
        all.law(), all.guidance(), all.need(), all.practice(), all.own(), sisters.codes());
  }

  /**
   * {@code of the limits 268 are of law, 478 of need, 57 of practice and 43 of recipes}; empty
   * where nobody asks but recipes themselves.
   */
  public String words() {
    int others = law + guidance + need + practice;
    if (others == 0) {
      return "";
    }
    List<String> parts = new ArrayList<>();
    part(law, "of law", parts);
    part(guidance, "of guidance", parts);
    part(need, "of need", parts);
    part(practice, "of practice", parts);
    part(own, "of recipes themselves", parts);
    String all = Plural.of(others + own, "limit") + ": " + String.join(", ", parts);
    return fewer.isEmpty()
        ? all
        : all + "; held to less than recipes like them: " + String.join(", ", fewer);
  }

  private static void part(int count, String what, List<String> parts) {
    if (count > 0) {
      parts.add(count + " " + what);
    }
  }
}
