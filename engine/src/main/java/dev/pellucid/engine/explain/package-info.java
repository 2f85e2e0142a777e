/**
 * Where a figure of a feed comes from, line by line, down to the source of every content, and step
 * by step how it comes to what is judged. It reads a computed feed and how it stands with its
 * limits, and makes values; it judges nothing and prints nothing.
 */
@NullMarked
package dev.pellucid.engine.explain;

import org.jspecify.annotations.NullMarked;
