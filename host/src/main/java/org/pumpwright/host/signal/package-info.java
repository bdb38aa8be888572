/**
 * Signal treatment: frequency of a pulse train and its uncertainty, what its pulses say of meter and flow, settling, surge,
 * hysteresis, thresholds on a ramp, thermal trips, ripple, resistance at rest. Pure functions over arrays; no stand, no
 * files, no clock. Uses quantity, and the distributions of Hipparchus.
 */
@NullMarked
package org.pumpwright.host.signal;

import org.jspecify.annotations.NullMarked;
