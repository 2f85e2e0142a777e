/**
 * What the kitchen holds: nutrients, ingredients, species, plant, practice and prices, each with
 * the place where it was written. It knows nothing of recipes.
 */
@NullMarked
package dev.pellucid.engine.larder;

import org.jspecify.annotations.NullMarked;
