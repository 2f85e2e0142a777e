/**
 * Source text and places in it: the only room that turns offsets into lines and columns. It knows
 * neither disk nor findings.
 */
@NullMarked
package dev.pellucid.text;

import org.jspecify.annotations.NullMarked;
