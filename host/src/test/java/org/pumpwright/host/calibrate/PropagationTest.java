package org.pumpwright.host.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.quantity.KFactor;

final class PropagationTest {
    /** A rectangle alone ends at root 3; of it 95 % lie within 0.95 root 3. Without a rectangle it is the normal factor. */
    @Test
    void coverageOfARectangleAndANormalRest() {
        assertThat(Combined.ofRectangleAndRest(0.95, 1, 1)).isCloseTo(0.95 * Math.sqrt(3), within(1e-4));
        assertThat(Combined.ofRectangleAndRest(0.95, 1e-9, 1)).isCloseTo(1.959964, within(1e-4));
        assertThat(Combined.ofRectangleAndRest(0.95, 0.5, 2)).isGreaterThan(Combined.ofRectangleAndRest(0.95, 0.5, 1));
    }

    /** ±3 mm in 300 mm alone is u 0.58 %, with marks of ±0.5 % U comes to 1.3 to 1.5 % at k = 2: a pail is no certificate. */
    @Test
    void aGraduatedPailIsGoodToABitMoreThanOnePercent() throws BucketRefused {
        double m3 = 0.0151;
        Measuring pail = new Measuring(
                WorkedExample.certificate("V-1"), 0.005 * 2 / Math.sqrt(3), 2, m3 / 100, 2e-5, 2e-4, 20, 0.02);
        List<Run> runs = WorkedExample.runs().stream()
                .map(run -> level(run, run.set().m3PerSecond() * run.seconds()))
                .toList();
        FlowPoint point = BucketEvaluation.of(
                        WorkedExample.with(WorkedExample.bench(pail), WorkedExample.declared(), runs, Rules.SHOP))
                .points()
                .get(2);
        assertThat(point.budget().term(Effect.LEVEL).orElseThrow().standardShare())
                .isCloseTo(0.0058, within(5e-5));
        assertThat(2 * point.stated().standardShare()).isBetween(0.013, 0.015);
        assertThat(point.stated().coverage()).isLessThan(2);
    }

    /** The errors of certificate, temperature, density, air and diverter are the same at all flows and make K_inf less certain. */
    @Test
    void sharedErrorsDoNotAverageOut() throws BucketRefused {
        BucketResult result = BucketEvaluation.of(WorkedExample.test());
        double shared = result.fit().kAtHighFlow().standardShare()
                * result.fit().kAtHighFlow().k().pulsesPerUsGallon();
        assertThat(shared).isCloseTo(1.51, within(0.01));
        assertThat(result.fit().covariance()[0]).isPositive();
        assertThat(result.fit().chance()).isGreaterThan(0.5);
    }

    @ParameterizedTest
    @CsvSource({"0.5", "1", "2", "10"})
    void asManyTimesThePulsesAreAsManyTimesTheK(double times) throws BucketRefused {
        BucketResult one = BucketEvaluation.of(WorkedExample.test());
        List<Run> runs = WorkedExample.runs().stream()
                .map(run -> new Run(
                        run.number(),
                        run.set(),
                        run.leg(),
                        run.pulses() * times,
                        run.seconds(),
                        run.liquidCelsius(),
                        run.reading(),
                        Optional.empty()))
                .toList();
        Bench steps = new Bench(
                WorkedExample.bench().method(),
                WorkedExample.bench().timing(),
                WorkedExample.bench().thermometer(),
                3e-6,
                times);
        BucketResult many = BucketEvaluation.of(WorkedExample.with(steps, WorkedExample.declared(), runs, Rules.SHOP));
        assertThat(many.single().k().pulsesPerM3() / one.single().k().pulsesPerM3())
                .isCloseTo(times, within(1e-9));
        assertThat(many.single().asCalibrated().expandedShare())
                .isCloseTo(one.single().asCalibrated().expandedShare(), within(1e-12));
        assertThat(many.fit().loss().m3PerSecond()).isCloseTo(one.fit().loss().m3PerSecond(), within(1e-15));
    }

    @Property(seed = "64", tries = 40)
    void aWorseScaleNeverMakesKMoreCertain(
            @ForAll @DoubleRange(min = 0, max = 0.05) double better,
            @ForAll @DoubleRange(min = 0, max = 0.05) double more)
            throws BucketRefused {
        assertThat(withLinearity(better + more)).isGreaterThanOrEqualTo(withLinearity(better));
    }

    @Test
    void aMasterMeterGivesTheKThatItsOwnKSays() throws BucketRefused {
        KCurve six = KCurve.constant(KFactor.ofPulsesPerUsGallon(6000));
        Comparing master = new Comparing(
                WorkedExample.certificate("M-1"),
                six,
                0.003,
                2,
                0.001,
                new FlowRange(WorkedExample.gpm(0.2), WorkedExample.gpm(6)));
        List<Run> runs = WorkedExample.runs().stream()
                .map(run -> reading(
                        run, new Reading.MasterPulses(6000 * run.set().gallonsPerMinute() * run.seconds() / 60)))
                .toList();
        FlowPoint point = BucketEvaluation.of(
                        WorkedExample.with(WorkedExample.bench(master), WorkedExample.declared(), runs, Rules.SHOP))
                .points()
                .get(3);
        assertThat(point.runs().get(0).k().pulsesPerUsGallon()).isCloseTo(12_085 / 4.0, within(1e-6));
        assertThat(point.budget().term(Effect.MASTER_CERTIFICATE).orElseThrow().standardShare())
                .isEqualTo(0.0015);
    }

    private static double withLinearity(double kg) throws BucketRefused {
        Scale scale = new Scale(WorkedExample.certificate("S-1"), 0.004, 2, kg, 0.002, 0.003, 30);
        Weighing base = (Weighing) WorkedExample.bench().method();
        Weighing weighing = new Weighing(scale, base.air(), 0.058, 0.004, 0.019);
        return BucketEvaluation.of(WorkedExample.with(
                        WorkedExample.bench(weighing), WorkedExample.declared(), WorkedExample.runs(), Rules.SHOP))
                .points()
                .get(0)
                .stated()
                .standardShare();
    }

    private static Run level(Run run, double m3) {
        return reading(run, new Reading.Level(m3));
    }

    private static Run reading(Run run, Reading reading) {
        return new Run(
                run.number(),
                run.set(),
                run.leg(),
                run.pulses(),
                run.seconds(),
                run.liquidCelsius(),
                reading,
                Optional.empty());
    }
}
