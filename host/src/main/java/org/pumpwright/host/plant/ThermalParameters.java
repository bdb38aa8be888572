package org.pumpwright.host.plant;

/**
 * Two lumps of heat, the winding inside the case: the usual two-body model of a small motor. Thread-safe.
 *
 * @param windingJoulePerKelvin heat capacity of the armature
 * @param windingToCaseKelvinPerWatt thermal resistance between them
 * @param caseJoulePerKelvin heat capacity of case and head
 * @param caseToAirKelvinPerWatt thermal resistance to the surroundings
 */
public record ThermalParameters(
        double windingJoulePerKelvin,
        double windingToCaseKelvinPerWatt,
        double caseJoulePerKelvin,
        double caseToAirKelvinPerWatt) {

    public ThermalParameters {
        Range.check("winding heat capacity", windingJoulePerKelvin, 1, 1e6, "J/K");
        Range.check("winding to case", windingToCaseKelvinPerWatt, 1e-3, 1e3, "K/W");
        Range.check("case heat capacity", caseJoulePerKelvin, 1, 1e7, "J/K");
        Range.check("case to air", caseToAirKelvinPerWatt, 1e-3, 1e3, "K/W");
    }

    /** Starting values from memory; no maker's specification. */
    static ThermalParameters healthy() {
        return new ThermalParameters(180, 0.55, 1900, 0.75);
    }
}
