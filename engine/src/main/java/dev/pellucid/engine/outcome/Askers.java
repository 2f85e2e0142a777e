package dev.pellucid.engine.outcome;

import java.util.List;

/**
 * Who asks for the limits that were judged.
 *
 * @param words the same as a line for people; empty where nobody asks but recipes themselves
 * @param fewer codes of recipes that are held to less than their sisters
 */
public record Askers(
    int law, int guidance, int need, int practice, int recipes, List<String> fewer, String words) {
  public Askers {
    fewer = List.copyOf(fewer);
  }
}
