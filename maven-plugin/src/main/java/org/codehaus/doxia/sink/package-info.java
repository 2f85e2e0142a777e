/** The one name of older builders of sites that a report must know; it does nothing. */
@NullMarked
package org.codehaus.doxia.sink;

import org.jspecify.annotations.NullMarked;
