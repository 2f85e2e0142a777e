/**
 * One class for each goal: what it makes of a folder whose recipes are checked. It knows neither
 * Maven nor how a recipe is checked.
 */
@NullMarked
package dev.pellucid.engine.goal;

import org.jspecify.annotations.NullMarked;
