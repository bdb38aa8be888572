package org.pumpwright.host.plant;

/**
 * What about unit and stand changes in the course of a run: the outlet valve, air left in the hoses, a lead that warms
 * its bad joint, diaphragms that thaw. Gives the parameters as they are now. Confined to the plant's thread.
 */
final class Surroundings {

    /** A plug or terminal takes about a minute to warm (assumed). */
    private static final double LEAD_WARMS_SECONDS = 60;

    private static final double NEGLIGIBLE = 1e-6;

    private final PumpParameters parameters;
    private double opening = 1;
    private double air;
    private double stiffness = 1;
    private double leadGrowth;
    private PumpParameters now;

    Surroundings(PumpParameters parameters) {
        this.parameters = parameters;
        air = parameters.stand().lines().airAtStart();
        now = changed();
    }

    PumpParameters now() {
        return now;
    }

    /** Air share of what comes out now, whether sucked in or left from the start. */
    double airFraction() {
        return now.head().airFraction();
    }

    void turnOutletValve(double newOpening) {
        opening = newOpening;
        now = changed();
    }

    /** Lets time pass: flow through the hoses, mean current in the lead, shaft turning or not. */
    void advance(double seconds, double flowM3PerSecond, double leadAmps, boolean turning) {
        boolean changes = false;
        if (air > 0) {
            double kept = StrictMath.exp(
                    -flowM3PerSecond * seconds / parameters.stand().lines().purgeVolumeM3());
            air = air * kept < NEGLIGIBLE ? 0 : air * kept;
            changes = true;
        }
        if (stiffness > 0 && turning && isStiff()) {
            double kept = StrictMath.exp(-seconds / parameters.arrival().thawSeconds());
            stiffness = stiffness * kept < NEGLIGIBLE ? 0 : stiffness * kept;
            changes = true;
        }
        if (!Double.isInfinite(parameters.stand().leadDoublesWatts())) {
            double watts = leadAmps * leadAmps * now.stand().leadOhms();
            double growing = Math.min(1, watts / parameters.stand().leadDoublesWatts());
            leadGrowth += (growing - leadGrowth) * seconds / LEAD_WARMS_SECONDS;
            changes = true;
        }
        if (changes) {
            now = changed();
        }
    }

    private boolean isStiff() {
        return parameters.arrival().stiffRunning() > 0 || parameters.arrival().stiffBreakaway() > 0;
    }

    private PumpParameters changed() {
        PumpParameters p = parameters;
        if (isStiff()) {
            MotorParameters m = p.motor();
            p = p.withMotor(m.withFriction(
                    m.runningFrictionNewtonMetre()
                            * (1 + stiffness * p.arrival().stiffRunning()),
                    m.breakawayNewtonMetre() * (1 + stiffness * p.arrival().stiffBreakaway())));
        }
        if (air > 0) {
            HeadParameters h = p.head();
            double both = 1 - (1 - h.airFraction()) * (1 - air);
            p = p.withHead(h.withFilling(h.deadChambers(), both, h.inletCeilingM3PerSecond()));
        }
        StandParameters s = p.stand();
        if (leadGrowth > 0) {
            s = s.withFeed(s.openCircuitVolts(), s.leadOhms() * (1 + leadGrowth));
        }
        if (opening < 1) {
            s = s.withOutlet(s.nozzleM3PerSecondRootPascal() * opening, s.recirculationM3PerSecondRootPascal());
        }
        return p.withStand(s);
    }
}
