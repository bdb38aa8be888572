package org.pumpwright.host.calibrate;

import org.pumpwright.host.quantity.Require;

/**
 * The rules that a test is read by. The limits are common practice, no source. Thread-safe.
 *
 * @param grade what the paper is for
 * @param level level of confidence of the stated intervals, 0.5 to 0.999
 * @param refitShare the meter's K differs after taking out and refitting by at most this, either way
 * @param installationShare with another liquid and other pipes K differs by at most this, either way
 */
public record Rules(Grade grade, double level, double refitShare, double installationShare) {
    /** The level that a coverage factor of 2 stands for when nothing is normal by estimate (JCGM 100, table G.1). */
    public static final double LEVEL_OF_TWO = 0.9545;

    public static final Rules SHOP = new Rules(Grade.SHOP, LEVEL_OF_TWO, 0.0025, 0.0065);
    public static final Rules CERTIFICATE = new Rules(Grade.CERTIFICATE, LEVEL_OF_TWO, 0.0025, 0.0065);

    public Rules {
        Require.inRange("level of confidence", level, 0.5, 0.999, "");
        Require.inRange("change on refitting", refitShare, 0, 0.2, "");
        Require.inRange("change with liquid and pipes", installationShare, 0, 0.2, "");
    }
}
