package org.pumpwright.host.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.calibrate.Finding.Kind;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Uncertain;

final class FindingsTest {
    @Test
    void theWorkedExampleFallsOffAtLowFlowAndItsScaleIsCoarseThere() throws BucketRefused {
        BucketResult result = BucketEvaluation.of(WorkedExample.test());
        assertThat(result.gatePassed()).isTrue();
        assertThat(result.findings())
                .containsExactly(
                        new Finding(
                                Kind.COARSE_SCALE,
                                "at 0.25 gal/min the scale alone makes K uncertain by 0.19 % (standard): catch more, or take"
                                        + " a finer scale"),
                        new Finding(
                                Kind.FALLS_OFF,
                                "K falls off at low flow: at 0.25 gal/min it is 1.3 % below the single K; from 0.32 gal/min"
                                        + " up it is within 1 %"));
    }

    @Test
    void theStricterGateOfACertificateIsNotMet() throws BucketRefused {
        BucketTest test = WorkedExample.with(
                WorkedExample.bench(), WorkedExample.declared(), WorkedExample.runs(), Rules.CERTIFICATE);
        BucketResult result = BucketEvaluation.of(test);
        assertThat(result.gatePassed()).isFalse();
        assertThat(sentences(result, Kind.GATE_FAILED))
                .containsExactly(
                        "at 0.25 gal/min the 5 runs lie 0.38 % apart, allowed is 0.25 %",
                        "at 1.00 gal/min the 5 runs lie 0.29 % apart, allowed is 0.25 %");
    }

    @Test
    void anOutlierIsAskedForAndCountsUntilAReasonIsWritten() throws BucketRefused {
        List<Run> runs = new ArrayList<>(WorkedExample.runs());
        runs.set(17, pulses(runs.get(17), 12_300, Optional.empty()));
        BucketResult asked = BucketEvaluation.of(WorkedExample.with(runs));
        assertThat(sentences(asked, Kind.OUTLIER_QUESTION))
                .singleElement()
                .asString()
                .startsWith("run 18 at 4.00");
        assertThat(asked.points().get(3).runs()).hasSize(5);
        runs.set(17, pulses(runs.get(17), 12_300, Optional.of("bucket was knocked")));
        BucketResult left = BucketEvaluation.of(WorkedExample.with(runs));
        assertThat(left.points().get(3).runs()).hasSize(4);
        assertThat(left.points().get(3).leftOut()).hasSize(1);
        assertThat(left.runs()).hasSize(20);
        assertThat(sentences(left, Kind.RUN_LEFT_OUT)).containsExactly("run 18 was left out: bucket was knocked");
    }

    /** Grubbs, two-sided 5 %, the upper 2.5 % column of ASTM E178, from memory. */
    @ParameterizedTest
    @CsvSource({"4, 1.481", "5, 1.715", "6, 1.887", "10, 2.290"})
    void criticalValuesOfGrubbs(int runs, double critical) {
        assertThat(Outlier.critical(runs)).isCloseTo(critical, within(6e-4));
    }

    @Test
    void hysteresisAndAMovedFirstFlowAreFound() throws BucketRefused {
        List<Run> runs = new ArrayList<>(WorkedExample.runs());
        runs.add(again(runs.get(10), 21, Leg.BACK, 1.004));
        runs.add(again(runs.get(0), 22, Leg.FIRST_AGAIN, 1.0005));
        BucketResult result = BucketEvaluation.of(WorkedExample.with(runs));
        assertThat(sentences(result, Kind.HYSTERESIS))
                .singleElement()
                .asString()
                .startsWith("at 2.00 gal/min K is +0.5");
        assertThat(sentences(result, Kind.FIRST_FLOW_MOVED)).isEmpty();
        assertThat(result.passes()).hasSize(2);
        assertThat(result.points().get(2).runs()).hasSize(5);
    }

    @Test
    void aMeterThatTheLawDoesNotDescribeGetsATable() throws BucketRefused {
        List<Run> runs = new ArrayList<>(WorkedExample.runs());
        for (int i = 10; i < 15; i++) {
            runs.set(i, pulses(runs.get(i), runs.get(i).pulses() * 1.01, Optional.empty()));
        }
        BucketResult result = BucketEvaluation.of(WorkedExample.with(runs));
        assertThat(result.curve()).isInstanceOf(TableK.class);
        assertThat(sentences(result, Kind.NOT_FITTED)).hasSize(1);
        FlowPoint point = result.points().get(2);
        assertThat(result.curve().at(point.flow()).k().pulsesPerM3())
                .isCloseTo(point.k().pulsesPerM3(), within(1e-6));
    }

    @Test
    void aPreviousKInLitresIsSuspected() throws BucketRefused {
        Declared litres = WorkedExample.declared(Optional.of(KFactor.ofPulsesPerUsGallon(3010.5 / 3.7854)));
        BucketResult result = BucketEvaluation.of(
                WorkedExample.with(WorkedExample.bench(), litres, WorkedExample.runs(), Rules.SHOP));
        assertThat(sentences(result, Kind.UNIT_MIX))
                .containsExactly(
                        "K is 3.785 times the previous K, the ratio of US gallons and litres: one of the two is"
                                + " in another unit");
        assertThat(sentences(result, Kind.CHANGED)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "3785.4, 1000, 3.785, US gallons and litres",
        "1000, 3785.4, 0.264, US gallons and litres",
        "3613, 3010, 1.201, imperial and US gallons",
        "2506, 3010, 0.833, imperial and US gallons",
        "300, 3010, 0.100, 'per gallon and per 10 gallons, or a decimal point'",
        "8.34, 1, 8.338, pounds and gallons of water"
    })
    void unitsThatAreTakenForEachOther(double one, double other, double ratio, String words) {
        UnitMix mix = UnitMix.between(one, other).orElseThrow();
        assertThat(mix.ratio()).isCloseTo(ratio, within(6e-4));
        assertThat(mix.words()).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"3010, 3000", "3000, 2000", "3000, 600"})
    void otherRatiosAreNoUnits(double one, double other) {
        assertThat(UnitMix.between(one, other)).isEmpty();
    }

    /** A count that lasts 40 ms longer than the catch: 1.0013 at 30 s and 1.000333 at 120 s times the true K. */
    @Test
    void aDivertersExcessIsFoundFromLongAndShortRuns() {
        double[] longRuns = {3000 * (1 + 0.04 / 120) - 0.3, 3000 * (1 + 0.04 / 120), 3000 * (1 + 0.04 / 120) + 0.3};
        double[] shortRuns = {3000 * (1 + 0.04 / 30) - 0.3, 3000 * (1 + 0.04 / 30), 3000 * (1 + 0.04 / 30) + 0.3};
        Uncertain excess = DiverterTrial.excessSeconds(longRuns, 120, shortRuns, 30);
        assertThat(excess.value()).isCloseTo(0.04, within(1e-9));
        assertThat(excess.standardUncertainty()).isBetween(0.002, 0.005);
        assertThat(DiverterTrial.switchHalfWidthSeconds(excess)).isGreaterThan(0.04);
    }

    /** 0.3 s late and 0.8 s over-run make K 0.9 % too large in 57 s and 0.4 % in 120 s. */
    @ParameterizedTest
    @CsvSource({"57, 0.9", "120, 0.4"})
    void aStandingStartCountsTooMuch(double seconds, double percent) {
        assertThat(100 * new Timing(Start.STANDING, 0.8 - 0.3, 0.1).excessShare(seconds))
                .isCloseTo(percent, within(0.05));
    }

    @Test
    void foundAndLeftAreComparedFlowByFlow() throws BucketRefused {
        BucketResult found = BucketEvaluation.of(WorkedExample.test());
        List<Run> adjusted = WorkedExample.runs().stream()
                .map(run -> pulses(run, run.pulses() * 1.005, Optional.empty()))
                .toList();
        FoundAndLeft both = new FoundAndLeft(found, BucketEvaluation.of(WorkedExample.with(adjusted)));
        assertThat(both.changeShare()).isCloseTo(0.005, within(1e-6));
        assertThat(both.changes())
                .hasSize(4)
                .allSatisfy(at -> assertThat(at.share()).isCloseTo(0.005, within(1e-9)));
    }

    private static Run pulses(Run run, double pulses, Optional<String> reason) {
        return new Run(
                run.number(), run.set(), run.leg(), pulses, run.seconds(), run.liquidCelsius(), run.reading(), reason);
    }

    private static Run again(Run run, int number, Leg leg, double times) {
        return new Run(
                number,
                run.set(),
                leg,
                run.pulses() * times,
                run.seconds(),
                run.liquidCelsius(),
                run.reading(),
                Optional.empty());
    }

    private static List<String> sentences(BucketResult result, Kind kind) {
        return result.findings().stream()
                .filter(finding -> finding.kind() == kind)
                .map(Finding::sentence)
                .toList();
    }
}
