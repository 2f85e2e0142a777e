package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.List;

/**
 * An ingredient of a line, premixes opened; kg per 100 kg of recipe.
 *
 * @param through the premixes it came in, the outermost first
 * @param kg in the feed
 * @param richest with all handling overage
 */
record Leaf(
    Line line,
    List<String> path,
    Material.Single material,
    Composition composition,
    List<ResolvedPremix> through,
    double kg,
    double richest) {}
