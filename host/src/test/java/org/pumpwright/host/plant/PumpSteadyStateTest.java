package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;
import static org.pumpwright.host.plant.UsUnits.PSI;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Check tables computed from the averaged model stated in docs/metrology/plant.md by an independent program in another
 * language (a bracketing root finder over pressure in psi); tolerances are half a unit of the printed last place.
 */
class PumpSteadyStateTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();

    @ParameterizedTest(name = "{0} % duty")
    @CsvSource({
        "15, 0, 0, 0, 4.28, 0.64, 13.77",
        "20, 0.48, 0.6, 263, 2.43, 0.49, 13.78",
        "30, 1.05, 3.1, 576, 3.10, 0.93, 13.75",
        "40, 1.57, 6.9, 873, 4.07, 1.63, 13.72",
        "50, 2.06, 11.8, 1155, 5.27, 2.64, 13.67",
        "60, 2.51, 17.5, 1425, 6.64, 3.99, 13.60",
        "80, 3.31, 30.45, 1936, 9.72, 7.77, 13.41",
        "100, 4.00, 44.5, 2418, 13.03, 13.03, 13.15"
    })
    void theHealthyUnitReproducesTheCheckTable(
            double percent, double gpm, double psi, double rpm, double motor, double battery, double volts) {
        PumpSteadyState s = PumpSteadyState.of(HEALTHY, percent / 100);

        assertThat(Bench.gpm(s)).isCloseTo(gpm, within(0.0051));
        assertThat(Bench.psi(s)).isCloseTo(psi, within(0.051));
        assertThat(Bench.rpm(s)).isCloseTo(rpm, within(0.51));
        assertThat(s.motorAmps()).isCloseTo(motor, within(0.0051));
        assertThat(s.batteryAmps()).isCloseTo(battery, within(0.0051));
        assertThat(s.terminalVolts()).isCloseTo(volts, within(0.0051));
    }

    @ParameterizedTest(name = "{0} psi")
    @CsvSource({"10, 5.13, 5.6", "20, 4.79, 7.8", "40, 4.15, 12.1", "60, 3.54, 16.3"})
    void atFullDutyItReproducesTheFlowAndAmpsAtAHeldPressure(double psi, double gpm, double amps) {
        PumpSteadyState s = PumpSteadyState.atPressure(HEALTHY, 1, psi * PSI);

        assertThat(Bench.gpm(s)).isCloseTo(gpm, within(0.0051));
        assertThat(s.batteryAmps()).isCloseTo(amps, within(0.051));
    }

    @Test
    void anOutletOfBareHoseGivesTheOpenFlow() {
        double bareHose = 2.95;
        StandParameters open = HEALTHY.stand().withOutlet(UsUnits.nozzle(bareHose), 0);

        PumpSteadyState s = PumpSteadyState.of(HEALTHY.withStand(open), 1);

        assertThat(Bench.gpm(s)).isCloseTo(5.36, within(0.0051));
        assertThat(s.batteryAmps()).isCloseTo(4.2, within(0.051));
    }

    @Test
    void againstAClosedOutletItReachesTheDeadHead() {
        PumpSteadyState s = PumpSteadyState.deadHead(HEALTHY, 1);

        assertThat(s.flowM3PerSecond()).isZero();
        assertThat(Bench.psi(s)).isCloseTo(94.5, within(0.051));
        assertThat(s.batteryAmps()).isCloseTo(23.8, within(0.051));
    }

    @Test
    void atADutyGridOfHalfAPercentItFirstTurnsAtFifteenAndAHalf() {
        assertThat(PumpSteadyState.of(HEALTHY, 0.150).speedRadPerSecond()).isZero();
        assertThat(PumpSteadyState.of(HEALTHY, 0.155).speedRadPerSecond()).isPositive();
    }

    @Test
    void theStartDutyIsWhereTheUnitFirstTurns() {
        double start = PumpSteadyState.startDuty(HEALTHY);

        assertThat(start).isCloseTo(0.15113, within(0.00001));
        assertThat(PumpSteadyState.of(HEALTHY, start - 1e-6).speedRadPerSecond())
                .isZero();
        assertThat(PumpSteadyState.of(HEALTHY, start + 1e-6).speedRadPerSecond())
                .isPositive();
    }

    @Test
    void aStalledHealthyMotorWouldDrawFiftyFourAmpereFromASupplyWithoutLimit() {
        PumpParameters seized = PumpFault.SEIZED.applyTo(HEALTHY, Severity.SEVERE);

        assertThat(PumpSteadyState.of(Bench.withSupplyLimit(seized, 1000), 1).batteryAmps())
                .isCloseTo(54.2, within(0.051));
    }

    @ParameterizedTest(name = "{0} % duty")
    @CsvSource({"30, 1.52, 0.79, 0.12", "50, 1.11, 1.21, 0.23", "75, 0.92, 1.32, 0.33", "100, 0.82, 1.31, 0.41"})
    void itReproducesTheSensitivitiesToSupplyAndNozzle(
            double percent, double flowVolts, double ampsVolts, double nozzle) {
        double duty = percent / 100;
        Function<Double, PumpSteadyState> feed = scale -> PumpSteadyState.of(
                HEALTHY.withStand(
                        HEALTHY.stand().withFeed(13.8 * scale, HEALTHY.stand().leadOhms())),
                duty);
        Function<Double, PumpSteadyState> outlet = scale -> PumpSteadyState.of(
                HEALTHY.withStand(HEALTHY.stand().withOutlet(UsUnits.nozzle(0.60 * scale), 0)), duty);

        assertThat(logSlope(feed, PumpSteadyState::flowM3PerSecond)).isCloseTo(flowVolts, within(0.006));
        assertThat(logSlope(feed, PumpSteadyState::batteryAmps)).isCloseTo(ampsVolts, within(0.006));
        assertThat(logSlope(outlet, PumpSteadyState::flowM3PerSecond)).isCloseTo(nozzle, within(0.006));
    }

    @Test
    void theFlowLeavesThroughNozzleAndRecirculationTogether() {
        StandParameters leaky = HEALTHY.stand().withOutlet(UsUnits.nozzle(0.6), UsUnits.nozzle(0.2));

        PumpSteadyState s = PumpSteadyState.of(HEALTHY.withStand(leaky), 0.8);
        PumpSteadyState pump = PumpSteadyState.atPressure(HEALTHY, 0.8, s.pressurePa());

        assertThat(pump.flowM3PerSecond()).isCloseTo(s.flowM3PerSecond() * 4 / 3, within(1e-12));
    }

    @Test
    void withoutDutyNothingMovesAndTheSupplyIsUnloaded() {
        PumpSteadyState s = PumpSteadyState.of(HEALTHY, 0);

        assertThat(s).isEqualTo(new PumpSteadyState(0, 0, 0, 0, 0, 0, 0, 13.8));
    }

    @ParameterizedTest(name = "{0} % duty")
    @CsvSource({"60, 5", "80, 12", "100, 20"})
    void atItsLimitTheSupplySagsAndTheAmpsStay(double percent, double limit) {
        PumpParameters limited = Bench.withSupplyLimit(HEALTHY, limit);

        PumpSteadyState s = PumpSteadyState.deadHead(limited, percent / 100);

        assertThat(s.batteryAmps()).isCloseTo(limit, within(1e-3));
        assertThat(s.terminalVolts()).isLessThan(13.8 - limit * 0.05);
        assertThat(s.speedRadPerSecond()).isPositive();
    }

    @Test
    void aSeizedUnitHoldsTheSupplyAtItsLimitWithADeepSag() {
        PumpSteadyState s = PumpSteadyState.of(PumpFault.SEIZED.applyTo(HEALTHY, Severity.MODERATE), 1);

        assertThat(s.batteryAmps()).isEqualTo(35);
        assertThat(s.terminalVolts()).as("I R + brushes").isCloseTo(35 * 0.19 + 0.8, within(1e-9));
        assertThat(s.flowM3PerSecond()).isZero();
    }

    @Test
    void anOpenCircuitDrawsNothingAndLeavesTheSupplyUp() {
        PumpSteadyState s = PumpSteadyState.of(PumpFault.OPEN_CIRCUIT.applyTo(HEALTHY, Severity.MODERATE), 1);

        assertThat(s.batteryAmps()).isCloseTo(0, within(1e-6));
        assertThat(s.terminalVolts()).isCloseTo(13.8, within(1e-6));
        assertThat(s.flowM3PerSecond()).isZero();
    }

    @Test
    void aCloggedStrainerCutsTheFlowOffAtItsCeilingAndTheAmpsFallWithThePressure() {
        PumpParameters clogged = PumpFault.STRAINER.applyTo(HEALTHY, Severity.MODERATE);

        PumpSteadyState top = PumpSteadyState.of(clogged, 1);

        assertThat(top.flowM3PerSecond()).isCloseTo(2.8 * GALLON_PER_MINUTE, within(1e-12));
        assertThat(PumpSteadyState.of(clogged, 0.9).flowM3PerSecond()).isCloseTo(top.flowM3PerSecond(), within(1e-12));
        assertThat(top.batteryAmps())
                .isLessThan(0.7 * PumpSteadyState.of(HEALTHY, 1).batteryAmps());
        assertThat(top.speedRadPerSecond())
                .isGreaterThan(PumpSteadyState.of(HEALTHY, 1).speedRadPerSecond());
        assertThat(PumpSteadyState.of(clogged, 0.5)).isEqualTo(PumpSteadyState.of(HEALTHY, 0.5));
        assertThat(Bench.psi(PumpSteadyState.deadHead(clogged, 1)))
                .isCloseTo(Bench.psi(PumpSteadyState.deadHead(HEALTHY, 1)), within(1e-6));
    }

    @Test
    void aDutyAboveOneIsRefused() {
        assertThatThrownBy(() -> PumpSteadyState.of(HEALTHY, 1.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("duty 1.50000 is outside 0.00000 to 1.00000");
    }

    private static double logSlope(Function<Double, PumpSteadyState> at, ToDoubleFunction<PumpSteadyState> what) {
        double step = 1e-3;
        double up = Math.log(what.applyAsDouble(at.apply(1 + step)));
        double down = Math.log(what.applyAsDouble(at.apply(1 - step)));
        return (up - down) / (2 * step);
    }
}
