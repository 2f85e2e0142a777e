/**
 * What the data files of a folder tell: nutrients, ingredients, species, plant, practice, prices,
 * lots and records, each with the place where it was written. It knows nothing of recipes and
 * computes nothing for a feed.
 */
@NullMarked
package dev.pellucid.engine.data;

import org.jspecify.annotations.NullMarked;
