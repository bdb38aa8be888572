/**
 * Measures the whole program's way from board to host and back: how many samples arrive, and how soon a press of STOP is
 * on the line. May use the host; nothing uses it.
 */
@NullMarked
package org.pumpwright.benchmarks.line;

import org.jspecify.annotations.NullMarked;
