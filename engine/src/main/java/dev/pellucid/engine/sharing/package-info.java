/**
 * Shares out ingredients that are short over the feeds that take of them, so that all together cost
 * least: each recipe as an edit that is proven, and what a tonne more of each would be worth. It
 * knows no file of the folder and prints nothing.
 */
@NullMarked
package dev.pellucid.engine.sharing;

import org.jspecify.annotations.NullMarked;
