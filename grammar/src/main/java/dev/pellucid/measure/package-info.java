/**
 * Units as people write them, what kind of quantity each measures, and the exact factor to the base
 * of its kind. It knows neither text nor feed.
 */
@NullMarked
package dev.pellucid.measure;

import org.jspecify.annotations.NullMarked;
