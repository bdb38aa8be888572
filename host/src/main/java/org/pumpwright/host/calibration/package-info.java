/**
 * What a raw reading is worth: the calibrations of analogue channels and pulse meters, each with its standard uncertainty and
 * its certificate. Pure arithmetic; no clock is read here, the day is given. Uses quantity.
 */
@NullMarked
package org.pumpwright.host.calibration;

import org.jspecify.annotations.NullMarked;
