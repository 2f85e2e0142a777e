/**
 * Names to things: a recipe with its ingredients, premixes, shares, overage, limits and steps. It
 * computes no feed and checks no limit.
 */
@NullMarked
package dev.pellucid.engine.resolve;

import org.jspecify.annotations.NullMarked;
