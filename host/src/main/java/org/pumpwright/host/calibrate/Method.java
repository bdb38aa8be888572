package org.pumpwright.host.calibrate;

/** With what the volume that passed the meter is told. Thread-safe. */
public sealed interface Method permits Weighing, Measuring, Comparing {
    /** For a paper, without how the runs begin and end. */
    String words();
}
