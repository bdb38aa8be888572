package org.pumpwright.host.plant.harness;

import static org.pumpwright.host.plant.harness.HarnessParameters.GROUND_STUD;
import static org.pumpwright.host.plant.harness.HarnessParameters.GROUND_WIRE;
import static org.pumpwright.host.plant.harness.HarnessParameters.SPLICE;
import static org.pumpwright.host.plant.harness.HarnessParameters.SUPPLY_WIRE;

import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Severity;

/**
 * What can be wrong with a harness, as a change of parameters. The sizes are assumed
 * (docs/metrology/plant-other-units.md). Thread-safe.
 */
public enum HarnessFault implements Fault {
    HEALTHY("healthy", "The harness is in good order.") {
        @Override
        public HarnessParameters applyTo(HarnessParameters p, Severity s) {
            return p;
        }
    },
    UNDERSIZED("undersized", "The wires are too thin for the current and the length.") {
        @Override
        public HarnessParameters applyTo(HarnessParameters p, Severity s) {
            int steps = (int) s.pick(1, 2, 4);
            return p.withElement(SUPPLY_WIRE, e -> thinner(e, steps)).withElement(GROUND_WIRE, e -> thinner(e, steps));
        }
    },
    CORRODED_SPLICE("corroded-splice", "The splice is corroded: its drop grows with the current, with an offset.") {
        @Override
        public HarnessParameters applyTo(HarnessParameters p, Severity s) {
            return p.withElement(
                    SPLICE,
                    e -> new Joint(
                            e.name(),
                            s.pick(0.015, 0.04, 0.12),
                            s.pick(0.001, 0.002, 0.004),
                            s.pick(0.05, 0.15, 0.4),
                            0.5));
        }
    },
    HIGH_GROUND("high-ground", "The ground stud has too much resistance and warms.") {
        @Override
        public HarnessParameters applyTo(HarnessParameters p, Severity s) {
            return p.withElement(
                    GROUND_STUD, e -> new Joint(e.name(), s.pick(0.04, 0.15, 0.5), s.pick(0, 0.002, 0.02), 0, 1));
        }
    },
    CHAFED_SHORT("chafed-short", "The supply wire is chafed and touches the frame now and then: the fuse blows.") {
        @Override
        public HarnessParameters applyTo(HarnessParameters p, Severity s) {
            return p.withEvents(s.pick(0.2, 1, 5), p.openingsPerMinute());
        }
    },
    BROKEN_STRANDS("broken-strands", "Only a few strands are left at one place: good ohms, bad under load.") {
        @Override
        public HarnessParameters applyTo(HarnessParameters p, Severity s) {
            return p.withElement(
                    SPLICE, e -> new Joint(e.name(), s.pick(0.008, 0.015, 0.020), s.pick(0.005, 0.010, 0.020), 0, 1));
        }
    },
    LOOSE_PIN("loose-pin", "A pin is loose and opens when the harness moves.") {
        @Override
        public HarnessParameters applyTo(HarnessParameters p, Severity s) {
            return p.withEvents(p.shortsPerMinute(), s.pick(0.2, 1, 5));
        }
    },
    LEAKAGE("leakage", "There is water in the pump's plug: current flows without a load.") {
        @Override
        public HarnessParameters applyTo(HarnessParameters p, Severity s) {
            return p.withLeak(s.pick(100e3, 10e3, 1e3));
        }
    },
    FUSE_HOLDER("fuse-holder", "The fuse holder has too much resistance.") {
        @Override
        public HarnessParameters applyTo(HarnessParameters p, Severity s) {
            return p.withElement(
                    HarnessParameters.FUSE_HOLDER, e -> Joint.clean(e.name(), s.pick(0.012, 0.030, 0.080)));
        }
    },
    WRONG_FUSE("wrong-fuse", "The fuse is rated too low and blows under the pump's current.") {
        @Override
        public HarnessParameters applyTo(HarnessParameters p, Severity s) {
            return p.withFuse(s.pick(10, 7.5, 5));
        }
    };

    private final String word;
    private final String sentence;

    HarnessFault(String word, String sentence) {
        this.word = word;
        this.sentence = sentence;
    }

    /** The parameters of the given harness after this fault has come to it. */
    public abstract HarnessParameters applyTo(HarnessParameters p, Severity s);

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

    private static Element thinner(Element element, int steps) {
        return element instanceof WireRun run
                ? new WireRun(run.name(), run.gauge().thinnerBy(steps), run.metres(), run.kelvin())
                : element;
    }
}
