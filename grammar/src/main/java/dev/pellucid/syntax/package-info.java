/**
 * The tree of one file, with every literal as it was written. It knows neither how a tree is made
 * nor what it means.
 */
@NullMarked
package dev.pellucid.syntax;

import org.jspecify.annotations.NullMarked;
