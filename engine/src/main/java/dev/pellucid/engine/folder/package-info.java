/** The only room that reads and writes files. It knows nothing of what they mean. */
@NullMarked
package dev.pellucid.engine.folder;

import org.jspecify.annotations.NullMarked;
