package org.pumpwright.host.plant.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.SensorErrors;

class BadSensorPlantTest {

    private static final int STEPS = 2000;

    static Stream<Arguments> brokenSensors() {
        return Stream.of(SensorChannel.values())
                .flatMap(channel -> Stream.of(SensorTrouble.values()).map(trouble -> Arguments.of(channel, trouble)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("brokenSensors")
    void oneSensorIsWrongAndTheOthersAreNot(SensorChannel channel, SensorTrouble trouble) {
        PlantReading[] right = run(pump());
        PlantReading[] wrong = run(new BadSensorPlant(pump(), new BadSensor(channel, trouble), 3));

        for (SensorChannel each : SensorChannel.values()) {
            boolean same = Arrays.equals(series(right, each), series(wrong, each));
            assertThat(same).as(each.word()).isEqualTo(each != channel);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = SensorChannel.class,
            names = {"VOLTS", "AMPS", "PRESSURE", "TEMPERATURE"})
    void anOpenAndAShortedLineEndUpAtTheEndsOfTheRange(SensorChannel channel) {
        PlantReading[] open = run(bad(channel, SensorTrouble.OPEN));
        PlantReading[] shorted = run(bad(channel, SensorTrouble.SHORT));

        assertThat(series(open, channel)).containsOnly(channel.open());
        assertThat(series(shorted, channel)).containsOnly(channel.shorted());
    }

    @Test
    void aStuckSensorKeepsWhatItReadFirst() {
        double[] pressure = series(run(bad(SensorChannel.PRESSURE, SensorTrouble.STUCK)), SensorChannel.PRESSURE);

        assertThat(pressure).containsOnly(pressure[0]);
    }

    @Test
    void aNoisySensorSwingsByATwentiethOfItsSpanAboutTheTruth() {
        double[] right = series(run(pump()), SensorChannel.AMPS);
        double[] noisy = series(run(bad(SensorChannel.AMPS, SensorTrouble.NOISY)), SensorChannel.AMPS);
        double square = 0;
        double mean = 0;
        for (int i = 0; i < STEPS; i++) {
            mean += (noisy[i] - right[i]) / STEPS;
            square += (noisy[i] - right[i]) * (noisy[i] - right[i]) / STEPS;
        }

        assertThat(Math.sqrt(square)).isCloseTo(2, within(0.15));
        assertThat(mean).isCloseTo(0, within(0.15));
    }

    @Test
    void aMeterOfTheWrongScaleLosesHalfOfItsPulsesAndANoisyOneGainsATenth() {
        int right = pulses(run(pump()));

        assertThat(pulses(run(bad(SensorChannel.METER, SensorTrouble.WRONG_SCALE))))
                .isBetween(right / 2, right / 2 + 1);
        assertThat((double) pulses(run(bad(SensorChannel.METER, SensorTrouble.NOISY))))
                .isCloseTo(1.1 * right, within(0.02 * right));
        assertThat(pulses(run(bad(SensorChannel.METER, SensorTrouble.STUCK)))).isZero();
    }

    @Test
    void edgesStayInOrderWithinTheirStep() {
        for (PlantReading r : run(bad(SensorChannel.METER, SensorTrouble.NOISY))) {
            assertThat(r.edgeOffsetsSeconds()[0]).isSorted();
            assertThat(Arrays.stream(r.edgeOffsetsSeconds()[0]).boxed()).allMatch(t -> t >= 0 && t <= 0.01);
        }
    }

    @Test
    void theSameSeedGivesTheSameNoise() {
        BadSensor noisy = new BadSensor(SensorChannel.VOLTS, SensorTrouble.NOISY);
        double[] once = series(run(new BadSensorPlant(pump(), noisy, 8)), SensorChannel.VOLTS);

        assertThat(once).isEqualTo(series(run(new BadSensorPlant(pump(), noisy, 8)), SensorChannel.VOLTS));
        assertThat(once).isNotEqualTo(series(run(new BadSensorPlant(pump(), noisy, 9)), SensorChannel.VOLTS));
    }

    @Test
    void aBrokenSensorHasAWordForACommandLine() {
        assertThat(new BadSensor(SensorChannel.PRESSURE, SensorTrouble.WRONG_SCALE).word())
                .isEqualTo("pressure-wrong-scale");
    }

    private static Plant pump() {
        return new PumpPlant(PumpParameters.healthy(), SensorErrors.noiseOnly(), 2);
    }

    private static Plant bad(SensorChannel channel, SensorTrouble trouble) {
        return new BadSensorPlant(pump(), new BadSensor(channel, trouble), 3);
    }

    /** Duty up and down, so that every sensor has something to follow; the water's temperature stays. */
    private static PlantReading[] run(Plant plant) {
        PlantReading[] readings = new PlantReading[STEPS];
        for (int i = 0; i < STEPS; i++) {
            double duty = 0.5 - 0.5 * Math.cos(2 * Math.PI * i / STEPS);
            readings[i] = plant.step(0.01, new double[] {duty}, true);
        }
        return readings;
    }

    private static double[] series(PlantReading[] readings, SensorChannel channel) {
        ToDoubleFunction<PlantReading> what = switch (channel) {
            case METER -> r -> r.edgeOffsetsSeconds()[0].length;
            case VOLTS -> PlantReading::voltsAtPins;
            case AMPS -> PlantReading::amps;
            case PRESSURE -> PlantReading::pressurePa;
            case TEMPERATURE -> PlantReading::waterTemperatureKelvin;
        };
        return Stream.of(readings).mapToDouble(what).toArray();
    }

    private static int pulses(PlantReading[] readings) {
        return (int) Arrays.stream(series(readings, SensorChannel.METER)).sum();
    }
}
