package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class SensorErrorsTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();

    @Test
    void gainsAndOffsetsAreWhatTheReadingDiffersBy() {
        SensorErrors errors = new SensorErrors(0, 0.02, 0.1, -0.01, 0.05, 0.03, 5000, 0.7, 0, 0, 0, 0);
        PlantReading truth = new Bench(HEALTHY, SensorErrors.none(), 1).hold(0.8, 5);

        PlantReading read = new Bench(HEALTHY, errors, 1).hold(0.8, 5);

        assertThat(read.amps()).isCloseTo(truth.amps() * 1.02 + 0.1, within(1e-9));
        assertThat(read.voltsAtPins()).isCloseTo(truth.voltsAtPins() * 0.99 + 0.05, within(1e-9));
        assertThat(read.pressurePa()).isCloseTo(truth.pressurePa() * 1.03 + 5000, within(1e-6));
        assertThat(read.waterTemperatureKelvin()).isCloseTo(293.15 + 0.7, within(1e-9));
    }

    @Test
    void theNoiseIsOneCountOfATenBitConverterSoThatItsRoundingAveragesOut() {
        Bench bench = new Bench(HEALTHY, SensorErrors.noiseOnly(), 6);
        double[] amps = IntStream.range(0, 4000)
                .mapToDouble(i -> bench.hold(0, 0.01).amps())
                .toArray();
        double count = 40.0 / 1024;

        assertThat(deviation(amps)).isCloseTo(count, within(0.05 * count));
        double rounded = Arrays.stream(amps)
                .map(a -> Math.rint(a / count + 0.3) * count)
                .average()
                .orElseThrow();
        double exact = Arrays.stream(amps).average().orElseThrow();
        assertThat(rounded).isCloseTo(exact + 0.3 * count, within(3 * count / Math.sqrt(12 * 4000)));
    }

    @Test
    void drawnSensorsSpreadAsStated() {
        assertThat(spreadOf(SensorErrors::meterRelative)).isCloseTo(0.005, within(0.0003));
        assertThat(spreadOf(SensorErrors::ampsRelative)).isCloseTo(0.005, within(0.0003));
        assertThat(spreadOf(SensorErrors::ampsOffset)).isCloseTo(0.03, within(0.002));
        assertThat(spreadOf(SensorErrors::voltsRelative)).isCloseTo(0.001, within(0.00006));
        assertThat(spreadOf(SensorErrors::voltsOffset)).isCloseTo(0.010, within(0.0006));
        assertThat(spreadOf(SensorErrors::pressureOffsetPascal)).isCloseTo(3500, within(200.0));
        assertThat(spreadOf(SensorErrors::temperatureOffsetKelvin)).isCloseTo(0.5, within(0.03));
    }

    @Test
    void gainsDriftATenthOfAPercentAMonthAndOffsetsStay() {
        double[] drifts = LongStream.range(0, 2000)
                .mapToDouble(seed -> SensorErrors.none().after(12, seed).voltsRelative())
                .toArray();
        SensorErrors old = SensorErrors.drawn(3).after(12, 3);

        assertThat(deviation(drifts)).isCloseTo(0.012, within(0.0008));
        assertThat(old).isEqualTo(SensorErrors.drawn(3).after(12, 3));
        assertThat(old.ampsOffset()).isEqualTo(SensorErrors.drawn(3).ampsOffset());
        assertThat(SensorErrors.drawn(3).after(0, 3)).isEqualTo(SensorErrors.drawn(3));
    }

    @Test
    void twiceTheAgeIsTwiceTheDrift() {
        SensorErrors one = SensorErrors.none().after(6, 7);
        SensorErrors two = SensorErrors.none().after(12, 7);

        assertThat(two.meterRelative()).isCloseTo(2 * one.meterRelative(), within(1e-15));
        assertThat(two.pressureRelative()).isCloseTo(2 * one.pressureRelative(), within(1e-15));
    }

    @Test
    void aDrawRepeatsWithItsSeed() {
        assertThat(SensorErrors.drawn(3)).isEqualTo(SensorErrors.drawn(3)).isNotEqualTo(SensorErrors.drawn(4));
    }

    @Test
    void sensorsAndUnitOfTheSameSeedAreUnrelated() {
        double product = 0;
        for (int seed = 0; seed < 2000; seed++) {
            double unit = Math.log(new PumpPopulation(seed).unit(0).motor().resistanceOhms() / 0.19) / 0.05;
            product += unit * SensorErrors.drawn(seed).meterRelative() / 0.005;
        }

        assertThat(product / 2000).isCloseTo(0, within(3 / Math.sqrt(2000)));
    }

    @Test
    void aNegativeNoiseIsRefused() {
        assertThatThrownBy(() -> new SensorErrors(0, 0, 0, 0, 0, 0, 0, 0, -1, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("current noise -1.00000 A is outside 0.00000 to 100.000 A");
    }

    private static double spreadOf(ToDoubleFunction<SensorErrors> what) {
        return deviation(LongStream.range(0, 2000)
                .mapToObj(SensorErrors::drawn)
                .mapToDouble(what)
                .toArray());
    }

    private static double deviation(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        return Math.sqrt(Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1));
    }
}
