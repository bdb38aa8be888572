package org.pumpwright.host.claim.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** How often the intervals hold what they are to hold, with lives drawn from a known distribution. */
final class IntervalCoverageTest {
    private static final double BETA = 2.14;
    private static final double ETA = 570;
    private static final double B10 = ETA * Math.pow(-Math.log(0.9), 1 / BETA);

    /** How many of so many draws held the true value. */
    record Held(int draws, int beta, int eta, int b10, double failures) {}

    /** Units watched up to the age by which the part {@code failing} has failed; draws with fewer than five failures are passed over. */
    static Held hold(int units, double failing, int draws, long seed) {
        double watched = failing < 1 ? ETA * Math.pow(-Math.log(1 - failing), 1 / BETA) : Double.MAX_VALUE;
        SplittableRandom seeds = new SplittableRandom(seed);
        int[] held = new int[3];
        long failures = 0;
        int done = 0;
        while (done < draws) {
            List<Life> lives = WeibullDraw.censored(BETA, ETA, units, watched, seeds.nextLong());
            long failed = lives.stream().filter(Life::failed).count();
            if (failed >= ModeLife.FEWEST_FAILURES && WeibullFit.exists(lives)) {
                WeibullFit fit = WeibullFit.of(lives);
                held[0] += fit.betaInterval().holds(BETA) ? 1 : 0;
                held[1] += fit.etaInterval().holds(ETA) ? 1 : 0;
                held[2] += fit.b10Interval().holds(B10) ? 1 : 0;
                failures += failed;
                done++;
            }
        }
        return new Held(draws, held[0], held[1], held[2], (double) failures / draws);
    }

    @Test
    void intervalsOfOneHundredUnitsHoldTheTruthAboutNineteenTimesInTwenty() {
        Held held = hold(100, 0.5, 400, 31);

        for (int each : new int[] {held.beta(), held.eta(), held.b10()}) {
            assertThat(each).isBetween(366, 394);
        }
    }

    @Test
    void intervalsOfTenUnitsThatAllFailedHoldItSomewhatLessOften() {
        Held held = hold(10, 1, 400, 32);

        for (int each : new int[] {held.beta(), held.eta(), held.b10()}) {
            assertThat(each).isBetween(352, 392);
        }
    }

    /** The table of docs/metrology/returns.md: first argument the number of draws. */
    public static void main(String[] arguments) {
        int draws = Integer.parseInt(arguments[0]);
        System.out.println("units failing failures beta eta b10, % held");
        double[][] cases = {
            {200, 0.02},
            {200, 0.03},
            {200, 0.04},
            {10, 0.7},
            {10, 1},
            {20, 0.7},
            {20, 1},
            {50, 0.3},
            {50, 0.7},
            {50, 1},
            {100, 0.3},
            {100, 0.7},
            {100, 1},
            {1000, 0.05}
        };
        for (double[] one : cases) {
            Held held = hold((int) one[0], one[1], draws, 33);
            System.out.printf(
                    Locale.ROOT,
                    "%.0f %.2f %.1f %.1f %.1f %.1f%n",
                    one[0],
                    one[1],
                    held.failures(),
                    100.0 * held.beta() / draws,
                    100.0 * held.eta() / draws,
                    100.0 * held.b10() / draws);
        }
    }
}
