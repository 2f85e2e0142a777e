package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Pass;
import java.util.OptionalDouble;

/**
 * What one pass did to the mass, in kg per 100 kg of recipe.
 *
 * @param added water, steam or coat that came in
 * @param evaporated water that went off
 * @param moistureBefore a share
 * @param moistureAfter a share
 * @param evaporable the most water that the heat of the pellet can drive off in a cooler
 */
public record Stage(
    Pass pass,
    double before,
    double added,
    double evaporated,
    double after,
    double moistureBefore,
    double moistureAfter,
    OptionalDouble evaporable) {}
