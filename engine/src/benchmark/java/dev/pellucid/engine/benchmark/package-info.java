/**
 * Times a check of many recipes against the bare generated parser on the same text. Only the Maven
 * profile {@code benchmark} builds it; nothing of it is in a jar.
 */
@NullMarked
package dev.pellucid.engine.benchmark;

import org.jspecify.annotations.NullMarked;
