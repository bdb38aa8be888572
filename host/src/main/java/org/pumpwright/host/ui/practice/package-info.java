/** The screen of simulated units to learn on. May use {@code ui}, {@code ui.control} and {@code ui.work}. */
@NullMarked
package org.pumpwright.host.ui.practice;

import org.jspecify.annotations.NullMarked;
