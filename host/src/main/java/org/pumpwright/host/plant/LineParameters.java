package org.pumpwright.host.plant;

/**
 * The stand's hoses on both sides of the pump. Assumed values. Thread-safe.
 *
 * @param hoseM3PerPascal how much the outlet hose swells within a turn of the pump
 * @param trappedM3PerPascal the same over seconds, when a closed outlet keeps the pressure in (air pockets included)
 * @param standingLeakShare share of the running slip that gets back through the closed valves of a standing pump
 * @param purgeVolumeM3 volume of the outlet side, which must pass for its air to fall to a third (1/e)
 * @param airAtStart air share of what comes out at first
 * @param drySuctionM3 volume of air in front of the pump at the start; 0 with a flooded suction
 * @param liftMetre how high the pump sits above the tank's level
 */
public record LineParameters(
        double hoseM3PerPascal,
        double trappedM3PerPascal,
        double standingLeakShare,
        double purgeVolumeM3,
        double airAtStart,
        double drySuctionM3,
        double liftMetre) {

    /** Standard gravity (exact) and water at 20 °C (handbook). */
    private static final double GRAVITY = 9.80665;

    private static final double WATER_KILOGRAM_PER_M3 = 998;

    public LineParameters {
        Range.check("hose swelling", hoseM3PerPascal, 1e-15, 1e-6, "m3/Pa");
        Range.check("trapped swelling", trappedM3PerPascal, 1e-15, 1e-6, "m3/Pa");
        Range.check("standing leak", standingLeakShare, 0, 1, "");
        Range.check("purge volume", purgeVolumeM3, 1e-6, 1, "m3");
        Range.check("air at the start", airAtStart, 0, 0.9, "");
        Range.check("dry suction", drySuctionM3, 0, 1, "m3");
        Range.check("lift", liftMetre, 0, 9, "m");
    }

    /** Hoses full of water, suction flooded. */
    static LineParameters filled() {
        return new LineParameters(1.2e-11, 2e-10, 0.02, 0.7e-3, 0, 0, 0);
    }

    /** The same with air left in the outlet hoses. */
    public LineParameters withAir(double share) {
        return new LineParameters(
                hoseM3PerPascal, trappedM3PerPascal, standingLeakShare, purgeVolumeM3, share, drySuctionM3, liftMetre);
    }

    /** The same with a suction hose full of air that hangs down to the tank. */
    public LineParameters withDrySuction(double volumeM3, double metre) {
        return new LineParameters(
                hoseM3PerPascal, trappedM3PerPascal, standingLeakShare, purgeVolumeM3, airAtStart, volumeM3, metre);
    }

    /** Vacuum that the water column takes once the suction hose is full. */
    double liftPascal() {
        return WATER_KILOGRAM_PER_M3 * GRAVITY * liftMetre;
    }
}
