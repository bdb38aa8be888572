package org.pumpwright.host.plan;

import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Require;

/**
 * Holds one duty for a time, once or several times with rests between: a soak, ten starts, a moment against a closed
 * outlet, pulses that should not be there. Thread-safe.
 *
 * @param name of the step
 * @param reads what is read from it
 * @param duty the set point
 * @param seconds how long it is held
 * @param rampSeconds time from 0 to fully on on the way there and back
 * @param times how often
 * @param restSeconds at 0 between two times, and after the last
 * @param signOfLifeSeconds how often a person must say that somebody is there; 0 where that is not asked for
 * @param endsAboveAmps mean supply current of a time above which the run ends against the unit, A; infinite where nothing is
 *     asked of it. A proof that must hold before anything else is done
 */
public record Hold(
        String name,
        Reading reads,
        Duty duty,
        double seconds,
        double rampSeconds,
        int times,
        double restSeconds,
        double signOfLifeSeconds,
        double endsAboveAmps)
        implements Step {
    public Hold {
        Require.inRange("hold", seconds, 0.05, 7200, "s");
        Require.inRange("ramp", rampSeconds, 0.01, 60, "s");
        Require.inRange("times", times, 1, 1000, "");
        Require.inRange("rest", restSeconds, 0, 600, "s");
        Require.inRange("sign of life", signOfLifeSeconds, 0, 600, "s");
        if (!(endsAboveAmps > 0)) {
            throw new IllegalArgumentException(
                    "hold %s ends above %s A, it must be above 0 A".formatted(name, endsAboveAmps));
        }
    }

    /** A hold that proves nothing. */
    public Hold(
            String name,
            Reading reads,
            Duty duty,
            double seconds,
            double rampSeconds,
            int times,
            double restSeconds,
            double signOfLifeSeconds) {
        this(name, reads, duty, seconds, rampSeconds, times, restSeconds, signOfLifeSeconds, Double.POSITIVE_INFINITY);
    }

    @Override
    public double leastSeconds() {
        return times * (seconds + restSeconds);
    }
}
