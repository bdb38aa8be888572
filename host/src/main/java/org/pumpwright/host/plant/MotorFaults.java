package org.pumpwright.host.plant;

/** Faults of the motor and what it turns. Thread-safe. */
final class MotorFaults {

    /** More than any motor of this class could ever overcome. */
    private static final double UNTURNABLE_NEWTON_METRE = 1000;

    private MotorFaults() {}

    static PumpParameters drag(PumpParameters p, Severity s) {
        MotorParameters m = p.motor();
        return p.withMotor(m.withFriction(
                m.runningFrictionNewtonMetre() * s.pick(1.6, 3, 6), m.breakawayNewtonMetre() * s.pick(1.4, 2, 4)));
    }

    static PumpParameters weakMagnets(PumpParameters p, Severity s) {
        MotorParameters m = p.motor();
        return p.withMotor(m.withWinding(m.resistanceOhms(), m.torqueConstant() * s.pick(0.93, 0.85, 0.70)));
    }

    static PumpParameters brush(PumpParameters p, Severity s) {
        return p.withMotor(p.motor().withContact(s.pick(0.08, 0.25, 0.8), s.pick(0.2, 0.4, 0.8), s.pick(0, 0, 4)));
    }

    static PumpParameters shortedTurns(PumpParameters p, Severity s) {
        MotorParameters m = p.motor();
        MotorParameters shorted = m.withWinding(
                m.resistanceOhms() * s.pick(0.95, 0.85, 0.7), m.torqueConstant() * s.pick(0.97, 0.9, 0.8));
        double running = m.runningFrictionNewtonMetre() * s.pick(1.2, 1.6, 2.5);
        return p.withMotor(shorted.withFriction(running, m.breakawayNewtonMetre()))
                .withDynamics(p.dynamics().withTurnsSwing(s.pick(0.05, 0.15, 0.3)));
    }

    static PumpParameters seized(PumpParameters p) {
        MotorParameters m = p.motor();
        return p.withMotor(m.withFriction(m.runningFrictionNewtonMetre(), UNTURNABLE_NEWTON_METRE))
                .withArrival(p.arrival().with(Finding.TURNS_HARD));
    }

    static PumpParameters warm(PumpParameters p, Severity s) {
        return p.withArrival(p.arrival().warmer(s.pick(20, 40, 60)).with(Finding.WARM));
    }
}
