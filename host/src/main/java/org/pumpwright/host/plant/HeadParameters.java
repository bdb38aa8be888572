package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.PSI;

/**
 * The pump head: chambers, valves, internal bypass and inlet. Thread-safe.
 *
 * @param displacementM3PerRadian swept volume of all chambers
 * @param complianceLossPerPascal share of the stroke swallowed by bending diaphragms, per pascal
 * @param slipM3PerSecondPascal leak back through valves and diaphragms, per pascal
 * @param backflowM3PerRadian volume lost at each valve closing, whatever the pressure
 * @param torqueEfficiency share of the shaft torque that arrives as pressure, 0..1
 * @param bypassOpensPascal pressure at which the internal bypass begins to open
 * @param bypassM3PerSecondPascal bypass flow per pascal above its opening
 * @param chambers number of chambers
 * @param deadChambers how many of them deliver nothing; fractions are allowed, all of them are not
 * @param airFraction share of the swept volume lost to sucked-in air, 0..1
 * @param inletCeilingM3PerSecond most the inlet lets through; infinite for a clean strainer
 */
public record HeadParameters(
        double displacementM3PerRadian,
        double complianceLossPerPascal,
        double slipM3PerSecondPascal,
        double backflowM3PerRadian,
        double torqueEfficiency,
        double bypassOpensPascal,
        double bypassM3PerSecondPascal,
        int chambers,
        double deadChambers,
        double airFraction,
        double inletCeilingM3PerSecond) {

    public HeadParameters {
        Range.check("displacement", displacementM3PerRadian, 1e-9, 1e-3, "m3/rad");
        Range.check("compliance loss", complianceLossPerPascal, 0, 1e-5, "1/Pa");
        Range.check("slip", slipM3PerSecondPascal, 0, 1e-6, "m3/s/Pa");
        Range.check("backflow", backflowM3PerRadian, 0, displacementM3PerRadian, "m3/rad");
        Range.check("torque efficiency", torqueEfficiency, 0.1, 1, "");
        Range.check("bypass opening", bypassOpensPascal, 0, 1e8, "Pa");
        Range.check("bypass flow", bypassM3PerSecondPascal, 0, 1e-6, "m3/s/Pa");
        Range.check("chambers", chambers, 1, 12, "");
        Range.check("dead chambers", deadChambers, 0, chambers - 0.01, "");
        Range.check("air fraction", airFraction, 0, 0.95, "");
        Range.check("inlet ceiling", inletCeilingM3PerSecond, 1e-9, Double.POSITIVE_INFINITY, "m3/s");
    }

    /** Starting values from memory for a three-chamber 5 gal/min head; no maker's specification. */
    static HeadParameters healthy() {
        double turn = 2 * Math.PI;
        return new HeadParameters(
                7.2e-6 / turn, 2.8e-7, 8e-12, 0.25e-6 / turn, 0.92, 65 * PSI, 8e-10, 3, 0, 0, Double.POSITIVE_INFINITY);
    }

    /** Share of the chambers that deliver. */
    double liveShare() {
        return (chambers - deadChambers) / chambers;
    }

    /** The same head with other leaks past valves and diaphragms: m3/s/Pa and m3/rad. */
    public HeadParameters withLeaks(double slip, double backflow) {
        return new HeadParameters(
                displacementM3PerRadian,
                complianceLossPerPascal,
                slip,
                backflow,
                torqueEfficiency,
                bypassOpensPascal,
                bypassM3PerSecondPascal,
                chambers,
                deadChambers,
                airFraction,
                inletCeilingM3PerSecond);
    }

    /** The same head with its bypass opening at another pressure, in pascal. */
    public HeadParameters withBypassOpening(double pascal) {
        return new HeadParameters(
                displacementM3PerRadian,
                complianceLossPerPascal,
                slipM3PerSecondPascal,
                backflowM3PerRadian,
                torqueEfficiency,
                pascal,
                bypassM3PerSecondPascal,
                chambers,
                deadChambers,
                airFraction,
                inletCeilingM3PerSecond);
    }

    /** The same head with some chambers dead, air in the suction and a limit of inlet flow in m3/s. */
    public HeadParameters withFilling(double dead, double air, double ceiling) {
        return new HeadParameters(
                displacementM3PerRadian,
                complianceLossPerPascal,
                slipM3PerSecondPascal,
                backflowM3PerRadian,
                torqueEfficiency,
                bypassOpensPascal,
                bypassM3PerSecondPascal,
                chambers,
                dead,
                air,
                ceiling);
    }
}
