package org.pumpwright.host.plant.hydraulic;

import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;
import static org.pumpwright.host.plant.UsUnits.PSI;

import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Severity;

/**
 * What can be wrong with a hydraulic pump or its stand, as a change of parameters. The sizes are assumed starting values
 * (docs/metrology/plant-other-units.md). Thread-safe.
 */
public enum HydraulicFault implements Fault {
    HEALTHY("healthy", "Unit and stand are in good order.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p;
        }
    },
    COIL_HOT("coil-hot", "The coil is hot from long running: healthy, but the same duty gives less current.", true) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withCoil(p.coil().withStartRise(s.pick(35, 70, 90)));
        }
    },
    LOW_SUPPLY("low-supply", "The stand's supply voltage is low.", true) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withStand(
                    p.stand().withFeed(s.pick(13, 12.4, 11.5), p.stand().feedOhms()));
        }
    },
    CORRODED_PLUG("corroded-plug", "The coil's plug has too much resistance.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withCoil(p.coil().withSeriesOhms(p.coil().seriesOhms() + s.pick(0.7, 2, 5)));
        }
    },
    COIL_SHORTED("coil-shorted", "Some turns of the coil are shorted: more current, less force for it.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            CoilParameters c = p.coil();
            return p.withCoil(c.withWinding(
                    c.ohmsAt20Celsius() * s.pick(0.85, 0.65, 0.5), c.forceShare() * s.pick(0.92, 0.8, 0.65)));
        }
    },
    COIL_OPEN("coil-open", "The coil or its plug is open and no current flows; alike at every severity.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withCoil(p.coil().withSeriesOhms(CoilParameters.OPEN_OHMS));
        }
    },
    SPOOL_STICKY(
            "spool-sticky", "The spool sticks and dither no longer frees it: silt, or a drive without dither.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withSpool(p.spool().withFriction(s.pick(0.10, 0.20, 0.40), NO_DITHER_HELPS, s.pick(0, 0, 0.04)));
        }
    },
    SPOOL_SEIZED("spool-seized", "The spool is stuck shut, override or not; alike at every severity.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withSpool(p.spool().withHeldBetween(0, 0));
        }
    },
    SPOOL_HELD_OPEN("spool-held-open", "The spool does not close: dirt, or the override left turned in.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withSpool(p.spool().withHeldBetween(s.pick(0.2, 0.5, 1), 1));
        }
    },
    SPRING_WEAK("spring-weak", "The valve's spring is weak or turned out: it opens too early and creeps.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            SpoolParameters v = p.spool();
            return p.withSpool(v.withDeadBand(v.deadBandAmps() * s.pick(0.8, 0.6, 0.3), s.pick(0, 0.01, 0.05)));
        }
    },
    DEAD_BAND_HIGH("dead-band-high", "The valve opens too late: its spring is turned in too far.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            SpoolParameters v = p.spool();
            return p.withSpool(v.withDeadBand(v.deadBandAmps() * s.pick(1.2, 1.6, 2.2), v.leastOpening()));
        }
    },
    COMPENSATOR_STUCK(
            "compensator-stuck",
            "The valve's pressure compensator sticks: flow moves with load and oil pressure.",
            false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withSpool(p.spool().withCompensatorStuck(s.pick(0.3, 0.6, 1)));
        }
    },
    MOTOR_WORN("motor-worn", "The oil motor is worn and lets oil past, more so under load.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withMotor(p.motor().withLeak(p.motor().leakM3PerSecondPascal() * s.pick(2.5, 6, 15)));
        }
    },
    COUPLING_SHEARED("coupling-sheared", "Coupling or key is sheared: the oil motor turns, the pump does not.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withMotor(p.motor().uncoupled());
        }
    },
    RELIEF_LOW("relief-low", "The relief valve opens too early: a ceiling in pressure.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withMotor(p.motor().withRelief(s.pick(305, 220, 120) * PSI));
        }
    },
    SLIP("slip", "Worn valves or diaphragms let product back.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            DisplacementHead h = displacement(p);
            return p.withHead(h.withLeaks(
                    h.slipM3PerSecondPascal() * s.pick(8, 20, 40), h.backflowM3PerRadian() * s.pick(1.2, 1.5, 2)));
        }
    },
    DEAD_CHAMBER("dead-chamber", "One chamber delivers little or nothing.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withHead(displacement(p).withDeadChambers(s.pick(0.3, 0.7, 1)));
        }
    },
    IMPELLER_WORN("impeller-worn", "Impeller or wear ring is worn: too little pressure at every speed.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withHead(impeller(p)
                    .withImpeller(s.pick(0.92, 0.80, 0.60), impeller(p).slipNewtonMetre()));
        }
    },
    IMPELLER_LOOSE("impeller-loose", "The impeller slips on its shaft above a torque.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withHead(impeller(p).withImpeller(impeller(p).pressureShare(), s.pick(3, 2, 1)));
        }
    },
    SUCTION_AIR("suction-air", "The suction side draws air.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withHead(p.head().withAir(s.pick(0.05, 0.15, 0.35)));
        }
    },
    SEAL_LEAK(
            "seal-leak",
            "Oil and product mix at a seal. No reading shows it: look for a sheen or milky oil, and quarantine.",
            false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p;
        }
    },
    PORTS_REVERSED(
            "ports-reversed", "Oil ports swapped or wrong adapter: no flow (mild) or uncontrolled flow.", false) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            double held = s.pick(0, 0.5, 1);
            return p.withSpool(p.spool().withHeldBetween(held, held));
        }
    },
    OIL_SHORT("oil-short", "The stand's or tractor's oil supply gives too little oil.", true) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withOil(p.oil().withAvailable(s.pick(10, 7, 4) * GALLON_PER_MINUTE));
        }
    },
    OIL_OFF("oil-off", "The oil supply is off; alike at every severity.", true) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withOil(p.oil().withAvailable(0));
        }
    },
    OIL_COLD("oil-cold", "The oil is cold and thick.", true) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            OilMotorParameters m = p.motor().withFriction(p.motor().frictionNewtonMetre() * s.pick(1.5, 2, 2.7));
            HydraulicParameters cold = p.withMotor(m.withLeak(m.leakM3PerSecondPascal() * s.pick(0.7, 0.4, 0.3)));
            SpoolParameters v = p.spool();
            return cold.withSpool(
                    v.withFriction(v.frictionShare() * s.pick(1, 1, 1.25), v.criticalDither(), v.stickSlipShare()));
        }
    },
    NOZZLE_PLUGGED("nozzle-plugged", "The stand's nozzle is partly plugged.", true) {
        @Override
        public HydraulicParameters applyTo(HydraulicParameters p, Severity s) {
            return p.withStand(p.stand().withNozzle(p.stand().nozzleM3PerSecondRootPascal() * s.pick(0.8, 0.6, 0.4)));
        }
    };

    private static final double NO_DITHER_HELPS = 1e9;

    private final String word;
    private final String sentence;
    private final boolean ofTheStand;

    HydraulicFault(String word, String sentence, boolean ofTheStand) {
        this.word = word;
        this.sentence = sentence;
        this.ofTheStand = ofTheStand;
    }

    /**
     * The parameters of the given unit and stand after this fault has come to it.
     *
     * @throws IllegalArgumentException when the unit's head cannot have this fault
     */
    public abstract HydraulicParameters applyTo(HydraulicParameters p, Severity s);

    /** Whether the unit's kind of head can have this fault. */
    public boolean fits(HydraulicParameters p) {
        return switch (this) {
            case SLIP, DEAD_CHAMBER -> p.head() instanceof DisplacementHead;
            case IMPELLER_WORN, IMPELLER_LOOSE -> p.head() instanceof CentrifugalHead;
            default -> true;
        };
    }

    @Override
    public String word() {
        return word;
    }

    @Override
    public String sentence() {
        return sentence;
    }

    @Override
    public boolean ofTheStand() {
        return ofTheStand;
    }

    private static DisplacementHead displacement(HydraulicParameters p) {
        if (p.head() instanceof DisplacementHead head) {
            return head;
        }
        throw new IllegalArgumentException("a centrifugal head has no chambers and no slip");
    }

    private static CentrifugalHead impeller(HydraulicParameters p) {
        if (p.head() instanceof CentrifugalHead head) {
            return head;
        }
        throw new IllegalArgumentException("a positive-displacement head has no impeller");
    }
}
