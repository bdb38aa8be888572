/**
 * How smoothly the window draws: the strip chart beside the toolkit's own line chart, in software rendering. Uses the host's
 * {@code ui.control}.
 */
@NullMarked
package org.pumpwright.benchmarks.window;

import org.jspecify.annotations.NullMarked;
