package org.pumpwright.host.plant.harness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.plant.Severity;

class HarnessStateTest {

    private static final HarnessParameters HEALTHY = HarnessParameters.healthy();
    private static final List<String> POINTS = HEALTHY.points();

    @Test
    void theProbeReachesEveryJointFromBatteryToPumpAndBack() {
        assertThat(POINTS)
                .containsExactly(
                        "battery plus",
                        "after battery terminal",
                        "after fuse holder",
                        "after supply wire",
                        "after splice",
                        "after pump plug, plus",
                        "pump minus pin",
                        "after pump plug, minus",
                        "after ground wire",
                        "after ground stud");
    }

    /** Limits: 3 % of 13.6 V in all, 50 mV a connector, 0.2 V on the ground side, 100 mV for the fuse and its holder. */
    @Test
    void thirtyHealthyHarnessesKeepTheLimitsAtThePumpsThirteenAmps() {
        assertThat(new HarnessPopulation(2026).units(30)).allSatisfy(unit -> {
            HarnessState state = HarnessState.of(unit, 13);
            assertThat(total(state)).isLessThan(0.408);
            assertThat(ground(state)).isLessThan(0.2);
            assertThat(drop(state, "after battery terminal", "after fuse holder"))
                    .isLessThan(0.1);
            assertThat(drop(state, "after splice", "after pump plug, plus")).isLessThan(0.05);
        });
    }

    @Property(seed = "20260501", tries = 100)
    void theDropsOfTheSegmentsAddUpToWhatTheLoadMisses(@ForAll @DoubleRange(min = 0.5, max = 15) double nominal) {
        for (HarnessFault fault : HarnessFault.values()) {
            HarnessParameters p = fault.applyTo(HEALTHY, Severity.SEVERE);
            HarnessState state = HarnessState.of(p, nominal);
            double atLoad = volts(state, "after pump plug, plus") - volts(state, "pump minus pin");

            double leak = atLoad / p.leakOhms();
            assertThat(state.amps()).isCloseTo(atLoad * nominal / 13.6 + leak, within(1e-8));
            assertThat(volts(state, "after ground stud")).isCloseTo(0, within(1e-8));
        }
    }

    @Test
    void theSlopeOfVoltsOverAmpsIsTheResistanceAndACleanSegmentHasNoOffset() {
        double[] line = line(HEALTHY, "after fuse holder", "after supply wire");

        assertThat(line[0]).isCloseTo(24 * 0.3951 / 1000, within(1e-9));
        assertThat(line[1]).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource
    void aCorrodedSpliceHasAnOffsetAndAUpwardCurve(Severity severity) {
        HarnessParameters faulty = HarnessFault.CORRODED_SPLICE.applyTo(HEALTHY, severity);
        double at2 = spliceOhms(faulty, 2);
        double at8 = spliceOhms(faulty, 8);

        // The oxide's share falls with the current; warming makes the rest rise: no straight line through zero.
        assertThat(at2).isGreaterThan(at8);
        assertThat(drop(HarnessState.of(faulty, 10), "after supply wire", "after splice"))
                .isGreaterThan(0.05);
        assertThat(line(faulty, "after supply wire", "after splice")[1]).isNotCloseTo(0, within(0.01));
    }

    @ParameterizedTest
    @EnumSource
    void brokenStrandsReadGoodByOhmmeterAndBadUnderLoad(Severity severity) {
        HarnessParameters faulty = HarnessFault.BROKEN_STRANDS.applyTo(HEALTHY, severity);
        Element splice = faulty.supplySide().get(3);

        assertThat(splice.smallCurrentOhms()).isLessThan(0.1);
        assertThat(spliceOhms(faulty, 15)).isGreaterThan(1.8 * splice.smallCurrentOhms());
        assertThat(drop(HarnessState.of(faulty, 15), "after supply wire", "after splice"))
                .isGreaterThan(0.1);
    }

    @ParameterizedTest
    @EnumSource
    void aHighGroundLiftsThePumpsMinusPin(Severity severity) {
        HarnessState state = HarnessState.of(HarnessFault.HIGH_GROUND.applyTo(HEALTHY, severity), 10);

        assertThat(ground(state)).isGreaterThan(0.2);
        assertThat(volts(state, "pump minus pin")).isCloseTo(ground(state), within(1e-8));
    }

    @Test
    void aSevereGroundMoreThanDoublesItsOhmsUnderLoad() {
        HarnessParameters faulty = HarnessFault.HIGH_GROUND.applyTo(HEALTHY, Severity.SEVERE);
        HarnessState state = HarnessState.of(faulty, 15);

        assertThat(drop(state, "after ground wire", "after ground stud") / state.amps())
                .isGreaterThan(2 * 0.5);
    }

    @ParameterizedTest
    @EnumSource
    void aThinWireDropsMoreThanItMayAndMoreSoWhenThinner(Severity severity) {
        HarnessState state = HarnessState.of(HarnessFault.UNDERSIZED.applyTo(HEALTHY, severity), 13);

        assertThat(total(state)).isGreaterThan(0.408);
    }

    @ParameterizedTest
    @EnumSource
    void aWetPlugDrawsCurrentWithoutALoad(Severity severity) {
        HarnessState state = HarnessState.of(HarnessFault.LEAKAGE.applyTo(HEALTHY, severity), 0);

        assertThat(state.amps()).isCloseTo(13.8 / severity.pick(100e3, 10e3, 1e3), within(1e-6));
        assertThat(HarnessState.of(HEALTHY, 0).amps()).isLessThan(1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 15})
    void aHarnessWithAFaultyFuseHolderDropsThere(double nominal) {
        HarnessState state = HarnessState.of(HarnessFault.FUSE_HOLDER.applyTo(HEALTHY, Severity.MODERATE), nominal);

        assertThat(drop(state, "after battery terminal", "after fuse holder"))
                .isCloseTo(0.030 * state.amps(), within(1e-8));
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "HEALTHY")
    void everyFaultChangesTheHarness(HarnessFault fault) {
        for (Severity severity : Severity.values()) {
            assertThat(fault.applyTo(HEALTHY, severity)).isNotEqualTo(HEALTHY);
        }
    }

    @Test
    void theWordsAreDistinctAndAUnitIsTheSameAgain() {
        List<String> words =
                Arrays.stream(HarnessFault.values()).map(HarnessFault::word).toList();

        assertThat(new HashSet<>(words)).hasSameSizeAs(words);
        assertThat(new HarnessPopulation(5).unit(3))
                .isEqualTo(new HarnessPopulation(5).units(9).get(3));
        assertThatThrownBy(() -> HarnessState.of(HEALTHY, -1))
                .hasMessage("load -1.00000 A is outside 0.00000 to 100.000 A");
    }

    private static double spliceOhms(HarnessParameters p, double nominal) {
        HarnessState state = HarnessState.of(p, nominal);
        return drop(state, "after supply wire", "after splice") / state.amps();
    }

    /** Slope and offset of the drop over the current at loads of 5, 10 and 15 A. */
    private static double[] line(HarnessParameters p, String from, String to) {
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (double nominal : new double[] {5, 10, 15}) {
            HarnessState state = HarnessState.of(p, nominal);
            double x = state.amps();
            double y = drop(state, from, to);
            sx += x;
            sy += y;
            sxx += x * x;
            sxy += x * y;
        }
        double slope = (3 * sxy - sx * sy) / (3 * sxx - sx * sx);
        return new double[] {slope, (sy - slope * sx) / 3};
    }

    private static double total(HarnessState state) {
        return drop(state, "battery plus", "after pump plug, plus") + ground(state);
    }

    private static double ground(HarnessState state) {
        return volts(state, "pump minus pin") - volts(state, "after ground stud");
    }

    private static double drop(HarnessState state, String from, String to) {
        return volts(state, from) - volts(state, to);
    }

    private static double volts(HarnessState state, String point) {
        return state.voltsAtPoints().get(POINTS.indexOf(point));
    }
}
