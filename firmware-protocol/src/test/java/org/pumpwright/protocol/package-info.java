/** Tests of the messages against the golden frames, by property, and by exact refusals. */
@NullMarked
package org.pumpwright.protocol;

import org.jspecify.annotations.NullMarked;
