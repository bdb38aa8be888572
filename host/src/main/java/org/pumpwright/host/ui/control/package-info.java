/** Controls of the window's own. May use {@code ui} for what it says and {@code ui.work} for what they show. */
@NullMarked
package org.pumpwright.host.ui.control;

import org.jspecify.annotations.NullMarked;
