package org.pumpwright.host.plan;

import org.pumpwright.host.quantity.Require;

/**
 * A copper wire by its gauge and length, and the resistance that it should have. Thread-safe.
 *
 * <p>Diameter by the American wire gauge, {@code d = 0.127 mm * 92^((36 - n) / 39)} (ASTM B258); resistivity of annealed
 * copper at 20 °C, 1/58 ohm mm2/m (IEC 60028). A stranded wire of the same gauge has about 2 % more.
 *
 * @param gauge American wire gauge
 * @param metres length
 */
public record CopperWire(int gauge, double metres) {
    private static final double OHM_METRES = 1e-6 / 58;
    private static final double GAUGE_36_METRES = 0.127e-3;

    public CopperWire {
        Require.inRange("wire gauge", gauge, 0, 40, "");
        Require.inRange("length of the wire", metres, 0.01, 1000, "m");
    }

    /** Resistance at 20 °C, ohm. */
    public double ohms() {
        double diameter = GAUGE_36_METRES * Math.pow(92, (36.0 - gauge) / 39);
        return OHM_METRES * metres / (Math.PI / 4 * diameter * diameter);
    }
}
