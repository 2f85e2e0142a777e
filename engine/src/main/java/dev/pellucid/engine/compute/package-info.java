/**
 * The feed as it will be fed, line by line, through every step of the process. It cannot fail and
 * knows neither findings nor limits.
 */
@NullMarked
package dev.pellucid.engine.compute;

import org.jspecify.annotations.NullMarked;
