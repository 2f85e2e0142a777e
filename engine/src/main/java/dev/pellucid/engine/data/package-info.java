/**
 * What the kitchen holds: nutrients, ingredients, species, plant, practice and prices, each with
 * the place where it was written. It knows nothing of recipes and computes nothing for a feed.
 */
@NullMarked
package dev.pellucid.engine.data;

import org.jspecify.annotations.NullMarked;
