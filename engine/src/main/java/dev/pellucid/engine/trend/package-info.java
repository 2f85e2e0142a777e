/**
 * The batches of a recipe over time: each figure as a course around what was expected, where a
 * course breaks the rules of a control chart, and what came into the bags. It knows neither how a
 * figure was computed nor how it is shown.
 */
@NullMarked
package dev.pellucid.engine.trend;

import org.jspecify.annotations.NullMarked;
