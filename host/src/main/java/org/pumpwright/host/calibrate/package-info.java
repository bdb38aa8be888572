/**
 * The bucket test of a pulse meter: from weights, levels or a master meter's pulses to pulses per gallon with a budget of
 * uncertainties, a K-factor over the flow and one for the customer. Pure arithmetic: no file and no clock, the day is given. Uses
 * quantity and calibration. What a raw reading of a stand's sensor is worth is not here but in calibration.
 */
@NullMarked
package org.pumpwright.host.calibrate;

import org.jspecify.annotations.NullMarked;
