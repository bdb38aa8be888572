/** The screen of what came of a run. May use {@code ui}, {@code ui.control} and {@code ui.work}. */
@NullMarked
package org.pumpwright.host.ui.verdict;

import org.jspecify.annotations.NullMarked;
