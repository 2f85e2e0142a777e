/**
 * A line that did not parse to a sentence a person can act on, and where possible the edit that
 * fixes it: one class per slip.
 */
@NullMarked
package dev.pellucid.slip;

import org.jspecify.annotations.NullMarked;
