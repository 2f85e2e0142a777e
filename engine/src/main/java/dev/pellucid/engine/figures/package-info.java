/**
 * Makes the record of a recipe's figures, one fact on a line, and tells where one that was kept
 * differs. It knows neither disk nor day.
 */
@NullMarked
package dev.pellucid.engine.figures;

import org.jspecify.annotations.NullMarked;
