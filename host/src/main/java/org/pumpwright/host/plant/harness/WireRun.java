package org.pumpwright.host.plant.harness;

import org.pumpwright.host.plant.Range;

/**
 * A length of wire, one way. Thread-safe.
 *
 * @param name its name on the bench
 * @param gauge its gauge
 * @param metres its length
 * @param kelvin its temperature
 */
public record WireRun(String name, WireGauge gauge, double metres, double kelvin) implements Element {

    public WireRun {
        Range.check("wire length", metres, 0, 1000, "m");
        Range.check("wire temperature", kelvin, 230, 450, "K");
    }

    @Override
    public double drop(double amps, double heatedBy) {
        return amps * smallCurrentOhms();
    }

    @Override
    public double smallCurrentOhms() {
        return metres * gauge.ohmsPerMetre(kelvin);
    }
}
