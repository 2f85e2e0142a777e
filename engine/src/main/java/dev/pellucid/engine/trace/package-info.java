/**
 * What went where: from the records alone, which lots and batches are in which batches, or may be,
 * what of them is left, and who got them. It judges nothing, and knows neither files nor rendering.
 */
@NullMarked
package dev.pellucid.engine.trace;

import org.jspecify.annotations.NullMarked;
