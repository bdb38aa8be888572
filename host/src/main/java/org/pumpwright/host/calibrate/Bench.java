package org.pumpwright.host.calibrate;

import org.pumpwright.host.quantity.Require;

/**
 * Everything a test is made with, besides the meter. Thread-safe.
 *
 * @param method with what the volume is told
 * @param timing of begin and end
 * @param thermometer in the liquid
 * @param lineHalfWidthM3 what the line between meter and bucket holds more or less, and air trapped in it: at most this, either way
 * @param pulseStep pulses that one count of the meter under test stands for, 1 where every pulse is counted; 0 where first and last
 *     edges are time-stamped
 */
public record Bench(Method method, Timing timing, Thermometer thermometer, double lineHalfWidthM3, double pulseStep) {
    public Bench {
        Require.inRange("line volume", lineHalfWidthM3, 0, 1, "m3");
        Require.inRange("pulse step", pulseStep, 0, 1000, "pulses");
    }
}
