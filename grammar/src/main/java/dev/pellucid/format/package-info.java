/**
 * Puts white space where it belongs and changes nothing else. It knows neither the parser, nor the
 * tree, nor what a recipe means.
 */
@NullMarked
package dev.pellucid.format;

import org.jspecify.annotations.NullMarked;
