package org.pumpwright.host.calibrate;

import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.quantity.Require;

/**
 * The thermometer in the liquid. Thread-safe.
 *
 * @param certificate of its calibration
 * @param halfWidthKelvin the temperature of what is caught lies within plus and minus this of the reading
 */
public record Thermometer(Certificate certificate, double halfWidthKelvin) {
    public Thermometer {
        Require.inRange("half-width of the thermometer", halfWidthKelvin, 0, 20, "K");
    }
}
