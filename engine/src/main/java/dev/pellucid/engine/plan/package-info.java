/**
 * The batch as the mill will make it: what to weigh, do, read and pack, in order. It knows nothing
 * of rendering.
 */
@NullMarked
package dev.pellucid.engine.plan;

import org.jspecify.annotations.NullMarked;
