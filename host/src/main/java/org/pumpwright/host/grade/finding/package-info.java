/**
 * What each step of a plan reads, as a figure with its uncertainty or as a word: pure functions of trace and plan, one
 * small class a reading. Nothing is judged here. Uses trace, plan, catalog, signal, calibration and quantity.
 */
@NullMarked
package org.pumpwright.host.grade.finding;

import org.jspecify.annotations.NullMarked;
