/** The screen of the stand itself: what it reads now, whether it is fit, its calibrations, and its board against the protocol. */
@NullMarked
package org.pumpwright.host.ui.stand;

import org.jspecify.annotations.NullMarked;
