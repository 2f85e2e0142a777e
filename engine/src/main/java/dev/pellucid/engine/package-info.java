/**
 * The facade: one method for each goal, and the whole route from a folder to findings and sheets.
 * It knows nothing of Maven.
 */
@NullMarked
package dev.pellucid.engine;

import org.jspecify.annotations.NullMarked;
