package org.pumpwright.host.plant.driver;

import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Severity;

/**
 * What can be wrong with a driver module, as a change of parameters; where the three severities are alike the sentence
 * names no degree. The sizes are assumed (docs/metrology/plant-other-units.md). Thread-safe.
 */
public enum DriverFault implements Fault {
    HEALTHY("healthy", "The module is in good order.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p;
        }
    },
    STUCK_ON("stuck-on", "The switch is shorted: full current whatever the command.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withOutput(p.output().withSwitch(true, false));
        }
    },
    OUTPUT_OPEN("output-open", "Nothing leaves the output whatever the command.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withOutput(p.output().withSwitch(false, true));
        }
    },
    HIGH_RESISTANCE("high-resistance", "The switch or its connectors have too much resistance and grow hot.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withOutput(p.output().withOnOhms(s.pick(0.030, 0.060, 0.150)));
        }
    },
    FREEWHEEL_OPEN(
            "freewheel-open",
            "The way back for an inductive load's current is open: its current collapses, spikes appear.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withOutput(p.output().withoutFreewheel());
        }
    },
    WRONG_FREQUENCY("wrong-frequency", "The module switches at a wrong frequency.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withLogic(p.logic().withFrequency(p.logic().frequencyHertz() * s.pick(1.1, 2, 0.1)));
        }
    },
    DUTY_OFF("duty-off", "The output duty is not the command: offset and bend.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withLogic(p.logic().withDuty(s.pick(0.02, 0.05, 0.10), s.pick(0, 0.03, 0.08)));
        }
    },
    LIMIT_LOW("limit-low", "The current limit is too low; when severe it also folds back after two minutes.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withLimit(s.pick(16, 12, 8), s.pick(1, 1, 0.6));
        }
    },
    SENSE_OFFSET("sense-offset", "The current the module reports is wrong.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withSenseOffset(s.pick(0.05, 0.2, 0.5));
        }
    },
    BROWN_OUT(
            "brown-out",
            "The module starts hard and resets when the supply sags under that; a stiffer supply cures it.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withLogic(p.logic().withBrownOut(s.pick(12.6, 12.75, 12.9), 0.05));
        }
    },
    GROUND_CORRODED(
            "ground-corroded", "The ground pin has too much resistance: everything low, the case above ground.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withOutput(p.output().withGroundOhms(s.pick(0.04, 0.15, 0.5)));
        }
    },
    COMMAND_DEAD("command-dead", "The module does not hear its command.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withLogic(p.logic().deaf());
        }
    },
    WATER_INGRESS("water-ingress", "Water inside: it draws and leaks current at rest, and the output comes and goes.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withQuiescent(s.pick(0.12, 0.3, 0.8))
                    .withOutput(p.output().withLeakage(s.pick(0.02, 0.1, 0.4)))
                    .withOpenings(s.pick(1, 3, 10));
        }
    },
    REVERSED_SUPPLY(
            "reversed-supply",
            "It was connected the wrong way round: a blown trace (mild, moderate) or a shorted input (severe).") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withQuiescent(s.pick(0, 0, 15)).withOutput(p.output().withSwitch(false, true));
        }
    },
    CRACK("crack", "A cracked joint opens now and then, more often when warm.") {
        @Override
        public DriverParameters applyTo(DriverParameters p, Severity s) {
            return p.withOpenings(s.pick(0.5, 2, 5));
        }
    };

    private final String word;
    private final String sentence;

    DriverFault(String word, String sentence) {
        this.word = word;
        this.sentence = sentence;
    }

    /** The parameters of the given module after this fault has come to it. */
    public abstract DriverParameters applyTo(DriverParameters p, Severity s);

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
        return false;
    }
}
