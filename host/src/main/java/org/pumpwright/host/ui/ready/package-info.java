/** The screen on which a unit is put on the stand. May use {@code ui}, {@code ui.control} and {@code ui.work}. */
@NullMarked
package org.pumpwright.host.ui.ready;

import org.jspecify.annotations.NullMarked;
