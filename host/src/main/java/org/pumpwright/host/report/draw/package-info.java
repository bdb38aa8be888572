/**
 * Draws: elements of HTML and SVG, axes, charts with room for their notes, square codes and bar codes. Knows nothing of runs
 * and papers. May use nothing of the program.
 */
@NullMarked
package org.pumpwright.host.report.draw;

import org.jspecify.annotations.NullMarked;
