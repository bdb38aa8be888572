package org.pumpwright.host.plant;

import java.util.EnumSet;
import java.util.Set;

/**
 * In what state the unit comes to the stand, and what an inspection of it finds. Thread-safe.
 *
 * @param warmerKelvin how much warmer than the air winding and case are at the start
 * @param stiffRunning share of running friction that cold, stiff diaphragms add at first
 * @param stiffBreakaway share of breakaway torque that they add at first
 * @param thawSeconds running time after which a third of the stiffness is left (1/e)
 * @param findings what can be seen, felt or measured without power
 */
public record ArrivalParameters(
        double warmerKelvin, double stiffRunning, double stiffBreakaway, double thawSeconds, Set<Finding> findings) {

    public ArrivalParameters {
        Range.check("warmth at the start", warmerKelvin, -50, 150, "K");
        Range.check("running stiffness", stiffRunning, 0, 20, "");
        Range.check("breakaway stiffness", stiffBreakaway, 0, 20, "");
        Range.check("thawing", thawSeconds, 1, 3600, "s");
        findings = Set.copyOf(findings);
    }

    /** At the stand's temperature, supple, without a finding. */
    static ArrivalParameters healthy() {
        return new ArrivalParameters(0, 0, 0, 60, Set.of());
    }

    /** The same, warmer than the air by some kelvin. */
    public ArrivalParameters warmer(double kelvin) {
        return new ArrivalParameters(kelvin, stiffRunning, stiffBreakaway, thawSeconds, findings);
    }

    /** The same with stiff diaphragms. */
    public ArrivalParameters stiff(double running, double breakaway) {
        return new ArrivalParameters(warmerKelvin, running, breakaway, thawSeconds, findings);
    }

    /** The same with one more finding. */
    public ArrivalParameters with(Finding finding) {
        Set<Finding> more = EnumSet.of(finding);
        more.addAll(findings);
        return new ArrivalParameters(warmerKelvin, stiffRunning, stiffBreakaway, thawSeconds, more);
    }
}
