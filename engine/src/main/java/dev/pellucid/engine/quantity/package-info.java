/** Exact amounts and the wording of figures. It knows nothing else of the engine. */
@NullMarked
package dev.pellucid.engine.quantity;

import org.jspecify.annotations.NullMarked;
