/** The screen of a run that goes on. May use {@code ui}, {@code ui.control} and {@code ui.work}. */
@NullMarked
package org.pumpwright.host.ui.run;

import org.jspecify.annotations.NullMarked;
