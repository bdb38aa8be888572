package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.ZERO_CELSIUS_KELVIN;

/** Faults of the unit's wiring, protector and pressure switch. Thread-safe. */
final class CircuitFaults {

    /** How far below its opening temperature a protector closes. */
    private static final double PROTECTOR_HYSTERESIS_KELVIN = 27;

    private CircuitFaults() {}

    static PumpParameters openCircuit(PumpParameters p) {
        return p.withMotor(p.motor().withContact(UnitCircuit.OPEN_OHMS, 0, 0))
                .withArrival(p.arrival().with(Finding.NO_CONTINUITY));
    }

    static PumpParameters intermittent(PumpParameters p, Severity s) {
        return p.withCircuit(p.circuit().withLoose(LooseContactParameters.opening(s.pick(0.2, 1, 5))));
    }

    static PumpParameters shortToCase(PumpParameters p, Severity s) {
        return p.withCircuit(p.circuit().withCaseLeak(s.pick(3, 0.6, 0.1)))
                .withArrival(p.arrival().with(Finding.SHORT_TO_CASE));
    }

    static PumpParameters thermalProtector(PumpParameters p, Severity s) {
        double opens = ZERO_CELSIUS_KELVIN + s.pick(100, 85, 65);
        return p.withCircuit(
                p.circuit().withProtector(new ProtectorParameters(opens, opens - PROTECTOR_HYSTERESIS_KELVIN)));
    }

    static PumpParameters pressureSwitchLow(PumpParameters p, Severity s) {
        return p.withCircuit(p.circuit().withPressureSwitch(lowSwitch(s)));
    }

    static PumpParameters pressureSwitchSticking(PumpParameters p, Severity s) {
        double opensLow = 25;
        double closesLow = 22;
        PressureSwitchParameters low = PressureSwitchParameters.fitted(opensLow, closesLow);
        return p.withCircuit(p.circuit().withPressureSwitch(low.sticking(s.pick(2, 20, Double.POSITIVE_INFINITY))));
    }

    static PumpParameters polarity(PumpParameters p) {
        return p.withArrival(p.arrival().with(Finding.LEADS_SWAPPED));
    }

    private static PressureSwitchParameters lowSwitch(Severity s) {
        return PressureSwitchParameters.fitted(s.pick(55, 45, 25), s.pick(48, 40, 22));
    }
}
