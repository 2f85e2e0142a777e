/**
 * What the tool has to say about a place in a text: findings as values. It knows neither who makes
 * them nor who prints them.
 */
@NullMarked
package dev.pellucid.finding;

import org.jspecify.annotations.NullMarked;
