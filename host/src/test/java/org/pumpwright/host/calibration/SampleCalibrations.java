package org.pumpwright.host.calibration;

import java.util.List;
import java.util.OptionalDouble;

/** One calibration of each kind, with invented numbers where no source is named. */
final class SampleCalibrations {
    /** As published for an analogue temperature-sensor module with a thermistor of 10 kohm at 25 degC (its guide). */
    static final SteinhartHart CURVE = new SteinhartHart(0.001129148, 0.000234125, 8.76741e-8);

    static final UncertaintyParts PARTS = new UncertaintyParts(0.002, 0.01, 0.005, 64);

    static final Thermistor THERMISTOR = new Thermistor(CURVE, 10_000, 253.15, 343.15, PARTS);

    static final Ratiometric PRESSURE =
            new Ratiometric(0.1, 0.9, 0, 1e6, PARTS, Ratiometric.halfWayToTheRails(0.1, 0.9));

    private SampleCalibrations() {}

    static List<Calibration> all() {
        return List.of(
                new StraightLine(-12_500, 125_000, PARTS, CodeRange.WHOLE),
                new StraightLine(20, -40, PARTS, CodeRange.ofShares(0.02, 0.98)),
                new Polynomial(List.of(-3.0, 20.0, 4.0, -1.5), CodeRange.ofShares(0.05, 0.95), PARTS),
                new Polynomial(List.of(3.0, -20.0, -4.0), CodeRange.WHOLE, PARTS),
                PRESSURE,
                THERMISTOR,
                new MonitorVolts(PARTS),
                new MonitorAmps(0.002, OptionalDouble.of(0.001), PARTS),
                new MonitorAmps(0.0015, OptionalDouble.empty(), PARTS));
    }
}
