package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Spreads of 2000 units against those computed from the model of docs/metrology/plant.md by an independent program with
 * 4000 other units. A coefficient of variation from 2000 units has itself a standard error of 1.6 %; the tolerances are
 * three of those plus half a unit of the printed last place.
 */
class PumpPopulationTest {

    private static final List<PumpParameters> UNITS = new PumpPopulation(2026).units(2000);

    @ParameterizedTest(name = "{0} % duty")
    @CsvSource({"30, 4.8, 12", "50, 3.0, 8", "75, 2.4, 7", "100, 2.1, 6"})
    void flowAndAmpsSpreadAsTheCheckValuesSay(double percent, double flow, double amps) {
        double[] flows = sorted(p -> PumpSteadyState.of(p, percent / 100).flowM3PerSecond());
        double[] currents = sorted(p -> PumpSteadyState.of(p, percent / 100).batteryAmps());

        assertThat(variationPercent(flows)).isCloseTo(flow, within(0.05 + 0.048 * flow));
        assertThat(variationPercent(currents)).isCloseTo(amps, within(0.5 + 0.048 * amps));
    }

    @Test
    void theStartDutyOfNineteenOutOfTwentyLiesBetweenThirteenAndNineteenPercent() {
        double[] starts = sorted(PumpSteadyState::startDuty);

        assertThat(100 * starts[50]).isCloseTo(13, within(0.6));
        assertThat(100 * starts[1949]).isCloseTo(19, within(0.8));
    }

    @Test
    void theDeadHeadOfNineteenOutOfTwentyLiesBetweenEightyNineAndAHundredPsi() {
        double[] heads = sorted(p -> Bench.psi(PumpSteadyState.deadHead(p, 1)));

        assertThat(heads[50]).isCloseTo(89, within(1.0));
        assertThat(heads[1949]).isCloseTo(100, within(1.0));
    }

    @Test
    void theParametersSpreadLogNormallyAboutTheHealthyUnit() {
        double[] logFriction = UNITS.stream()
                .mapToDouble(p -> Math.log(p.motor().runningFrictionNewtonMetre() / 0.085))
                .toArray();

        double mean = Arrays.stream(logFriction).average().orElseThrow();
        double square = Arrays.stream(logFriction).map(x -> x * x).average().orElseThrow();
        assertThat(mean).isCloseTo(0, within(3 * 0.18 / Math.sqrt(2000)));
        assertThat(Math.sqrt(square)).isCloseTo(0.18, within(3 * 0.18 / Math.sqrt(4000)));
    }

    @Test
    void aUnitIsTheSameHoweverManyAreDrawnAndAnotherForAnotherSeed() {
        assertThat(new PumpPopulation(2026).unit(1234)).isEqualTo(UNITS.get(1234));
        assertThat(new PumpPopulation(2027).unit(1234)).isNotEqualTo(UNITS.get(1234));
        assertThat(UNITS).doesNotHaveDuplicates();
    }

    @Test
    void neighbouringSeedsGiveUnrelatedUnits() {
        double product = 0;
        double square = 0;
        for (int seed = 0; seed < 2000; seed++) {
            double a = Math.log(new PumpPopulation(seed).unit(0).motor().resistanceOhms() / 0.19);
            double b = Math.log(new PumpPopulation(seed + 1).unit(0).motor().resistanceOhms() / 0.19);
            product += a * b;
            square += a * a;
        }
        assertThat(product / square).isCloseTo(0, within(3 / Math.sqrt(2000)));
    }

    @Test
    void aNegativeUnitNumberIsRefused() {
        assertThatThrownBy(() -> new PumpPopulation(1).unit(-1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("unit number -1 is below 0");
    }

    private static double[] sorted(ToDoubleFunction<PumpParameters> what) {
        return UNITS.stream().mapToDouble(what).sorted().toArray();
    }

    private static double variationPercent(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        double square = Arrays.stream(values).map(x -> (x - mean) * (x - mean)).sum() / (values.length - 1);
        return 100 * Math.sqrt(square) / mean;
    }
}
