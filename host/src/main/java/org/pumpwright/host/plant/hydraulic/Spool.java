package org.pumpwright.host.plant.hydraulic;

/**
 * The spool's position in time, as the current that would hold it. Friction makes a play operator: the position rests
 * while the pull stays within half the hysteresis width of it and is dragged along at its edge. A sticking spool rests
 * longer, then jumps the whole way. Confined to the plant's thread.
 */
final class Spool {

    private final SpoolParameters spool;
    private final double halfWidth;
    private final double jump;
    private double heldAmps;
    private double lagged;

    Spool(SpoolParameters spool, double dither) {
        this.spool = spool;
        halfWidth = spool.hysteresisAmps(dither) / 2;
        jump = spool.stickSlipShare() * spool.fullAmps();
    }

    /** Lets the coil pull for a time; gives the mean opening of it. */
    double advance(double seconds, double pullAmps, double override) {
        double off = pullAmps - heldAmps;
        if (Math.abs(off) > halfWidth + jump) {
            heldAmps = pullAmps - Math.signum(off) * halfWidth;
        }
        double target = spool.held(Math.max(spool.opening(heldAmps), override));
        double kept = StrictMath.exp(-0.5 * seconds / spool.responseSeconds());
        double middle = target + (lagged - target) * kept;
        lagged = target + (middle - target) * kept;
        return middle;
    }
}
