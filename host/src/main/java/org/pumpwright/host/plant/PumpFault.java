package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;
import static org.pumpwright.host.plant.UsUnits.PSI;

/**
 * What can be wrong with the unit or with the stand, as a change of parameters. The sizes per severity are assumed
 * starting values from memory (docs/metrology/plant.md lists them). Thread-safe.
 */
public enum PumpFault {
    HEALTHY("healthy", "Unit and stand are in good order.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            return p;
        }
    },
    SLIP("slip", "Worn valves or diaphragms let liquid back, more so at high pressure.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            HeadParameters h = p.head();
            return p.withHead(h.withLeaks(
                    h.slipM3PerSecondPascal() * s.pick(8, 20, 40), h.backflowM3PerRadian() * s.pick(1.2, 1.5, 2)));
        }
    },
    DEAD_CHAMBER(
            "dead-chamber", "One chamber delivers little or nothing: debris in a valve or a torn diaphragm.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            HeadParameters h = p.head();
            double dead = s.pick(0.3, 0.7, 1);
            return p.withHead(h.withFilling(dead, h.airFraction(), h.inletCeilingM3PerSecond()));
        }
    },
    BYPASS_LOW("bypass-low", "The internal bypass opens at too low a pressure.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            return p.withHead(p.head().withBypassOpening(s.pick(50, 35, 20) * PSI));
        }
    },
    DRAG("drag", "Bearing or eccentric turns hard.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            MotorParameters m = p.motor();
            return p.withMotor(m.withFriction(
                    m.runningFrictionNewtonMetre() * s.pick(1.6, 3, 6), m.breakawayNewtonMetre() * s.pick(1.4, 2, 4)));
        }
    },
    WEAK_MAGNETS("weak-magnets", "The motor's magnets have lost strength.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            MotorParameters m = p.motor();
            return p.withMotor(m.withWinding(m.resistanceOhms(), m.torqueConstant() * s.pick(0.93, 0.85, 0.70)));
        }
    },
    BRUSH("brush", "Brushes or commutator make poor contact that changes with the shaft's position.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            return p.withMotor(p.motor().withContact(s.pick(0.08, 0.25, 0.8), s.pick(0.2, 0.4, 0.8), s.pick(0, 0, 4)));
        }
    },
    SHORTED_TURNS("shorted-turns", "Some armature turns are shorted.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            MotorParameters m = p.motor();
            MotorParameters shorted = m.withWinding(
                    m.resistanceOhms() * s.pick(0.95, 0.85, 0.7), m.torqueConstant() * s.pick(0.97, 0.9, 0.8));
            double running = m.runningFrictionNewtonMetre() * s.pick(1.2, 1.6, 2.5);
            return p.withMotor(shorted.withFriction(running, m.breakawayNewtonMetre()));
        }
    },
    SUCTION_AIR("suction-air", "The suction side draws air.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            HeadParameters h = p.head();
            double air = s.pick(0.05, 0.15, 0.35);
            return p.withHead(h.withFilling(h.deadChambers(), air, h.inletCeilingM3PerSecond()));
        }
    },
    STRAINER("strainer", "The inlet strainer is clogged and lets only so much through.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            HeadParameters h = p.head();
            double ceiling = s.pick(3.6, 2.8, 1.5) * GALLON_PER_MINUTE;
            return p.withHead(h.withFilling(h.deadChambers(), h.airFraction(), ceiling));
        }
    },
    SEIZED("seized", "The shaft does not turn; alike at every severity.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            MotorParameters m = p.motor();
            return p.withMotor(m.withFriction(m.runningFrictionNewtonMetre(), UNTURNABLE_NEWTON_METRE));
        }
    },
    OPEN_CIRCUIT(
            "open-circuit", "Winding, brush or lead is open and no current flows; alike at every severity.", false) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            return p.withMotor(p.motor().withContact(OPEN_OHMS, 0, 0));
        }
    },
    LEAD_RESISTANCE("lead-resistance", "The stand's supply lead or its plug has too much resistance.", true) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            StandParameters st = p.stand();
            return p.withStand(st.withFeed(st.openCircuitVolts(), st.leadOhms() + s.pick(0.04, 0.15, 0.5)));
        }
    },
    LOW_SUPPLY("low-supply", "The stand's supply voltage is low.", true) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            return p.withStand(p.stand().withFeed(s.pick(13, 12, 11), p.stand().leadOhms()));
        }
    },
    NOZZLE_PLUGGED("nozzle-plugged", "The stand's nozzle is partly plugged.", true) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            return p.withStand(scaledNozzle(p.stand(), s.pick(0.8, 0.6, 0.4)));
        }
    },
    NOZZLE_WORN("nozzle-worn", "The stand's nozzle is worn open.", true) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            return p.withStand(scaledNozzle(p.stand(), s.pick(1.2, 1.4, 1.6)));
        }
    },
    RECIRCULATION_OPEN("recirculation-open", "The stand's recirculation valve was left open.", true) {
        @Override
        public PumpParameters applyTo(PumpParameters p, Severity s) {
            double nozzle = p.stand().nozzleM3PerSecondRootPascal();
            return p.withStand(p.stand().withOutlet(nozzle, nozzle * s.pick(0.25, 0.5, 1)));
        }
    };

    /** More than any motor of this class could ever overcome. */
    private static final double UNTURNABLE_NEWTON_METRE = 1000;

    /** Large enough that the current is nil to any ammeter, finite so that no arithmetic breaks. */
    private static final double OPEN_OHMS = 1e9;

    private final String word;
    private final String sentence;
    private final boolean ofTheStand;

    PumpFault(String word, String sentence, boolean ofTheStand) {
        this.word = word;
        this.sentence = sentence;
        this.ofTheStand = ofTheStand;
    }

    /** The parameters of the given unit and stand after this fault has come to it. */
    public abstract PumpParameters applyTo(PumpParameters p, Severity s);

    /** The shop's word, usable on a command line: lower case with hyphens. */
    public String word() {
        return word;
    }

    /** One plain sentence that says what is wrong. */
    public String sentence() {
        return sentence;
    }

    /** Whether the stand is at fault rather than the unit. */
    public boolean ofTheStand() {
        return ofTheStand;
    }

    private static StandParameters scaledNozzle(StandParameters stand, double factor) {
        return stand.withOutlet(
                stand.nozzleM3PerSecondRootPascal() * factor, stand.recirculationM3PerSecondRootPascal());
    }
}
