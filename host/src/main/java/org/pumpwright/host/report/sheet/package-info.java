/**
 * What the papers of the warranty desk and of a retest share: the sheet itself, its blocks, pictures and charts, in HTML and CSS
 * that a browser and a print engine without newer layout both understand. May use {@code record}, {@code grade}, {@code text},
 * {@code quantity}, {@code report} and {@code report.draw}.
 */
@NullMarked
package org.pumpwright.host.report.sheet;

import org.jspecify.annotations.NullMarked;
