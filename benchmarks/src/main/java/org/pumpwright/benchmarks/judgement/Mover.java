package org.pumpwright.benchmarks.judgement;

import org.pumpwright.host.plant.HeadParameters;
import org.pumpwright.host.plant.MotorParameters;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.UsUnits;

/** One physical parameter that goes away from where it was, from 0 (not at all) on. Thread-safe. */
enum Mover {
    SMALLER_DISPLACEMENT(0.6),
    LARGER_DISPLACEMENT(0.5),
    SLIP(4.5),
    DEAD_CHAMBER(0.95),
    DRAG(2),
    LESS_FRICTION(2.5),
    RESISTANCE(1.5),
    CONTACT(0.8),
    WEAKER_MAGNETS(0.5),
    STRONGER_MAGNETS(0.4),
    EARLY_BYPASS(2.2);

    private final double most;

    Mover(double most) {
        this.most = most;
    }

    /** How far it can go. */
    double most() {
        return most;
    }

    /** The unit with its parameter moved: most of them by {@code exp} of the way. */
    PumpParameters move(PumpParameters p, double way) {
        MotorParameters m = p.motor();
        HeadParameters h = p.head();
        double up = StrictMath.exp(way);
        return switch (this) {
            case SMALLER_DISPLACEMENT -> p.withHead(displacing(h, 1 / up));
            case LARGER_DISPLACEMENT -> p.withHead(displacing(h, up));
            case SLIP ->
                p.withHead(h.withLeaks(h.slipM3PerSecondPascal() * up, h.backflowM3PerRadian() * (1 + way / 4)));
            case DEAD_CHAMBER -> p.withHead(h.withFilling(way, h.airFraction(), h.inletCeilingM3PerSecond()));
            case DRAG ->
                p.withMotor(m.withFriction(
                        m.runningFrictionNewtonMetre() * up, m.breakawayNewtonMetre() * StrictMath.sqrt(up)));
            case LESS_FRICTION ->
                p.withMotor(m.withFriction(
                        m.runningFrictionNewtonMetre() / up, m.breakawayNewtonMetre() / StrictMath.sqrt(up)));
            case RESISTANCE -> p.withMotor(m.withWinding(m.resistanceOhms() * up, m.torqueConstant()));
            case CONTACT -> p.withMotor(m.withContact(way, 0, 0));
            case WEAKER_MAGNETS -> p.withMotor(m.withWinding(m.resistanceOhms(), m.torqueConstant() / up));
            case STRONGER_MAGNETS -> p.withMotor(m.withWinding(m.resistanceOhms(), m.torqueConstant() * up));
            case EARLY_BYPASS ->
                p.withHead(h.withBypassOpening(Math.min(h.bypassOpensPascal(), 50 * UsUnits.PSI) / up));
        };
    }

    private static HeadParameters displacing(HeadParameters h, double factor) {
        return new HeadParameters(
                h.displacementM3PerRadian() * factor,
                h.complianceLossPerPascal(),
                h.slipM3PerSecondPascal(),
                h.backflowM3PerRadian(),
                h.torqueEfficiency(),
                h.bypassOpensPascal(),
                h.bypassM3PerSecondPascal(),
                h.chambers(),
                h.deadChambers(),
                h.airFraction(),
                h.inletCeilingM3PerSecond());
    }
}
