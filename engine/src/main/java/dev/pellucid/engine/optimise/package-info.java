/**
 * The shares of a feed that cost least, or that are nearest to those it has, and keep all that is
 * asked of it: a linear program, solved again around its answer until the figures that are judged
 * hold. It knows no text, no finding and no rule.
 */
@NullMarked
package dev.pellucid.engine.optimise;

import org.jspecify.annotations.NullMarked;
