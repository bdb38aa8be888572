/**
 * A test plan as data: the points to visit, when a point has settled and been measured long enough, and what stops the
 * run. Plans are files with versions, so that a shop can change one without a programmer. Uses quantity, trace (the
 * names of a sweep's legs) and datafile.
 */
@NullMarked
package org.pumpwright.host.plan;

import org.jspecify.annotations.NullMarked;
