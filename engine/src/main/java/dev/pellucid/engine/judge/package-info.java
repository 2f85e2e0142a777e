/**
 * How a computed feed stands with each limit and each claim of its label, and what an ingredient
 * leaves untold by which more of it would be judged: decided once, as values. It knows no findings
 * and has no words for what it finds.
 */
@NullMarked
package dev.pellucid.engine.judge;

import org.jspecify.annotations.NullMarked;
