package org.pumpwright.host.plant.driver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.UsUnits;

class DriverPlantTest {

    private static final DriverParameters HEALTHY = DriverParameters.healthy();
    private static final DriverStand RESISTOR = DriverStand.with(DummyLoad.resistor());
    private static final DriverStand PUMP = DriverStand.with(DummyLoad.masterPump());
    private static final double ROOM = UsUnits.ZERO_CELSIUS_KELVIN + 20;

    @ParameterizedTest(name = "{0}")
    @CsvSource({"MILD, 165", "MODERATE, 300", "SEVERE, 15"})
    void theOutputsEdgesGiveItsFrequency(Severity severity, double hertz) {
        assertThat(edgesInTenSeconds(HEALTHY)).isCloseTo(1500, within(1.0));
        assertThat(edgesInTenSeconds(DriverFault.WRONG_FREQUENCY.applyTo(HEALTHY, severity)))
                .isCloseTo(10 * hertz, within(1.0));
    }

    @Test
    void aHealthyModuleStartsSoftlyAndComesToItsSteadyState() {
        DriverPlant plant = plant(HEALTHY, RESISTOR);

        double early = plant.step(0.1, new double[] {1}, true).amps();
        plant.step(1, new double[] {1}, true);
        double late = plant.step(0.1, new double[] {1}, true).amps();

        assertThat(early).isBetween(0.02 * late, 0.2 * late);
        assertThat(late).isCloseTo(DriverState.of(HEALTHY, RESISTOR, 1).loadAmps(), within(1e-9));
    }

    @Test
    void tenMinutesOfFifteenAmpsWarmTheCaseByLessThanFortyKelvin() {
        assertThat(caseRise(HEALTHY)).isBetween(5.0, 40.0);
        assertThat(caseRise(DriverFault.HIGH_RESISTANCE.applyTo(HEALTHY, Severity.SEVERE)))
                .isGreaterThan(60);
    }

    @Test
    void aShortTripsItWithinFiftyMillisecondsAndItStaysOffUntilTheCommandIsZero() {
        DriverPlant plant = plant(HEALTHY, DriverStand.with(DummyLoad.shortCircuit()));

        double first = plant.step(0.005, new double[] {1}, true).amps();
        plant.step(0.045, new double[] {1}, true);
        double after = plant.step(1, new double[] {1}, true).amps();
        plant.step(0.1, new double[] {0}, true);
        double again = plant.step(0.01, new double[] {1}, true).amps();

        assertThat(first).isPositive();
        assertThat(after).isLessThan(0.005);
        assertThat(again).isGreaterThan(0.1);
    }

    @ParameterizedTest
    @EnumSource
    void brownOutRepeatsOnceOrTwiceASecondOnTheMasterPumpAndAStifferSupplyCuresIt(Severity severity) {
        DriverParameters faulty = DriverFault.BROWN_OUT.applyTo(HEALTHY, severity);

        assertThat(startsInTenSeconds(faulty, PUMP)).isBetween(10, 20);
        assertThat(startsInTenSeconds(faulty, PUMP.withFeed(13.8, 0.002))).isEqualTo(1);
        assertThat(startsInTenSeconds(HEALTHY, PUMP)).isEqualTo(1);
        assertThat(startsInTenSeconds(faulty, RESISTOR)).isEqualTo(1);
    }

    @Test
    void aFoldbackAppearsAfterTwoMinutes() {
        DriverPlant plant = plant(DriverFault.LIMIT_LOW.applyTo(HEALTHY, Severity.SEVERE), PUMP);

        plant.step(60, new double[] {1}, true);
        double cold = plant.step(1, new double[] {1}, true).amps();
        plant.step(90, new double[] {1}, true);
        double hot = plant.step(1, new double[] {1}, true).amps();

        assertThat(cold).isCloseTo(8, within(0.01));
        assertThat(hot).isCloseTo(4.8, within(0.01));
    }

    @Test
    void belowItsBrownOutVoltageThereIsNoFalseOutput() {
        DriverPlant low = plant(HEALTHY, RESISTOR.withFeed(7, 0.05));
        DriverPlant nine = plant(HEALTHY, RESISTOR.withFeed(9, 0.05));

        low.step(1, new double[] {1}, true);
        nine.step(1, new double[] {1}, true);

        assertThat(low.step(5, new double[] {1}, true).amps()).isLessThan(0.05);
        assertThat(nine.step(5, new double[] {1}, true).amps()).isGreaterThan(4);
    }

    @Test
    void aCrackDropsTheOutputMoreOftenWhenWarm() {
        DriverParameters cracked = DriverFault.CRACK.applyTo(HEALTHY, Severity.SEVERE);
        DriverStand fifteen = DriverStand.with(DummyLoad.fifteenAmps());

        int cool = dropouts(cracked, RESISTOR);
        int warm = dropouts(cracked, fifteen);

        // Five a minute over twenty minutes cold; the case of the warm one comes to some 20 K.
        assertThat(cool).isBetween(50, 150);
        assertThat(warm).isGreaterThan((int) (1.2 * cool));
        assertThat(dropouts(HEALTHY, fifteen)).isZero();
    }

    @Test
    void theReportedCurrentIsOffByItsSensesOffset() {
        DriverPlant plant = plant(DriverFault.SENSE_OFFSET.applyTo(HEALTHY, Severity.MODERATE), RESISTOR);
        plant.step(2, new double[] {0.5}, true);

        double amps = plant.step(0.1, new double[] {0.5}, true).amps();

        assertThat(plant.reportedAmps() - amps).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void theProbeAndTheCurrentSensorCanBeMoved() {
        DriverPlant plant = plant(HEALTHY, RESISTOR);
        plant.step(2, new double[] {1}, true);
        double supply = plant.step(0.1, new double[] {1}, true).voltsAtPins();
        plant.probe(DriverProbe.OUTPUT_PINS);
        double output = plant.step(0.1, new double[] {1}, true).voltsAtPins();
        plant.probe(DriverProbe.GROUND_PIN);
        double lift = plant.step(0.1, new double[] {1}, true).voltsAtPins();
        double load = plant.step(0.1, new double[] {1}, true).amps();
        plant.measureAmpsInLoadLead(false);

        assertThat(supply - output - lift).isCloseTo(0.015 * load, within(1e-6));
        assertThat(plant.step(0.1, new double[] {1}, true).amps() - load).isCloseTo(0.040, within(1e-9));
        plant.probe(DriverProbe.PEAK);
        assertThat(plant.step(0.1, new double[] {1}, true).voltsAtPins()).isCloseTo(14.5, within(1e-9));
    }

    @Test
    void theContactorStopsAShortedSwitch() {
        DriverPlant plant = plant(DriverFault.STUCK_ON.applyTo(HEALTHY, Severity.MODERATE), RESISTOR);

        assertThat(plant.step(1, new double[] {0}, true).amps()).isGreaterThan(6);
        assertThat(plant.step(1, new double[] {0}, false).amps()).isZero();
    }

    @Test
    void theSameSeedGivesTheSameOutputToTheBit() {
        assertThat(trace(3)).isEqualTo(trace(3)).isNotEqualTo(trace(4));
    }

    @Test
    void aStepWithoutADutyIsRefused() {
        assertThatThrownBy(() -> plant(HEALTHY, RESISTOR).step(1, new double[0], true))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no duty given: drive 0 is the module's command");
    }

    private static DriverPlant plant(DriverParameters p, DriverStand stand) {
        return new DriverPlant(p, stand, SensorErrors.none(), 1);
    }

    private static double edgesInTenSeconds(DriverParameters p) {
        DriverPlant plant = plant(p, RESISTOR);
        plant.step(1, new double[] {0.5}, true);
        int count = 0;
        for (int i = 0; i < 1000; i++) {
            count += plant.step(0.01, new double[] {0.5}, true).edgeOffsetsSeconds()[1].length;
        }
        return count;
    }

    private static double caseRise(DriverParameters p) {
        DriverPlant plant = plant(p, DriverStand.with(DummyLoad.fifteenAmps()));
        return plant.step(600, new double[] {1}, true).waterTemperatureKelvin() - ROOM;
    }

    /** How often the load's current begins anew. */
    private static int startsInTenSeconds(DriverParameters p, DriverStand stand) {
        DriverPlant plant = plant(p, stand);
        int starts = 0;
        boolean before = false;
        for (int i = 0; i < 2000; i++) {
            boolean now = plant.step(0.005, new double[] {1}, true).amps() > 0.05;
            starts += now && !before ? 1 : 0;
            before = now;
        }
        return starts;
    }

    private static int dropouts(DriverParameters p, DriverStand stand) {
        DriverPlant plant = plant(p, stand);
        plant.step(1200, new double[] {1}, true);
        int dropouts = 0;
        boolean before = true;
        for (int i = 0; i < 60_000; i++) {
            boolean now = plant.step(0.02, new double[] {1}, true).amps() > 1;
            dropouts += before && !now ? 1 : 0;
            before = now;
        }
        return dropouts;
    }

    private static List<Object> trace(long seed) {
        DriverPlant plant = new DriverPlant(
                DriverFault.CRACK.applyTo(HEALTHY, Severity.SEVERE), RESISTOR, SensorErrors.drawn(seed), seed);
        List<Object> trace = new ArrayList<>();
        for (int i = 0; i < 3000; i++) {
            PlantReading r = plant.step(0.01, new double[] {0.5}, true);
            trace.add(List.of(r.amps(), r.voltsAtPins(), r.waterTemperatureKelvin(), r.edgeOffsetsSeconds()[1].length));
        }
        return trace;
    }
}
