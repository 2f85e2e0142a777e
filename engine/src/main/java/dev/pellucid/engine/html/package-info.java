/**
 * HTML files whatever they tell: their frame, their lines, and pieces that several kinds of page
 * share. It knows neither feeds nor plans.
 */
@NullMarked
package dev.pellucid.engine.html;

import org.jspecify.annotations.NullMarked;
