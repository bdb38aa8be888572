package org.pumpwright.host.plant;

/**
 * What can open the unit's circuit by itself, and what leaks past the motor. Thread-safe.
 *
 * @param protector the motor's thermal protector
 * @param pressureSwitch the demand switch; never opens where none is fitted
 * @param loose a loose contact somewhere between pins and brushes
 * @param caseLeakOhms path past the motor through its case; infinite in good order
 */
public record CircuitParameters(
        ProtectorParameters protector,
        PressureSwitchParameters pressureSwitch,
        LooseContactParameters loose,
        double caseLeakOhms) {

    public CircuitParameters {
        Range.check("leak to the case", caseLeakOhms, 1e-3, Double.POSITIVE_INFINITY, "ohm");
    }

    static CircuitParameters healthy() {
        return new CircuitParameters(
                ProtectorParameters.healthy(),
                PressureSwitchParameters.notFitted(),
                LooseContactParameters.firm(),
                Double.POSITIVE_INFINITY);
    }

    /** The same with another thermal protector. */
    public CircuitParameters withProtector(ProtectorParameters other) {
        return new CircuitParameters(other, pressureSwitch, loose, caseLeakOhms);
    }

    /** The same with another pressure switch. */
    public CircuitParameters withPressureSwitch(PressureSwitchParameters other) {
        return new CircuitParameters(protector, other, loose, caseLeakOhms);
    }

    /** The same with another loose contact. */
    public CircuitParameters withLoose(LooseContactParameters other) {
        return new CircuitParameters(protector, pressureSwitch, other, caseLeakOhms);
    }

    /** The same with another leak to the case, in ohm. */
    public CircuitParameters withCaseLeak(double ohms) {
        return new CircuitParameters(protector, pressureSwitch, loose, ohms);
    }
}
