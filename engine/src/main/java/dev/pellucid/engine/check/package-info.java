/**
 * The rules: one class each, held in one list. They put into words what they see in a recipe and
 * how it was judged; they compute no feed, read no file and print nothing.
 */
@NullMarked
package dev.pellucid.engine.check;

import org.jspecify.annotations.NullMarked;
