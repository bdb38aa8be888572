/**
 * What may be wrong with a unit that did not pass: what a run has read, held against an atlas of simulated faults, as ranked
 * causes in plain words with the test that tells them apart. Pure. Uses grade.finding, curve, catalog, trace, signal and
 * quantity.
 */
@NullMarked
package org.pumpwright.host.grade.cause;

import org.jspecify.annotations.NullMarked;
