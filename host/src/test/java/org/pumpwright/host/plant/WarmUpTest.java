package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The motor warming at a held duty from 20 °C, against figures computed from the model of docs/metrology/plant.md by an
 * independent program; tolerance half a unit of the printed last place.
 */
class WarmUpTest {

    @Test
    void atFullDutyTheAmpsClimbAndTheFlowHardlyMoves() {
        Bench bench = Bench.of(Bench.withoutProtector(PumpParameters.healthy()));

        assertThat(bench.hold(1, 60).amps()).as("1 min").isCloseTo(13.6, within(0.051));
        assertThat(bench.hold(1, 240).amps()).as("5 min").isCloseTo(14.5, within(0.051));
        assertThat(bench.gallonsPerMinute()).as("5 min").isCloseTo(4.03, within(0.0051));
        assertThat(bench.hold(1, 300).amps()).as("10 min").isCloseTo(15.0, within(0.051));
        assertThat(bench.gallonsPerMinute()).as("10 min").isCloseTo(4.03, within(0.0051));
        assertThat(bench.hold(1, 1200).amps()).as("30 min").isCloseTo(16.4, within(0.051));
        assertThat(bench.gallonsPerMinute()).as("30 min").isCloseTo(4.00, within(0.0051));
    }

    @ParameterizedTest(name = "{0} min")
    @CsvSource({"10, 81", "20, 104", "30, 123"})
    void atFullDutyTheWindingReachesTheseTemperatures(double minutes, double celsius) {
        Bench bench = Bench.of(Bench.withoutProtector(PumpParameters.healthy()));
        bench.hold(1, 60 * minutes);

        assertThat(bench.plant.windingKelvin() - UsUnits.ZERO_CELSIUS_KELVIN).isCloseTo(celsius, within(0.6));
    }

    @Test
    void atHalfDutyTenMinutesAddOnePercentOfFlowAndThreeOfAmps() {
        Bench bench = Bench.of(Bench.withoutProtector(PumpParameters.healthy()));
        double coldAmps = bench.hold(0.5, 8).amps();
        double coldFlow = bench.gallonsPerMinute();

        double warmAmps = bench.hold(0.5, 592).amps();

        assertThat(100 * (bench.gallonsPerMinute() / coldFlow - 1)).isCloseTo(1, within(0.5));
        assertThat(100 * (warmAmps / coldAmps - 1)).isCloseTo(3, within(0.5));
    }

    @Test
    void aMotorLeftAloneCoolsBackToItsFirstAmps() {
        PumpParameters quick =
                Bench.withoutProtector(PumpParameters.healthy()).withThermal(new ThermalParameters(18, 0.55, 19, 0.75));
        Bench bench = Bench.of(quick);
        double cold = bench.hold(1, 4).amps();
        double warm = bench.hold(1, 60).amps();
        bench.hold(0, 400);

        double again = bench.hold(1, 4).amps();

        assertThat(warm).isGreaterThan(1.1 * cold);
        assertThat(again).isCloseTo(cold, within(0.01 * cold));
    }

    @Test
    void aUnitThatStartsHotDrawsMoreFromTheFirstSecond() {
        PumpParameters p = PumpParameters.healthy();
        double kelvin = UsUnits.ZERO_CELSIUS_KELVIN + 80;
        PumpParameters hot = p.withStand(p.stand().withTemperatures(kelvin, 293));

        double amps = Bench.of(hot).hold(0.5, 5).amps();

        assertThat(amps).isCloseTo(PumpSteadyState.of(p, 0.5, kelvin).batteryAmps(), within(0.01));
    }
}
