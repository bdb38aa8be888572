package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Ramp;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.RampThreshold;
import org.pumpwright.host.trace.Stretch;

/**
 * Start and stop duty of a ramp. The water at the meter follows the unit by anything up to a second (common practice, no
 * source), in which the duty moves on: half of that is taken off on the way up and added on the way down, and the whole
 * counts as rectangular (JCGM 100, 4.3.7). Thread-safe.
 */
final class RampFindings {
    private static final double MOST_LAG_SECONDS = 1;

    /** Flow that is there so soon was there before. */
    private static final double RUNNING_DOWN_SECONDS = 1;

    private static final double STILL_SECONDS = 1;

    /** Flow that ends so late has not ended. */
    private static final double TO_THE_END_SECONDS = 0.3;

    private static final double PULSES_AWAY = 3;

    private final Ramp ramp;
    private final int meter;

    private RampFindings(FindingInput input, Ramp ramp) {
        this.ramp = ramp;
        meter = input.trace().channels().flowMeter().index();
    }

    static List<Finding> of(FindingInput input, Ramp ramp) {
        RampFindings ramping = new RampFindings(input, ramp);
        List<Finding> findings = new ArrayList<>();
        input.windows(ramp.name(), Stretch.Kind.RAMP_UP).forEach(up -> findings.add(ramping.start(up)));
        input.windows(ramp.name(), Stretch.Kind.RAMP_DOWN).forEach(down -> findings.add(ramping.stop(down)));
        return findings;
    }

    private Finding start(Window up) {
        Optional<RampThreshold> first = threshold(up);
        boolean atOnce =
                first.filter(start -> start.seconds() < RUNNING_DOWN_SECONDS).isPresent();
        Optional<RampThreshold> found = atOnce ? afterStandingStill(up) : first;
        if (found.isPresent()) {
            return Finding.figure(
                    ramp.name(), "start duty", behind(found.get(), -1), FindingUnit.SHARE, note(found.get(), "first"));
        }
        return atOnce
                ? Finding.word(
                        ramp.name(),
                        "start duty",
                        "not measured",
                        "water flowed already at " + ramp.from().print()
                                + ", and did not stand still before it flowed again")
                : Finding.word(
                        ramp.name(),
                        "start duty",
                        "no start",
                        "no lasting flow up to " + ramp.to().print());
    }

    private Optional<RampThreshold> threshold(Window up) {
        return RampThreshold.start(up.times(), up.duties(), up.edges(meter), up.lastEdges(meter));
    }

    /** What runs down from before is no start: the first one after a second without a pulse. */
    private Optional<RampThreshold> afterStandingStill(Window up) {
        double[] times = up.times();
        double[] lastEdges = up.lastEdges(meter);
        for (int i = 0; i < times.length - 1; i++) {
            if (times[i] - Math.max(0, lastEdges[i]) > STILL_SECONDS) {
                return threshold(up.after(times[i]));
            }
        }
        return Optional.empty();
    }

    private Finding stop(Window down) {
        Optional<RampThreshold> found =
                RampThreshold.stop(down.times(), down.duties(), down.edges(meter), down.lastEdges(meter));
        if (found.isEmpty()) {
            return Finding.word(ramp.name(), "stop duty", "not measured", "no flow on the way down");
        }
        double left = down.seconds() - found.get().seconds();
        if (left < Math.max(TO_THE_END_SECONDS, PULSES_AWAY * found.get().latencySeconds())) {
            return Finding.word(
                    ramp.name(),
                    "stop duty",
                    "no stop",
                    "still flowing at " + ramp.from().print());
        }
        return Finding.figure(
                ramp.name(), "stop duty", behind(found.get(), 1), FindingUnit.SHARE, note(found.get(), "last"));
    }

    private Uncertain behind(RampThreshold found, int direction) {
        double moved = ramp.percentPerSecond() / 100 * MOST_LAG_SECONDS;
        Uncertain read = found.duty();
        double duty = Math.max(0, Math.min(1, read.value() + direction * moved / 2));
        return new Uncertain(duty, read.standardUncertainty(), read.degreesOfFreedom())
                .with(moved / Math.sqrt(12), Double.POSITIVE_INFINITY);
    }

    private String note(RampThreshold found, String which) {
        return format(
                "at %.2f %% a second; %s pulses %.2f s apart", ramp.percentPerSecond(), which, found.latencySeconds());
    }
}
