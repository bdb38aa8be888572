/**
 * Draws: elements of HTML and SVG, axes, and charts with room for their notes. Knows nothing of runs and papers. May use
 * nothing of the program.
 */
@NullMarked
package org.pumpwright.host.report.draw;

import org.jspecify.annotations.NullMarked;
