/**
 * A batch on the scales, mixers, trays and coaters of one plant: weights that a display can show,
 * equal loads, dilutions of what is too little to weigh. It knows nothing of limits, findings or
 * paper.
 */
@NullMarked
package dev.pellucid.engine.weighing;

import org.jspecify.annotations.NullMarked;
