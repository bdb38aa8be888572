/**
 * A test plan as data: its steps (sweep, ramp, hold, ask), when a point has settled and been measured long enough, and what
 * stops the run. Plans are files with versions, so that a shop can change one without a programmer. Uses quantity, trace (the
 * names of a sweep's legs) and datafile.
 */
@NullMarked
package org.pumpwright.host.plan;

import org.jspecify.annotations.NullMarked;
