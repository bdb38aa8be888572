package org.pumpwright.host.calibrate;

/** In which pass over the flows a run was made. Thread-safe. */
public enum Leg {
    /** The pass that K is taken from. */
    MAIN,
    /** The flows once more in the other direction, to show hysteresis. */
    BACK,
    /** The first flow once more at the end, to show that nothing moved. */
    FIRST_AGAIN
}
