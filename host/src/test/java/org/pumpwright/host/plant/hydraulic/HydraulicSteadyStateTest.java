package org.pumpwright.host.plant.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.UsUnits;

/** Check values of the model, computed by an independent program in another language. */
class HydraulicSteadyStateTest {

    private static final HydraulicParameters HEALTHY = HydraulicParameters.healthy();

    @ParameterizedTest(name = "{0} duty")
    @CsvSource({
        "0.25, 0.66, 0.005, 2.4",
        "0.30, 2.97, 0.005, 4.9",
        "0.40, 8.3, 0.05, 10.4",
        "0.50, 14.0, 0.05, 16.3",
        "0.60, 20.0, 0.05, 22.2",
        "0.70, 26.0, 0.05, 28.3",
        "0.80, 32.0, 0.05, 33.4",
        "0.90, 33.4, 0.05, 33.4",
        "1.00, 33.4, 0.05, 33.4"
    })
    void theFlowOnTheWayUpAndDownIsTheTables(double duty, double up, double rounding, double down) {
        assertThat(Gallons.up(HEALTHY, duty)).isCloseTo(up, within(rounding));
        assertThat(Gallons.down(HEALTHY, duty)).isCloseTo(down, within(0.051));
    }

    @Test
    void fromNinetyPercentTheValveIsOpenAndTheUnitAtItsFullPoint() {
        HydraulicSteadyState full = HydraulicSteadyState.of(HEALTHY, 1, Direction.UP);

        assertThat(full.opening()).isEqualTo(1);
        assertThat(Gallons.psi(full.pressurePa())).isCloseTo(73, within(0.5));
        assertThat(full.speedRadPerSecond() * 30 / Math.PI).isCloseTo(555, within(0.5));
        assertThat(Gallons.psi(full.motorDropPa())).isCloseTo(316, within(0.5));
        assertThat(full.coilAmps()).isCloseTo(1.89, within(0.005));
        assertThat(HydraulicSteadyState.of(HEALTHY, 0.9, Direction.UP).coilAmps())
                .isCloseTo(1.7, within(0.05));
        assertThat(full.caseDrainM3PerSecond() / full.oilM3PerSecond()).isBetween(0.01, 0.03);
    }

    @Test
    void flowStartsAtAQuarterOfTheDutyAndTheHysteresisIsSevenPercent() {
        assertThat(Gallons.startPercent(HEALTHY)).isEqualTo(25);
        assertThat(Gallons.hysteresisPercent(HEALTHY)).isCloseTo(7, within(0.5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.5, 0.7, 1.0})
    void aCompensatedValveHoldsTheFlowWithinThreeToEightPercentWhenTheNozzleIsPlugged(double duty) {
        double nozzle = HEALTHY.stand().nozzleM3PerSecondRootPascal();
        HydraulicParameters plugged = HEALTHY.withStand(HEALTHY.stand().withNozzle(0.6 * nozzle));

        assertThat(Gallons.changePercent(plugged, duty)).isBetween(-8.0, 0.0);
    }

    @Test
    void againstAShutOutletThePressureIsWhatOilSupplyOrReliefAllow() {
        HydraulicParameters shut = HEALTHY.withStand(HEALTHY.stand().withNozzle(0));
        HydraulicParameters relieved = shut.withMotor(shut.motor().withRelief(500 * UsUnits.PSI));

        HydraulicSteadyState state = HydraulicSteadyState.of(relieved, 1, Direction.UP);

        assertThat(state.flowM3PerSecond()).isZero();
        assertThat(Gallons.psi(state.motorDropPa())).isCloseTo(500, within(0.01));
        assertThat(HydraulicSteadyState.of(shut, 1, Direction.UP).motorDropPa())
                .isGreaterThan(state.motorDropPa())
                .isLessThanOrEqualTo(shut.motor().reliefPascal() * (1 + 1e-9));
    }

    @Test
    void noDutyAndNoOverrideIsNoFlowAndNoOil() {
        HydraulicSteadyState rest = HydraulicSteadyState.of(HEALTHY, 0, Direction.UP);

        assertThat(rest.flowM3PerSecond()).isZero();
        assertThat(rest.oilM3PerSecond()).isZero();
        assertThat(rest.coilAmps()).isZero();
    }

    @Test
    void withoutOilTheMotorHasNoDropAndTheSupplyNoPressureForIt() {
        HydraulicParameters dry = HydraulicFault.OIL_OFF.applyTo(HEALTHY, Severity.MILD);
        HydraulicSteadyState state = HydraulicSteadyState.of(dry, 1, Direction.UP);

        assertThat(state.motorDropPa()).isZero();
        assertThat(state.supplyPa()).isZero();
        assertThat(state.caseDrainM3PerSecond()).isZero();
    }

    @Test
    void anOverrideBeyondItsTravelIsRefused() {
        assertThatThrownBy(() -> HydraulicSteadyState.of(HEALTHY, 0, Direction.UP, 1.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("override 1.50000 is outside 0.00000 to 1.00000");
    }
}
