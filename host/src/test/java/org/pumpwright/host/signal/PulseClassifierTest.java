package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PulseClassifierTest {
    private static final int TRAINS = 120;

    @ParameterizedTest
    @EnumSource(PulseFault.class)
    void nineteenOfTwentyTrainsAreNamedRight(PulseFault fault) {
        SplittableRandom random = new SplittableRandom(fault.name().hashCode());
        int right = 0;
        for (int i = 0; i < TRAINS; i++) {
            FaultyTrains.Drawn train = FaultyTrains.draw(fault, random);
            PulseDiagnosis said = PulseClassifier.of(train.edgeSeconds(), OptionalDouble.of(train.driveHertz()));
            right += said.names(fault) ? 1 : 0;
        }
        assertThat(right).isGreaterThanOrEqualTo(TRAINS * 95 / 100);
    }

    @ParameterizedTest
    @EnumSource(PulseFault.class)
    void theSumsOfAWindowNameAsMany(PulseFault fault) {
        SplittableRandom random = new SplittableRandom(99L + fault.name().hashCode());
        int right = 0;
        for (int i = 0; i < TRAINS; i++) {
            FaultyTrains.Drawn train = FaultyTrains.draw(fault, random);
            PulseDiagnosis said =
                    PulseClassifier.ofWindow(IntervalStatistics.of(sums(train)), OptionalDouble.of(train.driveHertz()));
            right += said.names(fault) ? 1 : 0;
        }
        assertThat(right).isGreaterThanOrEqualTo(TRAINS * 95 / 100);
    }

    /** What a board adds up over the window, in ticks of 0.5 us, against the mean of the window before. */
    private static IntervalStatistics.Sums sums(FaultyTrains.Drawn train) {
        double[] ticks =
                Arrays.stream(train.intervals()).map(t -> Math.rint(t * 2e6)).toArray();
        double reference = Arrays.stream(ticks).average().orElseThrow();
        double lagged = 0;
        for (int i = 1; i < ticks.length; i++) {
            lagged += ticks[i] * ticks[i - 1];
        }
        return new IntervalStatistics.Sums(
                ticks.length,
                Arrays.stream(ticks).sum(),
                Arrays.stream(ticks).map(t -> t * t).sum(),
                lagged,
                ticks.length - 1,
                Arrays.stream(ticks).max().orElseThrow(),
                (int) Arrays.stream(ticks).filter(t -> t > 1.6 * reference).count(),
                (int) Arrays.stream(ticks).filter(t -> t < 0.5 * reference).count(),
                0.5e-6);
    }

    @ParameterizedTest
    @EnumSource(PulseFault.class)
    void aBoardsSumsTellWhatTheIntervalsTell(PulseFault fault) {
        FaultyTrains.Drawn train = FaultyTrains.draw(fault, new SplittableRandom(5));
        IntervalStatistics direct = IntervalStatistics.of(train.intervals());
        IntervalStatistics summed = IntervalStatistics.of(sums(train));
        assertThat(summed.meanSeconds() / direct.meanSeconds()).isCloseTo(1, within(1e-3));
        assertThat(summed.variation()).isCloseTo(direct.variation(), within(1e-3));
        double doubt = Math.sqrt(2) / (direct.intervals() * direct.variation());
        assertThat(summed.lagOne()).isCloseTo(direct.lagOne(), within(3 * doubt));
        assertThat(summed.mostOverMean()).isCloseTo(direct.mostOverMean(), within(1e-3));
    }

    /** When a train begins and how fast its clock runs says nothing of its health. */
    @Property(seed = "20260204", tries = 60)
    void aDiagnosisIsFreeOfStartAndClock(
            @ForAll @DoubleRange(min = 0, max = 900) double shift,
            @ForAll @DoubleRange(min = 0.5, max = 2) double clock) {
        FaultyTrains.Drawn train = FaultyTrains.draw(PulseFault.MISSING_PULSES, new SplittableRandom(6));
        double[] edges = train.edgeSeconds();
        double[] moved = Arrays.stream(edges).map(t -> t * clock + shift).toArray();
        assertThat(PulseClassifier.of(moved, OptionalDouble.empty()))
                .isEqualTo(PulseClassifier.of(edges, OptionalDouble.empty()));
    }

    @Test
    void theEvidenceOfALostBladeNamesTheRotor() {
        double[] seconds = PulseTrains.even(60, 600, i -> 0);
        double[] kept = IntStream.range(0, 600)
                .filter(i -> i % 6 != 2)
                .mapToDouble(i -> seconds[i])
                .toArray();
        assertThat(PulseClassifier.of(kept, OptionalDouble.empty()))
                .isEqualTo(new PulseDiagnosis(
                        Set.of(PulseFault.BLADE_LOST),
                        "every 5. interval is long: one of 6 pulses a revolution is lost"));
    }

    @Test
    void aShortTrainIsNotJudged() {
        PulseDiagnosis said = PulseClassifier.of(PulseTrains.even(60, 100, i -> 0), OptionalDouble.empty());
        assertThat(said.candidates()).isEmpty();
        assertThat(said.evidence()).isEqualTo("99 intervals, at least 100 are needed to judge");
    }

    @Test
    void threeCandidatesAreNoTie() {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new PulseDiagnosis(Set.of(PulseFault.HEALTHY, PulseFault.SURGE, PulseFault.AIR_SLUGS), ""))
                .withMessage("a diagnosis names 3 candidates, at most 2 can tie");
    }

    @Test
    void everyFaultHasWords() {
        assertThat(Arrays.stream(PulseFault.values()).map(PulseFault::words)).doesNotHaveDuplicates();
    }
}
