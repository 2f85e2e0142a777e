package dev.pellucid.engine.compare;

import java.util.List;
import java.util.SortedMap;

/**
 * All that is compared of one state of a folder.
 *
 * @param recipes by code
 * @param premixes by code
 * @param elsewhere what the check says of other files, profiles, data and records, by their paths
 * @param errors how many the check tells in all
 */
public record Standing(
    SortedMap<String, RecipeState> recipes,
    SortedMap<String, PremixState> premixes,
    SortedMap<String, List<Found>> elsewhere,
    long errors) {}
