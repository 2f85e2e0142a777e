/** One renderer for each output. It does no arithmetic and takes no decisions. */
@NullMarked
package dev.pellucid.engine.report;

import org.jspecify.annotations.NullMarked;
