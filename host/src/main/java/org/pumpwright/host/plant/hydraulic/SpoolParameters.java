package org.pumpwright.host.plant.hydraulic;

import org.pumpwright.host.plant.Range;
import org.pumpwright.host.plant.UsUnits;

/**
 * Spool, spring and compensator of the valve. Positions are given as the coil current that holds them. Thread-safe.
 *
 * @param deadBandAmps current at which oil begins to flow, I_0
 * @param fullAmps current of full opening, I_max
 * @param frictionShare width of the hysteresis without dither, as share of {@code fullAmps}
 * @param criticalDither dither at which the hysteresis would vanish, as share of {@code fullAmps}
 * @param stickSlipShare how far the coil must pull beyond the friction before the spool jumps, share of
 *     {@code fullAmps}
 * @param flowExponent n in {@code Q_oil = Q_rated x^n}
 * @param ratedOilM3PerSecond oil flow at full opening
 * @param leastOpening opening that remains without current
 * @param mostOpening opening at which the spool is held however large the current
 * @param compensatorStuckShare 0: the oil flow does not follow the load; 1: it follows as through a fixed orifice
 * @param responseSeconds time constant of the spool
 */
public record SpoolParameters(
        double deadBandAmps,
        double fullAmps,
        double frictionShare,
        double criticalDither,
        double stickSlipShare,
        double flowExponent,
        double ratedOilM3PerSecond,
        double leastOpening,
        double mostOpening,
        double compensatorStuckShare,
        double responseSeconds) {

    public SpoolParameters {
        Range.check("full current", fullAmps, 0.01, 100, "A");
        Range.check("dead band", deadBandAmps, 0, 0.99 * fullAmps, "A");
        Range.check("spool friction", frictionShare, 0, 1, "");
        Range.check("critical dither", criticalDither, 1e-6, 1e9, "");
        Range.check("stick-slip", stickSlipShare, 0, 1, "");
        Range.check("flow exponent", flowExponent, 0.2, 5, "");
        Range.check("rated oil flow", ratedOilM3PerSecond, 1e-9, 1, "m3/s");
        Range.check("most opening", mostOpening, 0, 1, "");
        Range.check("least opening", leastOpening, 0, mostOpening, "");
        Range.check("compensator stuck", compensatorStuckShare, 0, 1, "");
        Range.check("spool response", responseSeconds, 1e-3, 60, "s");
    }

    /** A valve of 12 gal/min in good order. */
    static SpoolParameters healthy() {
        return new SpoolParameters(0.32, 1.50, 0.20, 0.10, 0, 1.15, 12 * UsUnits.GALLON_PER_MINUTE, 0, 1, 0, 0.10);
    }

    /** Share of the hysteresis width left by a dither, {@code max(0, 1 - A/A_critical)}, times the width without it. */
    public double hysteresisAmps(double dither) {
        return fullAmps * frictionShare * Math.max(0, 1 - dither / criticalDither);
    }

    /** Relative opening x of a spool held at the position of this current, limits of the spool included. */
    public double opening(double heldAmps) {
        double x = (heldAmps - deadBandAmps) / (fullAmps - deadBandAmps);
        return held(x);
    }

    /** An opening within what the spool can do. */
    double held(double x) {
        return Math.max(leastOpening, Math.min(mostOpening, x));
    }

    SpoolParameters withDeadBand(double amps, double openWithoutCurrent) {
        return new SpoolParameters(
                amps,
                fullAmps,
                frictionShare,
                criticalDither,
                stickSlipShare,
                flowExponent,
                ratedOilM3PerSecond,
                openWithoutCurrent,
                mostOpening,
                compensatorStuckShare,
                responseSeconds);
    }

    SpoolParameters withFriction(double share, double newCriticalDither, double stickSlip) {
        return new SpoolParameters(
                deadBandAmps,
                fullAmps,
                share,
                newCriticalDither,
                stickSlip,
                flowExponent,
                ratedOilM3PerSecond,
                leastOpening,
                mostOpening,
                compensatorStuckShare,
                responseSeconds);
    }

    SpoolParameters withHeldBetween(double least, double most) {
        return new SpoolParameters(
                deadBandAmps,
                fullAmps,
                frictionShare,
                criticalDither,
                stickSlipShare,
                flowExponent,
                ratedOilM3PerSecond,
                least,
                most,
                compensatorStuckShare,
                responseSeconds);
    }

    SpoolParameters withCompensatorStuck(double share) {
        return new SpoolParameters(
                deadBandAmps,
                fullAmps,
                frictionShare,
                criticalDither,
                stickSlipShare,
                flowExponent,
                ratedOilM3PerSecond,
                leastOpening,
                mostOpening,
                share,
                responseSeconds);
    }
}
