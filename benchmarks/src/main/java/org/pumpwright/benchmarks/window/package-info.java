/**
 * How the window behaves, in software rendering: the strip chart beside the toolkit's own line chart, the time to its first frame, its
 * memory after half an hour of samples, and STOP while all that goes on. Uses the host's {@code ui} and, for the emulated board, what its
 * tests use.
 */
@NullMarked
package org.pumpwright.benchmarks.window;

import org.jspecify.annotations.NullMarked;
