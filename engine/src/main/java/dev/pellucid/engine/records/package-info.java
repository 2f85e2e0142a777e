/**
 * What was made: batch records and lots beside the recipe, the same computing and the same judging
 * with what was measured and weighed. It knows neither files nor rendering.
 */
@NullMarked
package dev.pellucid.engine.records;

import org.jspecify.annotations.NullMarked;
