/**
 * Prints findings as text with an excerpt of the line they point at. It knows nothing of recipes.
 */
@NullMarked
package dev.pellucid.show;

import org.jspecify.annotations.NullMarked;
