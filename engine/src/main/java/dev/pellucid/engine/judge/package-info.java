/**
 * How a computed feed stands with each limit and each claim of its label: decided once, as values.
 * It knows no findings and has no words for what it finds.
 */
@NullMarked
package dev.pellucid.engine.judge;

import org.jspecify.annotations.NullMarked;
