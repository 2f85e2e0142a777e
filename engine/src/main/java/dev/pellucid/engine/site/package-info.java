/**
 * Pages about a folder of feeds, to be opened from the disk: one for all, one for each feed,
 * ingredient and profile of limits. First everything that a page tells is taken down as plain
 * values, then it is rendered; it reads no file of the folder and judges nothing.
 */
@NullMarked
package dev.pellucid.engine.site;

import org.jspecify.annotations.NullMarked;
