/**
 * The arithmetic of quality records: how even a mix is and can be, how fine a grind, how hard a
 * pellet. It knows neither feeds nor files.
 */
@NullMarked
package dev.pellucid.engine.quality;

import org.jspecify.annotations.NullMarked;
