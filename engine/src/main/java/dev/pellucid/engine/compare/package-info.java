/**
 * What a change does: the recipes of two states of a folder, held against each other. It makes
 * values from computed feeds; it reads no file and prints nothing.
 */
@NullMarked
package dev.pellucid.engine.compare;

import org.jspecify.annotations.NullMarked;
