/**
 * The bag label of a feed as a value: what stands on it, in the order and words of the label rules
 * of the folder. It knows nothing of rendering.
 */
@NullMarked
package dev.pellucid.engine.label;

import org.jspecify.annotations.NullMarked;
