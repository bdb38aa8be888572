/**
 * What a stand recorded: raw samples, what each channel means, and which stretch of time belongs to which point of the
 * plan. Everything after the run works on a {@code Trace} alone, so a stored run can be graded again without a stand.
 * Uses quantity and calibration.
 */
@NullMarked
package org.pumpwright.host.trace;

import org.jspecify.annotations.NullMarked;
