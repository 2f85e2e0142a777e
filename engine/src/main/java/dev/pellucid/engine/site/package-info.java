/**
 * Pages about a folder of feeds, to be opened from the disk: one for all, one for each feed,
 * ingredient and profile of limits. First everything that a page tells is taken down as plain
 * values, then it is rendered; it reads no file of the folder and judges nothing.
 *
 * <p>Pages share a style sheet, and the index has a script; both lie beside them. A page that is
 * sent alone is plain HTML without either: headings, tables and pictures that can be read, with
 * nothing hidden but what a click on its summary opens.
 */
@NullMarked
package dev.pellucid.engine.site;

import org.jspecify.annotations.NullMarked;
