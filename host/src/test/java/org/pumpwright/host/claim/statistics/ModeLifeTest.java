package org.pumpwright.host.claim.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** One failure mode at a time. */
final class ModeLifeTest {
    private static final Optional<String> WORN = Optional.of("worn");
    private static final int UNITS = 400;

    /** A unit's life: how long it served, and of what it failed, if it did. */
    record Served(double hours, Optional<String> mode) {}

    /** 3 % of the pumps have an early-life fault, every one wears; each is watched between 40 and 320 hours. */
    static List<Served> pumps(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Served> served = new ArrayList<>();
        for (int i = 0; i < UNITS; i++) {
            double early = random.nextDouble() < 0.03 ? WeibullDraw.age(0.6, 40, random) : Double.MAX_VALUE;
            double wear = WeibullDraw.age(2.2, 520, random);
            double watched = 40 + 280 * random.nextDouble();
            served.add(new Served(
                    Math.min(watched, Math.min(early, wear)),
                    watched < Math.min(early, wear) ? Optional.empty() : Optional.of(early < wear ? "early" : "worn")));
        }
        return served;
    }

    static WeibullFit fit(List<Served> served, List<String> modes) {
        return WeibullFit.of(served.stream()
                .map(one ->
                        new Life(one.hours(), one.mode().filter(modes::contains).isPresent(), 1))
                .toList());
    }

    @Test
    void wearIsFoundWhenOtherModesAreSuspensionsAndHiddenWhenModesArePooled() {
        int hidden = 0;
        int found = 0;
        double sumApart = 0;
        double sumPooled = 0;
        int fleets = 60;
        for (int seed = 0; seed < fleets; seed++) {
            List<Served> served = pumps(seed);
            WeibullFit apart = fit(served, List.of("worn"));
            WeibullFit pooled = fit(served, List.of("worn", "early"));
            found += apart.betaInterval().holds(2.2) ? 1 : 0;
            hidden += pooled.betaInterval().high() < 2.2 ? 1 : 0;
            sumApart += apart.beta();
            sumPooled += pooled.beta();
        }

        assertThat(sumApart / fleets).isBetween(2.0, 2.4);
        assertThat(sumPooled / fleets).isBetween(1.0, 1.6);
        assertThat(found).isGreaterThan(52);
        assertThat(hidden).isGreaterThan(48);
    }

    /** Fourteen of the sound units, sent in at any time of their service and found without a fault. */
    @Test
    void unitsWithoutAFaultCountedAsFailuresHideTheWearToo() {
        double sum = 0;
        int fleets = 60;
        for (int seed = 0; seed < fleets; seed++) {
            SplittableRandom random = new SplittableRandom(1000 + seed);
            List<Life> lives = new ArrayList<>();
            int sentIn = 0;
            for (Served one : pumps(seed)) {
                boolean counted = one.mode().isEmpty() && sentIn++ < 14;
                lives.add(new Life(
                        counted ? one.hours() * (1 - random.nextDouble()) : one.hours(),
                        counted || one.mode().equals(WORN),
                        1));
            }
            sum += WeibullFit.of(lives).beta();
        }

        assertThat(sum / fleets).isBetween(1.4, 1.9);
    }

    @Test
    void fourFailuresAreListedAndNotFitted() {
        ModeLife life = ModeLife.of(
                WORN, List.of(Life.failed(9, 1), Life.failed(3, 2), Life.failed(5, 1), Life.suspended(12, 80)));

        assertThat(life)
                .isEqualTo(new ModeLife.Listed(
                        WORN,
                        List.of(3.0, 3.0, 5.0, 9.0),
                        80,
                        "too few: 4 failures of this mode, 5 are needed for a Weibull fit"));
    }

    @Test
    void fiveFailuresAreFitted() {
        ModeLife life = ModeLife.of(WORN, List.of(Life.failed(9, 2), Life.failed(3, 3), Life.suspended(12, 80)));

        assertThat(life).isInstanceOfSatisfying(ModeLife.Fitted.class, fitted -> {
            assertThat(fitted.failureMonths()).hasSize(5);
            assertThat(fitted.suspensions()).isEqualTo(80);
            assertThat(fitted.watchedMonths()).isEqualTo(12);
        });
    }

    @Test
    void failuresOfNoKnownModeAreNeverFitted() {
        ModeLife life = ModeLife.of(Optional.empty(), List.of(Life.failed(9, 7), Life.suspended(12, 80)));

        assertThat(life)
                .isInstanceOfSatisfying(
                        ModeLife.Listed.class,
                        listed -> assertThat(listed.reason()).startsWith("mode not determined"));
    }

    @Test
    void failuresAllAtTheGreatestAgeAreListed() {
        ModeLife life = ModeLife.of(WORN, List.of(Life.failed(9, 7), Life.suspended(2, 80)));

        assertThat(life)
                .isInstanceOfSatisfying(
                        ModeLife.Listed.class,
                        listed -> assertThat(listed.reason()).contains("no Weibull fit exists"));
    }
}
