/**
 * What one batch leaves on the line for the next. It knows neither records nor findings nor
 * rendering.
 */
@NullMarked
package dev.pellucid.engine.carryover;

import org.jspecify.annotations.NullMarked;
