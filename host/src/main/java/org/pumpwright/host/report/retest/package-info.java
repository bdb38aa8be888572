/**
 * Two runs of one unit on one sheet: before and after a repair. Begin at {@code RetestPage}. May use {@code report}, {@code
 * report.sheet}, {@code report.draw}, {@code record}, {@code curve}, {@code grade}, {@code text} and {@code quantity}.
 */
@NullMarked
package org.pumpwright.host.report.retest;

import org.jspecify.annotations.NullMarked;
