/** The screen on which a unit comes in. May use {@code ui}, {@code ui.control} and {@code ui.work}. */
@NullMarked
package org.pumpwright.host.ui.receive;

import org.jspecify.annotations.NullMarked;
