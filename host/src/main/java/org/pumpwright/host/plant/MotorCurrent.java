package org.pumpwright.host.plant;

/**
 * Current of one drive period at a held speed. Thread-safe.
 *
 * @param motorAmps mean over the period
 * @param supplyAmps mean of what the switch lets through from the supply to the motor
 * @param meanSquare mean of the square, in ampere squared, which heats the winding
 * @param peakAmps highest within the period
 */
record MotorCurrent(double motorAmps, double supplyAmps, double meanSquare, double peakAmps) {

    static final MotorCurrent NONE = new MotorCurrent(0, 0, 0, 0);

    /** A current that does not change within the period, of which the supply gives its share of the time. */
    static MotorCurrent steady(double amps, double duty) {
        return new MotorCurrent(amps, duty * amps, amps * amps, amps);
    }

    /** The same shape of current, larger or smaller by a factor. */
    MotorCurrent times(double factor) {
        return new MotorCurrent(
                factor * motorAmps, factor * supplyAmps, factor * factor * meanSquare, factor * peakAmps);
    }
}
