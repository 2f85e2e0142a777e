/**
 * The account of a feed: what it weighs, holds and costs, and how it stands with its limits, as
 * plain values that hold no file of the folder. It knows no findings and prints nothing.
 */
@NullMarked
package dev.pellucid.engine.account;

import org.jspecify.annotations.NullMarked;
