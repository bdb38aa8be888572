package org.pumpwright.host.plant;

/**
 * Supply, lead and what leaks past the motor to the case, as the motor sees them while the drive's switch conducts. The
 * leak makes of source and feed resistance another source (Thévenin's theorem). A supply at its current limit holds the
 * mean current in the lead. Thread-safe.
 *
 * @param openVolts source without limit, as the motor sees it
 * @param ohms its resistance
 * @param limitAmps what the lead may carry while the switch conducts; infinite at duty 0
 * @param leakOhms path past the motor; infinite in good order
 * @param leadOhms supply and lead together
 */
record Feed(double openVolts, double ohms, double limitAmps, double leakOhms, double leadOhms) {

    static Feed of(StandParameters stand, double leakOhms, double duty) {
        double lead = stand.supplyOhms() + stand.leadOhms();
        double share = Double.isInfinite(leakOhms) ? 1 : leakOhms / (leakOhms + lead);
        double limit = duty > 0 ? stand.supplyLimitAmps() / duty : 0;
        return new Feed(stand.openCircuitVolts() * share, lead * share, limit, leakOhms, lead);
    }

    boolean leaks() {
        return !Double.isInfinite(leakOhms);
    }

    /** What the lead carries on average when the motor takes this much through the switch. */
    double leadAmps(double motorSupplyAmps, double duty, double openCircuitVolts) {
        if (!leaks()) {
            return motorSupplyAmps;
        }
        double unlimited = (motorSupplyAmps * leakOhms + duty * openCircuitVolts) / (leakOhms + leadOhms);
        return duty > 0 ? Math.min(unlimited, duty * limitAmps) : 0;
    }
}
