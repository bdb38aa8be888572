package org.pumpwright.host.plant.hydraulic;

import org.pumpwright.host.plant.Range;

/**
 * A positive-displacement head: {@code Q = D w (1 - c p)(1 - a) - q_b w - C_l p}, torque {@code D p / eta}. Thread-safe.
 *
 * @param displacementM3PerRadian swept volume of all chambers
 * @param complianceLossPerPascal c, share of the stroke lost per pressure
 * @param slipM3PerSecondPascal C_l, leakage per pressure
 * @param backflowM3PerRadian q_b, lost through closing valves
 * @param torqueEfficiency share of the torque that becomes pressure
 * @param chambers number of chambers
 * @param deadChambers how many of them deliver nothing
 * @param airFraction a, share of the stroke that is air
 */
public record DisplacementHead(
        double displacementM3PerRadian,
        double complianceLossPerPascal,
        double slipM3PerSecondPascal,
        double backflowM3PerRadian,
        double torqueEfficiency,
        int chambers,
        double deadChambers,
        double airFraction)
        implements ProductHead {

    private static final double TURN = 2 * Math.PI;

    public DisplacementHead {
        Range.check("pump displacement", displacementM3PerRadian, 1e-9, 1, "m3/rad");
        Range.check("compliance", complianceLossPerPascal, 0, 1e-5, "/Pa");
        Range.check("slip", slipM3PerSecondPascal, 1e-15, 1, "m3/s/Pa");
        Range.check("backflow", backflowM3PerRadian, 0, 0.9 * displacementM3PerRadian, "m3/rad");
        Range.check("pump torque efficiency", torqueEfficiency, 0.05, 1, "");
        Range.check("chambers", chambers, 1, 20, "");
        Range.check("dead chambers", deadChambers, 0, chambers, "");
        Range.check("air", airFraction, 0, 0.9, "");
    }

    /** A three-chamber 2-inch class head; assumed values, compliance inferred from the check values. */
    static DisplacementHead healthy() {
        return new DisplacementHead(240e-6 / TURN, 6e-8, 2e-11, 4e-6 / TURN, 0.90, 3, 0, 0);
    }

    @Override
    public LoadPoint against(double speedRadPerSecond, double nozzle) {
        double live = 1 - deadChambers / chambers;
        double stroke = live * displacementM3PerRadian;
        // In the root r of the pressure the balance with the nozzle is loss r^2 + nozzle r = gain.
        double filled = stroke * (1 - airFraction);
        double gain = speedRadPerSecond * (filled - live * backflowM3PerRadian);
        if (gain <= 0) {
            return LoadPoint.NONE;
        }
        double loss = speedRadPerSecond * filled * complianceLossPerPascal + slipM3PerSecondPascal;
        double root = 2 * gain / (nozzle + Math.sqrt(nozzle * nozzle + 4 * loss * gain));
        double pressure = root * root;
        return new LoadPoint(nozzle * root, pressure, stroke * pressure / torqueEfficiency);
    }

    @Override
    public DisplacementHead withAir(double fraction) {
        return new DisplacementHead(
                displacementM3PerRadian,
                complianceLossPerPascal,
                slipM3PerSecondPascal,
                backflowM3PerRadian,
                torqueEfficiency,
                chambers,
                deadChambers,
                fraction);
    }

    DisplacementHead withLeaks(double slip, double backflow) {
        return new DisplacementHead(
                displacementM3PerRadian,
                complianceLossPerPascal,
                slip,
                backflow,
                torqueEfficiency,
                chambers,
                deadChambers,
                airFraction);
    }

    DisplacementHead withDeadChambers(double dead) {
        return new DisplacementHead(
                displacementM3PerRadian,
                complianceLossPerPascal,
                slipM3PerSecondPascal,
                backflowM3PerRadian,
                torqueEfficiency,
                chambers,
                dead,
                airFraction);
    }
}
