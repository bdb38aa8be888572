package org.pumpwright.host.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.calibrate.fluid.Air;
import org.pumpwright.host.calibrate.fluid.Product;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.quantity.UnitSystem;

final class RefusalTest {
    @Test
    void aProductWithoutADensityIsNotWeighed() {
        BucketTest water = WorkedExample.test();
        BucketTest test = new BucketTest(
                water.day(),
                water.bench(),
                "28-0-0",
                Optional.empty(),
                water.declared(),
                water.runs(),
                water.rules(),
                UnitSystem.US);
        assertThat(problems(test))
                .containsExactly(new Problem(
                        "liquid.density",
                        "weighing product needs its measured density and temperature (28-0-0): weigh a known volume of"
                                + " that batch and give kg_per_m3 and celsius"));
    }

    @Test
    void aProductTooFarFromItsDensitysTemperatureIsRefused() {
        BucketTest water = WorkedExample.test();
        Product cold = new Product("28-0-0", 1280, 0, -0.6, 1);
        BucketTest test = new BucketTest(
                water.day(),
                water.bench(),
                "28-0-0",
                Optional.of(cold),
                water.declared(),
                water.runs().subList(0, 1),
                water.rules(),
                UnitSystem.US);
        assertThat(problems(test))
                .containsExactly(new Problem(
                        "run 1 temperature",
                        "run 1 is at 18.4 °C, the density of 28-0-0 is known from -15.0 to 15.0 °C"));
    }

    @Test
    void twoRunsAtAFlowAreTooFew() {
        List<Run> runs = new ArrayList<>(WorkedExample.runs().subList(0, 17));
        assertThat(problems(WorkedExample.with(runs)))
                .containsExactly(new Problem(
                        "run 16 and those at its flow",
                        "2 runs that count at 4.00 gal/min, at least 3 are needed, better 5: make more"));
    }

    @Test
    void twoFlowsAreTooFew() {
        assertThat(problems(WorkedExample.with(WorkedExample.runs().subList(0, 10))))
                .containsExactly(new Problem(
                        "flows", "runs at 2 flows, a K over the flow needs at least 3, better 5: test at more"));
    }

    @Test
    void noRunsAtAllAreTooFew() {
        assertThat(problems(WorkedExample.with(List.of())))
                .extracting(Problem::field)
                .containsExactly("flows");
    }

    @Test
    void aBucketThatRanOverIsRefused() {
        Bench small =
                WorkedExample.bench(new Weighing(WorkedExample.scale(), new Air(20, 98_190, 50), 0.058, 0.004, 0.010));
        BucketTest test = WorkedExample.with(small, WorkedExample.declared(), WorkedExample.runs(), Rules.SHOP);
        assertThat(problems(test))
                .hasSize(10)
                .first()
                .isEqualTo(new Problem(
                        "run 11 volume",
                        "run 11 caught 15.15 L, the bucket holds 10.00 L: it ran over, or a weight or unit is wrong:"
                                + " make runs shorter or take a larger bucket"));
    }

    @Test
    void moreThanTheScaleTakesIsRefused() {
        Scale small = new Scale(WorkedExample.certificate("S-2"), 0.004, 2, 0.004, 0.002, 0.003, 16);
        Bench bench = WorkedExample.bench(new Weighing(small, new Air(20, 98_190, 50), 0.058, 0.004, 0.019));
        BucketTest test = WorkedExample.with(bench, WorkedExample.declared(), WorkedExample.runs(), Rules.SHOP);
        assertThat(problems(test))
                .contains(
                        new Problem(
                                "run 11 gross",
                                "run 11 weighs 16.012 kg gross, the scale takes 16.000 kg: catch less, or take a larger scale"));
    }

    @Test
    void aFlowBelowTheMetersRangeIsRefused() {
        Declared declared = WorkedExample.declared();
        Declared higher = new Declared(
                new FlowRange(WorkedExample.gpm(0.5), WorkedExample.gpm(5)),
                declared.range(),
                declared.working(),
                declared.startFlow(),
                declared.previous(),
                declared.nominal());
        assertThat(problems(WorkedExample.with(WorkedExample.bench(), higher, WorkedExample.runs(), Rules.SHOP)))
                .hasSize(5)
                .first()
                .isEqualTo(new Problem(
                        "run 1 flow",
                        "run 1 has 0.25 gal/min, below the range: the meter is for 0.50 gal/min to 5.00 gal/min."
                                + " Test within it"));
    }

    @Test
    void aCertificatePastItsDayIsRefused() {
        Certificate old = new Certificate(
                "S-9", Optional.of(WorkedExample.DAY.minusYears(2)), Optional.of(WorkedExample.DAY.minusDays(1)));
        Scale scale = new Scale(old, 0.004, 2, 0.004, 0.002, 0.003, 30);
        Weighing weighing = new Weighing(scale, new Air(20, 98_190, 50), 0.058, 0.004, 0.019);
        Bench bench = new Bench(weighing, new Timing(Start.FLYING, 0, 0.025), new Thermometer(old, 0.5), 3e-6, 1);
        assertThat(problems(WorkedExample.with(bench, WorkedExample.declared(), WorkedExample.runs(), Rules.SHOP)))
                .extracting(Problem::sentence)
                .containsExactly(
                        "the certificate of the scale (S-9) was due on 2026-03-01, the test is of 2026-03-02: have it"
                                + " calibrated, then test again",
                        "the certificate of the thermometer (S-9) was due on 2026-03-01, the test is of 2026-03-02: have"
                                + " it calibrated, then test again");
    }

    @Test
    void anInstrumentCalibratedAfterTheTestIsRefused() {
        Certificate later = new Certificate("T-3", Optional.of(WorkedExample.DAY.plusDays(1)), Optional.empty());
        Bench bench = new Bench(
                WorkedExample.bench().method(), WorkedExample.bench().timing(), new Thermometer(later, 0.5), 3e-6, 1);
        assertThat(problems(WorkedExample.with(bench, WorkedExample.declared(), WorkedExample.runs(), Rules.SHOP)))
                .containsExactly(new Problem(
                        "thermometer.certificate",
                        "the thermometer was calibrated on 2026-03-03 (T-3), after the test of 2026-03-02: one of the two"
                                + " days is wrong"));
    }

    @Test
    void aCertificateNeedsCertificatesWhereAShopReportDoesNot() throws BucketRefused {
        Bench plain = new Bench(
                WorkedExample.bench().method(),
                WorkedExample.bench().timing(),
                new Thermometer(Certificate.undated("kitchen thermometer"), 0.5),
                3e-6,
                1);
        List<Run> runs = WorkedExample.runs();
        assertThat(BucketEvaluation.of(WorkedExample.with(plain, WorkedExample.declared(), runs, Rules.SHOP))
                        .points())
                .hasSize(4);
        assertThat(problems(WorkedExample.with(plain, WorkedExample.declared(), runs, Rules.CERTIFICATE)))
                .extracting(Problem::sentence)
                .containsExactly("a calibration certificate needs the number and due date of the thermometer's own"
                        + " certificate, here is: not calibrated (kitchen thermometer)");
    }

    @Test
    void weightsInPoundsAmongKilogramsAreFoundByTheirFlow() {
        List<Run> runs = new ArrayList<>(WorkedExample.runs());
        Run run = runs.get(2);
        runs.set(2, with(run, run.seconds(), new Reading.Weights(0.9, 0.9 + 1.894 / 0.45359237)));
        assertThat(problems(WorkedExample.with(runs)))
                .containsExactly(new Problem(
                        "run 3 flow",
                        "run 3 has 0.55 gal/min by volume and time, but was set to 0.25 gal/min: their ratio is that of"
                                + " pounds and kilograms, units are mixed"));
    }

    @Test
    void pulsesOfAnotherUnitAreFoundByTheirK() {
        List<Run> runs = new ArrayList<>(WorkedExample.runs());
        Run run = runs.get(7);
        runs.set(
                7,
                new Run(
                        8,
                        run.set(),
                        Leg.MAIN,
                        run.pulses() / 10,
                        run.seconds(),
                        18.4,
                        run.reading(),
                        Optional.empty()));
        assertThat(problems(WorkedExample.with(runs)))
                .singleElement()
                .satisfies(problem -> assertThat(problem.sentence())
                        .isEqualTo("run 8 has a K 0.100 times that of the others, the ratio of per gallon and per 10"
                                + " gallons, or a decimal point: units are mixed"));
    }

    @Test
    void aReadingThatDoesNotGoWithTheMethodIsRefused() {
        List<Run> runs = new ArrayList<>(WorkedExample.runs());
        runs.set(0, with(runs.get(0), 121, new Reading.Level(0.0019)));
        assertThat(problems(WorkedExample.with(runs)))
                .extracting(Problem::sentence)
                .containsExactly(
                        "run 1 has a reading that does not go with a weighed bucket: correct it, or the method");
    }

    @Test
    void leavingARunOutNeedsAReason() {
        Run run = WorkedExample.runs().get(0);
        assertThatThrownBy(() -> new Run(1, run.set(), Leg.MAIN, 1491, 121, 18.4, run.reading(), Optional.of(" ")))
                .hasMessage("run 1 is left out without a reason: give one");
    }

    private static Run with(Run run, double seconds, Reading reading) {
        return new Run(
                run.number(),
                run.set(),
                run.leg(),
                run.pulses(),
                seconds,
                run.liquidCelsius(),
                reading,
                Optional.empty());
    }

    private static List<Problem> problems(BucketTest test) {
        return catchThrowableOfType(BucketRefused.class, () -> BucketEvaluation.of(test))
                .problems();
    }
}
