package org.pumpwright.host.plant;

/**
 * What shows only within a turn or within a period of the drive. Assumed values from memory. Thread-safe.
 *
 * @param inductanceHenry of the armature
 * @param inertiaKilogramMetre2 of everything that turns
 * @param chamberInequality standard deviation of the chambers' shares of the displacement, relative
 * @param turnsSwing share by which shorted turns raise and lower the current twice a turn
 */
public record DynamicsParameters(
        double inductanceHenry, double inertiaKilogramMetre2, double chamberInequality, double turnsSwing) {

    public DynamicsParameters {
        Range.check("inductance", inductanceHenry, 1e-9, 1, "H");
        Range.check("inertia", inertiaKilogramMetre2, 1e-9, 1, "kg·m2");
        Range.check("chamber inequality", chamberInequality, 0, 0.3, "");
        Range.check("swing of shorted turns", turnsSwing, 0, 0.9, "");
    }

    static DynamicsParameters healthy() {
        return new DynamicsParameters(0.25e-3, 6e-5, 0.02, 0);
    }

    /** The same with shorted turns that swing the current by another share. */
    public DynamicsParameters withTurnsSwing(double share) {
        return new DynamicsParameters(inductanceHenry, inertiaKilogramMetre2, chamberInequality, share);
    }
}
