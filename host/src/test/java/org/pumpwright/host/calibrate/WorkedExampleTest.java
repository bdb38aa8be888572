package org.pumpwright.host.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.quantity.KFactor;

/**
 * The example was worked out beforehand by hand; here every printed digit of it is asked for. Two are
 * not met. By hand the zero drift of ±3 g at 4 gal/min came to 0.012 %, but 3 g / root 3 / 15 124 g is 0.01145 %, so 0.011 %, as
 * it is by hand for 2 gal/min with a little less water. And a temperature of ±0.5 K came to 0.006 %, but the slope of Tanaka's
 * formula at 18.4 degrees, 0.1893 kg/m3 a kelvin, makes 0.00547 %, so 0.005 %.
 */
final class WorkedExampleTest {
    private static BucketResult result;

    @BeforeAll
    static void workOut() throws BucketRefused {
        result = BucketEvaluation.of(WorkedExample.test());
    }

    @Test
    void waterAirAndBuoyancyAreThoseOfTheSheet() {
        RunResult.Weighed steps = result.runs().get(0).weighed().orElseThrow();
        assertThat(print("%.2f", steps.liquidKgPerM3())).isEqualTo("998.72");
        assertThat(print("%.3f", steps.airKgPerM3())).isEqualTo("1.162");
        assertThat(print("%.6f", steps.buoyancy())).isEqualTo("1.001019");
        assertThat(steps.netKg()).isCloseTo(1.897, within(1e-12));
        assertThat(steps.massKg()).isCloseTo(1.897 * 1.001019, within(2e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | 2968.4 2976.5 2975.1 2965.3 2965.9 | 2970 | 0.18 | 0.38",
                "1 | 3004.0 3007.8 3006.0 3008.6 3000.0 | 3005 | 0.11 | 0.29",
                "2 | 3016.2 3010.7 3013.2 3010.6 3009.6 | 3012 | 0.09 | 0.22",
                "3 | 3014.6 3015.8 3012.2 3012.5 3015.3 | 3014 | 0.05 | 0.12"
            })
    void runsMeansScatterAndRange(int flow, String runs, String mean, String deviation, String range) {
        FlowPoint point = result.points().get(flow);
        assertThat(point.runs().stream().map(run -> perGallon("%.1f", run.k()))).containsExactly(runs.split(" "));
        assertThat(perGallon("%.0f", point.k())).isEqualTo(mean);
        assertThat(print("%.2f", 100 * point.deviationShare())).isEqualTo(deviation);
        assertThat(print("%.2f", 100 * point.rangeShare())).isEqualTo(range);
    }

    @ParameterizedTest
    @CsvSource({
        "SCALE_CERTIFICATE, 0.105, 0.013, 0.013",
        "SCALE_LINEARITY,   0.122, 0.015, 0.015",
        "SCALE_RESOLUTION,  0.043, 0.005, 0.005",
        "SCALE_DRIFT,       0.091, 0.011, 0.011",
        "SPLASH,            0.122, 0.015, 0.015",
        "TEMPERATURE,       0.005, 0.005, 0.005",
        "LIQUID_DENSITY,    0.012, 0.012, 0.012",
        "BUOYANCY,          0.003, 0.003, 0.003",
        "LINE_VOLUME,       0.091, 0.011, 0.011",
        "SWITCHING,         0.017, 0.017, 0.034",
        "PULSE,             0.027, 0.003, 0.003",
        "REPEATABILITY,     0.079, 0.040, 0.024"
    })
    void everyLineOfTheBudget(Effect effect, String quarter, String two, String four) {
        assertThat(List.of(share(0, effect), share(2, effect), share(3, effect)))
                .containsExactly(quarter, two, four);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.26, 2.03, 0.52", "2, 0.055, 2.20, 0.12", "3, 0.053, 2.07, 0.11"})
    void combinedCoverageFactorAndExpanded(int flow, String combined, String factor, String expanded) {
        Stated stated = result.points().get(flow).stated();
        String format = combined.length() == 4 ? "%.2f" : "%.3f";
        assertThat(print(format, 100 * stated.standardShare())).isEqualTo(combined);
        assertThat(print("%.2f", stated.coverage())).isEqualTo(factor);
        assertThat(print("%.2f", 100 * stated.expandedShare())).isEqualTo(expanded);
    }

    @Test
    void theFitOverTheFlow() {
        FittedK fit = result.fit();
        assertThat(fit.fits()).isTrue();
        assertThat(result.curve()).isSameAs(fit);
        Stated high = fit.kAtHighFlow();
        assertThat(perGallon("%.1f", high.k())).isEqualTo("3017.4");
        assertThat(print("%.1f", high.standardShare() * high.k().pulsesPerUsGallon()))
                .isEqualTo("1.5");
        assertThat(print("%.4f", fit.loss().gallonsPerMinute())).isEqualTo("0.0039");
        assertThat(fit.residualShares())
                .allSatisfy(share -> assertThat(Math.abs(share)).isLessThanOrEqualTo(0.0002));
    }

    @Test
    void theSingleKOfTheWorkingFlows() {
        SingleK single = result.single();
        assertThat(perGallon("%.1f", single.k())).isEqualTo("3010.5");
        assertThat(print("%.1f", 100 * single.errors().get(0).share())).isEqualTo("-1.3");
        assertThat(single.acceptance()).isEqualTo(SingleK.Acceptance.WITHIN_ONE_PERCENT);
        assertThat(single.inService().expandedShare()).isBetween(0.005, 0.010);
    }

    @Test
    void aStandCanTakeTheCurve() {
        FlowPoint point = result.points().get(1);
        assertThat(result.kCurve().points()).hasSize(4);
        assertThat(result.kCurve().at(point.flow()))
                .isEqualTo(result.curve().at(point.flow()).k());
    }

    private static String share(int flow, Effect effect) {
        return print(
                "%.3f",
                100
                        * result.points()
                                .get(flow)
                                .budget()
                                .term(effect)
                                .orElseThrow()
                                .standardShare());
    }

    private static String perGallon(String format, KFactor k) {
        return print(format, k.pulsesPerUsGallon());
    }

    private static String print(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
