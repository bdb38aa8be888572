package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What opens the unit's circuit by itself or passes the motor by, seen from the stand. */
class CircuitFaultTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();
    private static final double[] FULL = {1};

    @Test
    void aHealthyProtectorTripsBetweenTwentyAndThirtyMinutesOfFullLoad() {
        PumpPlant plant = new PumpPlant(HEALTHY, SensorErrors.none(), 1);

        double minutes = minutesToTrip(plant);

        assertThat(minutes).isBetween(20.0, 30.0);
    }

    @ParameterizedTest(name = "{0} trips after {1} to {2} min")
    @CsvSource({"MILD, 15, 20", "MODERATE, 9, 13", "SEVERE, 3, 7"})
    void aNuisanceProtectorTripsEarlierAndTheVoltsJumpUp(Severity severity, double least, double most) {
        PumpPlant plant = new PumpPlant(PumpFault.THERMAL_PROTECTOR.applyTo(HEALTHY, severity), SensorErrors.none(), 1);

        double minutes = minutesToTrip(plant);
        PlantReading tripped = plant.step(0.1, FULL, true);

        assertThat(minutes).isBetween(least, most);
        assertThat(tripped.amps()).isCloseTo(0, within(1e-6));
        assertThat(tripped.voltsAtPins()).isCloseTo(13.8, within(1e-6));
    }

    @Test
    void aTrippedProtectorResetsByItselfWithinMinutesAndThePumpGoesOn() {
        PumpPlant plant = new PumpPlant(HEALTHY, SensorErrors.none(), 1);
        minutesToTrip(plant);
        double minutes = 0;
        while (plant.step(1, FULL, true).amps() < 1 && minutes < 60) {
            minutes += 1.0 / 60;
        }

        assertThat(minutes).isBetween(1.0, 15.0);
        assertThat(plant.windingKelvin() - UsUnits.ZERO_CELSIUS_KELVIN).isCloseTo(88, within(1.0));
    }

    @Test
    void aLowPressureSwitchCyclesOnAndOff() {
        double[] amps = ampsAtFullDuty(PumpFault.PRESSURE_SWITCH_LOW.applyTo(HEALTHY, Severity.SEVERE), 20);

        double cyclesPerSecond = crossings(amps) / 20.0;
        assertThat(cyclesPerSecond).isBetween(0.3, 3.0);
    }

    @Test
    void aSwitchSetAboveTheNozzlesPressureNeverOpens() {
        double[] amps = ampsAtFullDuty(PumpFault.PRESSURE_SWITCH_LOW.applyTo(HEALTHY, Severity.MILD), 20);

        assertThat(crossings(amps)).isZero();
        assertThat(amps[amps.length - 1]).isGreaterThan(12);
    }

    @Test
    void theUsualSwitchCutsOutBetweenFiftyFiveAndSixtyFivePsiAgainstAClosedOutlet() {
        PumpParameters p = HEALTHY.withCircuit(HEALTHY.circuit().withPressureSwitch(PressureSwitchParameters.usual()));
        PumpPlant plant = new PumpPlant(p, SensorErrors.none(), 1);
        plant.turnOutletValve(0);
        double highest = IntStream.range(0, 500)
                .mapToDouble(i -> plant.step(0.01, FULL, true).pressurePa())
                .max()
                .orElseThrow();
        PlantReading last = plant.step(0.01, FULL, true);

        assertThat(highest / UsUnits.PSI).isBetween(60.0, 75.0);
        assertThat(last.amps()).as("it stays off while the pressure is trapped").isCloseTo(0, within(1e-6));
    }

    @Test
    void aSwitchThatSticksForGoodEndsInAUnitThatDoesNothing() {
        double[] amps = ampsAtFullDuty(PumpFault.PRESSURE_SWITCH_STICKING.applyTo(HEALTHY, Severity.SEVERE), 10);

        assertThat(amps[20]).isPositive();
        assertThat(IntStream.range(200, 1000).mapToDouble(i -> amps[i]).max().orElseThrow())
                .isLessThan(1e-6);
    }

    @ParameterizedTest(name = "{0}: {1} a minute")
    @CsvSource({"MILD, 0.2", "MODERATE, 1", "SEVERE, 5"})
    void anIntermittentUnitDropsOutAsOftenAsStated(Severity severity, double perMinute) {
        int minutes = 300;
        PumpPlant plant = intermittent(severity);
        int openings = openings(plant, minutes);

        double warmer = plant.windingKelvin() - 293.15;
        double rate = perMinute * Math.pow(2, warmer / 20);
        double expected = minutes * 60 / (60 / rate + 0.529);
        assertThat(warmer).isBetween(0.0, 10.0);
        assertThat((double) openings).isCloseTo(expected, within(4 * Math.sqrt(expected) + 0.05 * expected));
    }

    @Test
    void wigglingTheWireMakesAMildOneShowItselfWithinAMinuteOrTwo() {
        PumpPlant plant = intermittent(Severity.MILD);
        plant.wiggle(true);

        assertThat(openings(plant, 5)).isGreaterThanOrEqualTo(5);
    }

    @Test
    void aWarmWindingMakesDropOutsMoreFrequent() {
        LooseContactParameters loose = LooseContactParameters.opening(1);

        assertThat(loose.provoked(293.15 + 40, false)).isCloseTo(4, within(1e-9));
    }

    @Test
    void aShortToTheCaseDrawsCurrentPastTheMotorAndSagsTheSupply() {
        double volts = 14;
        for (Severity severity : Severity.values()) {
            PumpSteadyState s = PumpSteadyState.of(PumpFault.SHORT_TO_CASE.applyTo(HEALTHY, severity), 1);

            assertThat(s.batteryAmps() - s.motorAmps())
                    .as("leak of " + severity)
                    .isCloseTo(s.terminalVolts() / leakOhms(severity), within(1e-6));
            assertThat(s.terminalVolts()).isLessThan(volts);
            volts = s.terminalVolts();
        }
        assertThat(volts).as("deep sag at the supply's limit").isBetween(2.0, 5.0);
    }

    @Test
    void swappedLeadsChangeNothingThatTheStandMeasures() {
        PumpParameters swapped = PumpFault.POLARITY.applyTo(HEALTHY, Severity.SEVERE);

        assertThat(PumpSteadyState.of(swapped, 0.6)).isEqualTo(PumpSteadyState.of(HEALTHY, 0.6));
        assertThat(swapped.arrival().findings()).containsExactly(Finding.LEADS_SWAPPED);
    }

    @ParameterizedTest
    @EnumSource(
            value = PumpFault.class,
            names = {"TORN_DIAPHRAGM", "SEIZED", "OPEN_CIRCUIT", "SHORT_TO_CASE", "COLD_STIFF", "WARM", "POLARITY"})
    void whatAnInspectionFindsIsSaidInASentence(PumpFault fault) {
        assertThat(fault.applyTo(HEALTHY, Severity.MILD).arrival().findings())
                .hasSize(1)
                .allMatch(finding -> finding.sentence().endsWith("."));
    }

    private static double leakOhms(Severity severity) {
        return PumpFault.SHORT_TO_CASE.applyTo(HEALTHY, severity).circuit().caseLeakOhms();
    }

    private static double minutesToTrip(PumpPlant plant) {
        double minutes = 0;
        while (plant.step(1, FULL, true).amps() > 1 && minutes < 60) {
            minutes += 1.0 / 60;
        }
        return minutes;
    }

    private static double[] ampsAtFullDuty(PumpParameters p, int seconds) {
        PumpPlant plant = new PumpPlant(p, SensorErrors.none(), 4);
        return IntStream.range(0, seconds * 100)
                .mapToDouble(i -> plant.step(0.01, FULL, true).amps())
                .toArray();
    }

    /** Falls from above 5 A to below 1 A, chatter of the contact counted once. */
    private static int crossings(double[] amps) {
        int falls = 0;
        boolean on = false;
        int quiet = 0;
        for (double a : amps) {
            quiet = a < 1 ? quiet + 1 : 0;
            on = on || a > 5;
            if (on && quiet == 4) {
                falls++;
                on = false;
            }
        }
        return falls;
    }

    private static PumpPlant intermittent(Severity severity) {
        return new PumpPlant(PumpFault.INTERMITTENT.applyTo(HEALTHY, severity), SensorErrors.none(), 9);
    }

    private static int openings(PumpPlant plant, int minutes) {
        double[] duty = {0.2};
        plant.step(3, duty, true);
        int openings = 0;
        boolean was = false;
        for (int i = 0; i < minutes * 60 * 50; i++) {
            boolean open = plant.step(0.02, duty, true).amps() < 0.05;
            openings += open && !was ? 1 : 0;
            was = open;
        }
        return openings;
    }
}
