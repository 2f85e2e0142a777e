/**
 * Linear programs: the least cost that keeps every constraint, proven, with what each constraint
 * costs and which contradict each other. It is the only room that sees a library that solves, and
 * it knows nothing of feed.
 */
@NullMarked
package dev.pellucid.engine.linear;

import org.jspecify.annotations.NullMarked;
