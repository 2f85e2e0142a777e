/** The rules: one class each, held in one list. It reads and prints nothing. */
@NullMarked
package dev.pellucid.engine.check;

import org.jspecify.annotations.NullMarked;
