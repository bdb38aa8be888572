package org.pumpwright.host.plant.driver;

import org.pumpwright.host.plant.Range;

/**
 * What the module's output feeds: a resistance with an inductance. A pump is stood in for by the resistance it has at
 * its working point and by the larger current with which it starts. Thread-safe.
 *
 * @param ohms resistance once running
 * @param henry inductance
 * @param inrush by how much more current it takes at the first moment
 * @param inrushSeconds time constant with which that goes
 */
public record DummyLoad(double ohms, double henry, double inrush, double inrushSeconds) {

    public DummyLoad {
        Range.check("load", ohms, 1e-3, 1e6, "ohm");
        Range.check("load inductance", henry, 0, 10, "H");
        Range.check("inrush", inrush, 1, 20, "");
        Range.check("inrush time", inrushSeconds, 1e-3, 60, "s");
    }

    /** The 2 ohm, 200 W resistor. */
    public static DummyLoad resistor() {
        return new DummyLoad(2, 0, 1, 1);
    }

    /** A valve's coil, 7.5 ohm and 30 mH. */
    public static DummyLoad coil() {
        return new DummyLoad(7.5, 0.030, 1, 1);
    }

    /** A resistor that takes 15 A at 13.5 V. */
    public static DummyLoad fifteenAmps() {
        return new DummyLoad(0.9, 0, 1, 1);
    }

    /** The stand's master pump at full duty: 13 A at 13.15 V, three times that at the start; assumed. */
    public static DummyLoad masterPump() {
        return new DummyLoad(13.15 / 13.03, 0.00025, 3, 0.1);
    }

    /** A short behind a bit of wire. */
    public static DummyLoad shortCircuit() {
        return new DummyLoad(0.02, 0, 1, 1);
    }

    /** Resistance a time after it was switched on. */
    double ohmsAfter(double seconds) {
        return ohms / (1 + (inrush - 1) * StrictMath.exp(-seconds / inrushSeconds));
    }
}
