package org.pumpwright.host.plant.meter;

import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.MeterParameters;
import org.pumpwright.host.plant.Severity;

/**
 * What can be wrong with a returned meter or the loop it hangs in, as a change of parameters. The sizes are assumed
 * (docs/metrology/plant-other-units.md). Thread-safe.
 */
public enum MeterFault implements Fault {
    HEALTHY("healthy", "Meter and loop are in good order.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            return b;
        }
    },
    MISSING_PULSES("missing-pulses", "Pulses get lost at random: weak signal, wide gap, low supply.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            return b.withUnit(b.unit().withSignal(new SignalDefects(s.pick(0.005, 0.03, 0.15), 0, 0, 0)));
        }
    },
    DOUBLE_PULSES("double-pulses", "Pulses arrive twice: bounce or interference.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            return b.withUnit(b.unit().withSignal(new SignalDefects(0, s.pick(0.005, 0.03, 0.15), 0, 0)));
        }
    },
    LOST_BLADE("lost-blade", "Blades or magnets of the rotor give no pulse.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            requireRotor(b);
            return b.withUnit(b.unit().withSignal(new SignalDefects(0, 0, (int) s.pick(1, 2, 3), 0)));
        }
    },
    WORN_BEARING("worn-bearing", "The rotor's bearing is worn: it starts late, lags and wobbles.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            MeterParameters m = requireRotor(b);
            return b.withUnit(b.unit()
                    .withSensor(rotor(
                            m, s.pick(2, 4, 10), s.pick(1.5, 3, 10), s.pick(1.5, 3, 5), s.pick(0.02, 0.035, 0.05))));
        }
    },
    SLOW_ROTOR("slow-rotor", "The rotor drags: dirt or crystals. It starts late and lags.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            MeterParameters m = requireRotor(b);
            return b.withUnit(
                    b.unit().withSensor(rotor(m, s.pick(3, 6, 12), s.pick(2, 4, 8), 1, m.edgeJitterRelative())));
        }
    },
    WRONG_K("wrong-k", "The meter has another K than its tag: wrong part or mixed-up units.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            return b.withUnit(b.unit().withRatio(s.pick(1.02, 1.10, 3.785)));
        }
    },
    BACKWARDS("backwards", "The meter is installed backwards.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            ReturnedMeter turned = b.unit().withRatio(s.pick(0.98, 0.95, 0.90));
            if (b.unit().sensor() instanceof FlowSensor.Rotor r) {
                return b.withUnit(turned.withSensor(
                        rotor(r.parameters(), 2, 1.5, 1, r.parameters().edgeJitterRelative())));
            }
            return b.withUnit(turned);
        }
    },
    CAVITATION("cavitation", "Too little back pressure: the meter reads high at the top of its range.", true) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            return b.withUnit(b.unit().withCavitation(s.pick(0.03, 0.07, 0.12)));
        }
    },
    INTERFERENCE("interference", "At zero flow the drive's switching gives pulses.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            return b.withUnit(b.unit().withSignal(new SignalDefects(0, 0, 0, s.pick(0.002, 0.02, 1))));
        }
    },
    NO_PULSES("no-pulses", "No pulse arrives: rotor stuck, sensor or wire dead; alike at every severity.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            return b.withUnit(b.unit().withSignal(new SignalDefects(1, 0, 0, 0)));
        }
    },
    DIRTY_ELECTRODES(
            "dirty-electrodes", "The electromagnetic meter's electrodes are dirty: noise and a drifted zero.", false) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            EmParameters em = requireElectromagnetic(b);
            double drift = s.pick(0.005, 0.01, 0.03) * b.unit().fullM3PerSecond();
            return b.withUnit(b.unit()
                    .withSensor(new FlowSensor.Electromagnetic(em.withZeroAndNoise(
                            em.zeroM3PerSecond() + drift, em.noiseM3PerSecond() * s.pick(2, 3, 6)))));
        }
    },
    GROUND_LOOP(
            "ground-loop", "The electromagnetic meter sees flow that is not there while the pump is driven.", true) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            requireElectromagnetic(b);
            return b.withUnit(
                    b.unit().withPumpOffset(s.pick(0.01, 0.03, 0.10) * b.unit().fullM3PerSecond()));
        }
    },
    LOOP_AIR("loop-air", "There is air in the stand's loop.", true) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            return b.withLoop(b.loop().withAir(s.pick(0.05, 0.15, 0.35)));
        }
    },
    LOOP_SURGE("loop-surge", "The stand's flow surges.", true) {
        @Override
        public MeterBench applyTo(MeterBench b, Severity s) {
            return b.withLoop(b.loop().withSurge(s.pick(0.03, 0.08, 0.20), 2));
        }
    };

    private static final double WIDEST_PATTERN = 0.08;

    private final String word;
    private final String sentence;
    private final boolean ofTheStand;

    MeterFault(String word, String sentence, boolean ofTheStand) {
        this.word = word;
        this.sentence = sentence;
        this.ofTheStand = ofTheStand;
    }

    /**
     * Meter and loop after this fault has come to them.
     *
     * @throws IllegalArgumentException when the meter's kind cannot have this fault
     */
    public abstract MeterBench applyTo(MeterBench b, Severity s);

    /** Whether the meter's kind can have this fault. */
    public boolean fits(ReturnedMeter unit) {
        return switch (this) {
            case LOST_BLADE, WORN_BEARING, SLOW_ROTOR -> unit.sensor() instanceof FlowSensor.Rotor;
            case DIRTY_ELECTRODES, GROUND_LOOP -> unit.sensor() instanceof FlowSensor.Electromagnetic;
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

    private static MeterParameters requireRotor(MeterBench b) {
        if (b.unit().sensor() instanceof FlowSensor.Rotor rotor) {
            return rotor.parameters();
        }
        throw new IllegalArgumentException("an electromagnetic meter has no rotor");
    }

    private static EmParameters requireElectromagnetic(MeterBench b) {
        if (b.unit().sensor() instanceof FlowSensor.Electromagnetic em) {
            return em.parameters();
        }
        throw new IllegalArgumentException("a rotor meter has no electrodes");
    }

    private static FlowSensor rotor(MeterParameters m, double lag, double start, double pattern, double jitter) {
        return new FlowSensor.Rotor(new MeterParameters(
                m.pulsesPerM3AtInfiniteFlow(),
                m.lagM3PerSecond() * lag,
                Math.max(m.startM3PerSecond() * start, m.lagM3PerSecond() * lag),
                m.blades(),
                Math.min(WIDEST_PATTERN, m.bladePatternRelative() * pattern),
                jitter,
                m.slugVolumeM3()));
    }
}
