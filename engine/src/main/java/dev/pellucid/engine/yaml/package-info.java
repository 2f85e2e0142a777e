/**
 * YAML text to nodes with the place of every key and value. The only room that sees Jackson; it
 * knows nothing of what the nodes mean.
 */
@NullMarked
package dev.pellucid.engine.yaml;

import org.jspecify.annotations.NullMarked;
