package org.pumpwright.host.plant.harness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;

class HarnessPlantTest {

    private static final HarnessParameters HEALTHY = HarnessParameters.healthy();
    private static final int PLUS_PIN = 5;
    private static final int MINUS_PIN = 6;

    @ParameterizedTest(name = "{0} A")
    @CsvSource({"5", "10", "15"})
    void theLoadBanksStepsGiveTheSteadyReadingsAtTheProbe(double nominal) {
        HarnessPlant plant = plant(HEALTHY);
        HarnessState expected = HarnessState.of(HEALTHY, nominal);

        PlantReading battery = plant.step(0.1, new double[] {nominal / 15}, true);
        plant.probe(PLUS_PIN, MINUS_PIN);
        PlantReading pump = plant.step(0.1, new double[] {nominal / 15}, true);

        assertThat(battery.amps()).isCloseTo(expected.amps(), within(1e-9));
        assertThat(battery.voltsAtPins()).isCloseTo(expected.voltsAtPoints().get(0), within(1e-9));
        assertThat(pump.voltsAtPins())
                .isCloseTo(
                        expected.voltsAtPoints().get(PLUS_PIN)
                                - expected.voltsAtPoints().get(MINUS_PIN),
                        within(1e-9));
    }

    @Test
    void brokenStrandsGetWorseWhileTheyWarm() {
        HarnessPlant plant = plant(HarnessFault.BROKEN_STRANDS.applyTo(HEALTHY, Severity.SEVERE));
        plant.probe(3, 4);

        double first = plant.step(0.1, new double[] {1}, true).voltsAtPins();
        plant.step(60, new double[] {1}, true);
        double later = plant.step(0.1, new double[] {1}, true).voltsAtPins();

        assertThat(later).isGreaterThan(3 * first);
    }

    @Test
    void aChafedWireBlowsTheFuseAndANewOneBlowsAgain() {
        HarnessPlant plant = plant(HarnessFault.CHAFED_SHORT.applyTo(HEALTHY, Severity.SEVERE));

        plant.step(300, new double[] {0.5}, true);
        boolean first = plant.fuseBlown();
        double dead = plant.step(1, new double[] {0.5}, true).amps();
        plant.replaceFuse();
        double alive = peak(plant, 2);
        plant.step(300, new double[] {0.5}, true);

        assertThat(first).isTrue();
        assertThat(dead).isZero();
        assertThat(alive).isGreaterThan(5);
        assertThat(plant.fuseBlown()).isTrue();
    }

    @Test
    void aLoosePinOpensMoreOftenWhenTheHarnessIsWiggled() {
        HarnessPlant plant = plant(HarnessFault.LOOSE_PIN.applyTo(HEALTHY, Severity.MODERATE));

        int still = openings(plant);
        plant.wiggle(true);
        int wiggled = openings(plant);

        assertThat(still).isBetween(1, 30);
        assertThat(wiggled).isGreaterThan(3 * still);
        assertThat(openings(plant(HEALTHY))).isZero();
    }

    @Test
    void aFuseOfHalfTheRatingBlowsUnderFullLoadAndTheRightOneDoesNot() {
        HarnessPlant wrong = plant(HarnessFault.WRONG_FUSE.applyTo(HEALTHY, Severity.MODERATE));
        HarnessPlant right = plant(HEALTHY);

        wrong.step(30, new double[] {1}, true);
        right.step(600, new double[] {1}, true);

        assertThat(wrong.fuseBlown()).isTrue();
        assertThat(right.fuseBlown()).isFalse();
    }

    @Test
    void withoutSupplyThereIsNothingToRead() {
        PlantReading reading = plant(HEALTHY).step(1, new double[] {1}, false);

        assertThat(reading.amps()).isZero();
        assertThat(reading.voltsAtPins()).isZero();
        assertThat(reading.edgeOffsetsSeconds()).hasDimensions(2, 0);
    }

    @Test
    void aProbeBeyondTheHarnessIsRefused() {
        assertThatThrownBy(() -> plant(HEALTHY).probe(10, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("probe 10.0000 is outside 0.00000 to 9.00000");
    }

    @Test
    void theSameSeedGivesTheSameOutputToTheBit() {
        assertThat(trace(3)).isEqualTo(trace(3)).isNotEqualTo(trace(4));
    }

    private static List<List<Double>> trace(long seed) {
        HarnessPlant plant = new HarnessPlant(
                HarnessFault.LOOSE_PIN.applyTo(HEALTHY, Severity.SEVERE), SensorErrors.drawn(seed), seed);
        List<List<Double>> trace = new ArrayList<>();
        for (int i = 0; i < 3000; i++) {
            PlantReading r = plant.step(0.01, new double[] {0.6}, true);
            trace.add(List.of(r.amps(), r.voltsAtPins()));
        }
        return trace;
    }

    private static HarnessPlant plant(HarnessParameters p) {
        return new HarnessPlant(p, SensorErrors.none(), 1);
    }

    private static double peak(HarnessPlant plant, double seconds) {
        double peak = 0;
        for (int i = 0; i < seconds * 100; i++) {
            peak = Math.max(peak, plant.step(0.01, new double[] {0.5}, true).amps());
        }
        return peak;
    }

    private static int openings(HarnessPlant plant) {
        int openings = 0;
        boolean before = true;
        for (int i = 0; i < 60_000; i++) {
            boolean now = plant.step(0.01, new double[] {0.5}, true).amps() > 1;
            openings += before && !now ? 1 : 0;
            before = now;
        }
        return openings;
    }
}
