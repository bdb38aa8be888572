package org.pumpwright.host.calibrate;

import org.pumpwright.host.calibrate.fluid.Air;
import org.pumpwright.host.quantity.Require;

/**
 * A bucket on a scale. Thread-safe.
 *
 * @param scale under it
 * @param air around it
 * @param airHalfWidthKgPerM3 the density of the air is good to plus and minus this
 * @param splashKg splash, drip and what hangs on: off by at most this, either way
 * @param bucketM3 what the bucket holds
 */
public record Weighing(Scale scale, Air air, double airHalfWidthKgPerM3, double splashKg, double bucketM3)
        implements Method {
    public Weighing {
        Require.inRange("half-width of the air density", airHalfWidthKgPerM3, 0, 0.5, "kg/m3");
        Require.inRange("splash and drip", splashKg, 0, 10, "kg");
        Require.inRange("bucket", bucketM3, 1e-4, 10, "m3");
    }

    @Override
    public String words() {
        return "weighed bucket";
    }
}
