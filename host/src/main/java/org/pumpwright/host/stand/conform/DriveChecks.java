package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.Dither;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.Sample;

/** Drives: set points, ramps and dither, on drive 0 at a tenth at most. Thread-safe. */
final class DriveChecks {
    private static final int SLOW_RAMP = 20;
    private static final int FASTEST_RAMP = 65_535;
    /** One step of an eight-bit PWM, which is as fine as a board must be. */
    private static final int STEP = 257;

    private static final Duration PATIENCE = Duration.ofMillis(1500);

    private DriveChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("a drive follows its set point no faster than the ramp asked for", "4.3", DriveChecks::ramp),
                new Check("a drive is never faster than the board's own ramp limit", "4.3", DriveChecks::ownLimit),
                new Check("dither is taken while armed", "4.17", DriveChecks::dither));
    }

    private static String ramp(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        trial.stream(10);
        trial.sample();
        double up = follow(trial, Trial.LOW_DUTY, SLOW_RAMP);
        double down = follow(trial, 0, SLOW_RAMP);
        return String.format(
                Locale.ROOT,
                "0 to 10 %% in %.0f ms and back in %.0f ms; %.0f ms asked for",
                up,
                down,
                (double) Trial.LOW_DUTY / SLOW_RAMP);
    }

    private static double follow(Trial trial, int target, int ramp) throws Broken, NotPossible, StandException {
        Sample before = trial.sample();
        int mark = trial.talk().mark();
        trial.drive(target, ramp);
        Sample arrived = trial.sample(mark, sample -> Math.abs(sample.applied().get(0) - target) < STEP, PATIENCE)
                .orElseThrow(() -> new Broken(
                        "drive 0 did not come to %d/65536 within %d ms".formatted(target, PATIENCE.toMillis())));
        Sample last = before;
        for (Sample sample : trial.all(Sample.class, mark)) {
            double millis = trial.millis(last.time(), sample.time());
            long moved = Math.abs(sample.applied().get(0) - last.applied().get(0));
            trial.demand(
                    moved <= ramp * (millis + 2) + STEP,
                    "drive 0 moved by %d/65536 in %.0f ms; the ramp asked for allows %.0f",
                    moved,
                    millis,
                    ramp * millis);
            last = sample;
        }
        double took = trial.millis(before.time(), arrived.time());
        double asked = Math.abs(target - before.applied().get(0)) / (double) ramp;
        trial.demand(
                took >= asked * 0.9 - 20 && took <= asked + 200,
                "drive 0 took %.0f ms; the ramp asked for takes %.0f ms",
                took,
                asked);
        return took;
    }

    private static String ownLimit(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        trial.stream(10);
        trial.sample();
        double own = rise(trial, 0);
        double fastest = rise(trial, FASTEST_RAMP);
        trial.demand(
                fastest >= own * 0.6 - 20,
                "0 to 10 %% took %.0f ms with ramp 0 but %.0f ms with ramp 65535",
                own,
                fastest);
        return String.format(Locale.ROOT, "0 to 10 %%: %.0f ms with ramp 0, %.0f ms with ramp 65535", own, fastest);
    }

    private static double rise(Trial trial, int ramp) throws Broken, NotPossible, StandException {
        trial.drive(0, 0);
        trial.sample(trial.talk().mark(), sample -> sample.applied().get(0) == 0, PATIENCE);
        Sample before = trial.sample();
        int mark = trial.talk().mark();
        trial.drive(Trial.LOW_DUTY, ramp);
        Sample arrived = trial.sample(mark, sample -> sample.applied().get(0) > Trial.LOW_DUTY - STEP, PATIENCE)
                .orElseThrow(() -> new Broken("drive 0 did not come to 10 % with ramp " + ramp));
        return trial.millis(before.time(), arrived.time());
    }

    private static String dither(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        trial.drive(Trial.LOW_DUTY, 0);
        trial.stream(10);
        trial.talk().listen(Duration.ofMillis(200));
        trial.acknowledged(new Dither(0, Trial.LOW_DUTY / 8, 100));
        List<Sample> samples = trial.samples(Duration.ofMillis(200));
        for (Sample sample : samples) {
            trial.demand(
                    Math.abs(sample.applied().get(0) - Trial.LOW_DUTY) < STEP,
                    "the duty applied is told without its dither; %s",
                    Say.of(sample));
        }
        trial.acknowledged(new Dither(0, 0, Dither.LOWEST_HZ));
        trial.calm();
        trial.refused(Command.of(new Dither(0, 0, Dither.LOWEST_HZ)), RefuseReason.NOT_ARMED, 0);
        return "acknowledged, told duty unchanged, off again, refused when safe";
    }
}
