package org.pumpwright.host.plant.driver;

import org.pumpwright.host.plant.Range;
import org.pumpwright.host.plant.UsUnits;

/**
 * What the stand puts around the module. Thread-safe.
 *
 * @param openCircuitVolts supply voltage without load
 * @param feedOhms supply and lead up to the module's supply pins
 * @param load what its output feeds
 * @param ambientKelvin air
 */
public record DriverStand(double openCircuitVolts, double feedOhms, DummyLoad load, double ambientKelvin) {

    public DriverStand {
        Range.check("open-circuit voltage", openCircuitVolts, 0.1, 1000, "V");
        Range.check("feed resistance", feedOhms, 0, 100, "ohm");
        Range.check("ambient temperature", ambientKelvin, 230, 450, "K");
    }

    /** 13.8 V behind 0.05 ohm at 20 °C; assumed. */
    public static DriverStand with(DummyLoad load) {
        return new DriverStand(13.8, 0.05, load, UsUnits.ZERO_CELSIUS_KELVIN + 20);
    }

    /** The same with another supply voltage and feed resistance. */
    public DriverStand withFeed(double volts, double ohms) {
        return new DriverStand(volts, ohms, load, ambientKelvin);
    }
}
