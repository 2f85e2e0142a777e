/**
 * A recipe of a folder, checked: the whole route of one, and the two ways of keeping what comes of
 * many. It reads texts through their folder, and knows neither goals nor renderings.
 */
@NullMarked
package dev.pellucid.engine.workspace;

import org.jspecify.annotations.NullMarked;
