/**
 * Where a figure of a feed comes from, line by line, down to the source of every content. It reads
 * a computed feed and makes values; it judges nothing and prints nothing.
 */
@NullMarked
package dev.pellucid.engine.explain;

import org.jspecify.annotations.NullMarked;
