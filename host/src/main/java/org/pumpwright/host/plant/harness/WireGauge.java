package org.pumpwright.host.plant.harness;

import java.util.Arrays;
import org.pumpwright.host.plant.UsUnits;

/**
 * American wire gauges with the published resistance of solid annealed copper at 20 °C in ohm per 1000 ft: a copper wire
 * table on a university physics site that quotes Floyd, Electric Circuit Fundamentals. Diameters follow ASTM B258 (name
 * from memory), {@code 0.127 mm x 92^((36-n)/39)}. Thread-safe.
 */
public enum WireGauge {
    AWG20(20, 10.15),
    AWG18(18, 6.385),
    AWG16(16, 4.016),
    AWG14(14, 2.525),
    AWG12(12, 1.588),
    AWG10(10, 0.9989),
    AWG8(8, 0.6282),
    AWG6(6, 0.3951),
    AWG4(4, 0.2485),
    AWG2(2, 0.1563);

    private static final double METRES_PER_1000_FEET = 304.8;
    private static final double COPPER_PER_KELVIN = 0.00393;
    private static final double REFERENCE_KELVIN = UsUnits.ZERO_CELSIUS_KELVIN + 20;

    private final int number;
    private final double ohmsPer1000Feet;

    WireGauge(int number, double ohmsPer1000Feet) {
        this.number = number;
        this.ohmsPer1000Feet = ohmsPer1000Feet;
    }

    /** The gauge's number. */
    public int number() {
        return number;
    }

    /** Resistance of a metre at a temperature. */
    public double ohmsPerMetre(double kelvin) {
        return ohmsPer1000Feet / METRES_PER_1000_FEET * (1 + COPPER_PER_KELVIN * (kelvin - REFERENCE_KELVIN));
    }

    /** Diameter in metre. */
    public double diameterMetre() {
        return 0.127e-3 * StrictMath.pow(92, (36 - number) / 39.0);
    }

    /** The gauge thinner by this many steps of two numbers; the list ends at its thinnest. */
    WireGauge thinnerBy(int steps) {
        return Arrays.stream(values())
                .filter(each -> each.number <= Math.min(AWG20.number, number + 2 * steps) && each.number >= number)
                .findFirst()
                .orElse(this);
    }
}
