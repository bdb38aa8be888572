package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The healthy unit on slow drives. Check values by a time-domain simulation in another language, with inductance,
 * rotor inertia and hose as in docs/metrology/plant.md; that one lets the speed swing within a period, which the closed
 * form does not.
 */
class PulsedDriveTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();

    @ParameterizedTest(name = "{0} Hz at {1} %")
    @CsvSource({
        "100, 20, 2.02, 4.1",
        "100, 30, 2.59, 6.1",
        "100, 50, 3.25, 9.1",
        "100, 75, 3.68, 11.2",
        "250, 20, 1.63, 2.4",
        "250, 30, 2.24, 4.1",
        "250, 50, 2.98, 7.1",
        "250, 75, 3.50, 9.8",
        "1000, 20, 0.84, 0.9",
        "1000, 30, 1.46, 1.7",
        "1000, 50, 2.25, 3.5",
        "1000, 75, 3.12, 6.9",
        "5000, 20, 0.48, 0.5",
        "5000, 30, 1.05, 1.0",
        "5000, 50, 2.06, 2.7",
        "5000, 75, 3.08, 6.5"
    })
    void flowAndAmpsAreThoseOfTheTimeDomainSimulation(double hertz, double percent, double gpm, double amps) {
        PumpSteadyState s = PumpSteadyState.of(Bench.withDriveAt(HEALTHY, hertz), percent / 100);

        assertThat(Bench.gpm(s)).isCloseTo(gpm, within(0.005 + 0.015 * gpm));
        assertThat(s.batteryAmps()).isCloseTo(amps, within(0.05 + 0.05 * amps));
    }

    @ParameterizedTest(name = "{0} Hz")
    @CsvSource({"100, 17, 31", "250, 17, 23", "1000, 8, 14", "5000, 3.3, 10"})
    void thePeakCurrentLiesInTheRangeOfTheSimulation(double hertz, double least, double most) {
        for (double duty : new double[] {0.2, 0.3, 0.5, 0.75}) {
            PumpSteadyState s = PumpSteadyState.of(Bench.withDriveAt(HEALTHY, hertz), duty);

            assertThat(s.motorPeakAmps()).isBetween(least, most);
        }
    }

    @ParameterizedTest(name = "{0} %")
    @CsvSource({"20", "30", "50", "75", "95"})
    void atFiveKilohertzItAgreesWithTheAveragedDrive(double percent) {
        PumpSteadyState pulsed = PumpSteadyState.of(Bench.withDriveAt(HEALTHY, 5000), percent / 100);
        PumpSteadyState averaged = PumpSteadyState.of(HEALTHY, percent / 100);

        assertThat(pulsed.flowM3PerSecond() / averaged.flowM3PerSecond()).isCloseTo(1, within(0.015));
        assertThat(pulsed.batteryAmps() / averaged.batteryAmps()).isCloseTo(1, within(0.05));
    }

    @Property(seed = "20260101", tries = 200)
    void theClosedFormIsWhatTheCircuitDoesStepByStep(
            @ForAll @DoubleRange(min = 60, max = 8000) double hertz,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double duty,
            @ForAll @DoubleRange(min = 0, max = 320) double speed) {
        DriveCircuit circuit = circuit(duty);

        MotorCurrent closed = new PulsedDrive(circuit, hertz).at(speed);
        MotorCurrent stepped = stepped(circuit, hertz, speed);

        double most = 1e-3 * (1 + stepped.peakAmps());
        assertThat(closed.motorAmps()).isCloseTo(stepped.motorAmps(), within(most));
        assertThat(closed.supplyAmps()).isCloseTo(stepped.supplyAmps(), within(most));
        assertThat(closed.peakAmps()).isCloseTo(stepped.peakAmps(), within(most));
        assertThat(closed.meanSquare()).isCloseTo(stepped.meanSquare(), within(most * (1 + stepped.peakAmps())));
    }

    /**
     * Peak-to-peak ripple of a continuous current, exact form {@code (V/R)(1-e^{-DT/tau})(1-e^{-(1-D)T/tau}) /
     * (1-e^{-T/tau})}; its short form V D (1-D) / (L f) gives 0.15 A for 12 V, 1 mH, 20 kHz, half duty (both textbook,
     * from memory). Ripple about the mean adds a twelfth of its square to the mean square.
     */
    @Test
    void theRippleOfAContinuousCurrentIsTheTextbooks() {
        double ohms = 0.3;
        DriveCircuit circuit =
                new DriveCircuit(0.5, new Feed(12, 0, 1e9, Double.POSITIVE_INFINITY, 0), ohms, 0, 0, 0.03, 1e-9, 1e-3);

        MotorCurrent current = new PulsedDrive(circuit, 20_000).at(0);

        double ripple = 2 * (current.peakAmps() - current.motorAmps());
        assertThat(ripple).isCloseTo(0.15, within(0.0005));
        assertThat(current.motorAmps()).isCloseTo(6 / ohms, within(1e-3));
        assertThat(current.meanSquare() - current.motorAmps() * current.motorAmps())
                .isCloseTo(0.15 * 0.15 / 12, within(2e-5));
    }

    @Test
    void theSlowerTheDriveTheMoreItPumpsAtTheSameDuty() {
        double before = PumpSteadyState.of(HEALTHY, 0.3).flowM3PerSecond();
        for (double hertz : new double[] {1000, 500, 250, 100}) {
            double flow =
                    PumpSteadyState.of(Bench.withDriveAt(HEALTHY, hertz), 0.3).flowM3PerSecond();
            assertThat(flow).isGreaterThan(before);
            before = flow;
        }
    }

    @Test
    void aPlantOnASlowDriveSettlesToItsSteadyState() {
        PumpParameters slow = Bench.withDriveAt(HEALTHY, 250);
        PlantReading r = Bench.of(slow).hold(0.3, 6);
        PumpSteadyState s = PumpSteadyState.of(slow, 0.3);

        assertThat(r.pressurePa()).isCloseTo(s.pressurePa(), within(0.01 * s.pressurePa()));
        assertThat(r.amps()).isCloseTo(s.batteryAmps(), within(0.01 * s.batteryAmps()));
    }

    @Test
    void aFastDrivesRippleDoesNotFreeAStandingShaftAndASlowOnesPulsesDo() {
        double averaged = PumpSteadyState.startDuty(HEALTHY);

        assertThat(PumpSteadyState.startDuty(Bench.withDriveAt(HEALTHY, 7812))).isCloseTo(averaged, within(0.001));
        assertThat(PumpSteadyState.startDuty(Bench.withDriveAt(HEALTHY, 250))).isLessThan(0.05);
    }

    @Test
    void onASlowDriveTheWindingHeatsMore() {
        PumpPlant slow = new PumpPlant(Bench.withDriveAt(HEALTHY, 100), SensorErrors.none(), 1);
        PumpPlant fast = new PumpPlant(HEALTHY, SensorErrors.none(), 1);
        slow.step(60, new double[] {0.5}, true);
        fast.step(60, new double[] {0.5}, true);

        assertThat(slow.windingKelvin() - 293.15).isGreaterThan(3 * (fast.windingKelvin() - 293.15));
    }

    private static DriveCircuit circuit(double duty) {
        return new OperatingCurve(Bench.withSupplyLimit(HEALTHY, 10_000), duty, UsUnits.ZERO_CELSIUS_KELVIN + 20, 0)
                .circuit();
    }

    /** Second-order steps through enough periods to have forgotten the start. */
    private static MotorCurrent stepped(DriveCircuit c, double hertz, double speed) {
        int perPeriod = 4000;
        double step = 1 / hertz / perPeriod;
        int settling = (int) Math.ceil(hertz * 12 * c.inductanceHenry() / c.armatureOhms());
        double emf = c.torqueConstant() * speed;
        double amps = 0;
        double mean = 0;
        double supply = 0;
        double square = 0;
        double peak = 0;
        for (int period = 0; period <= settling; period++) {
            for (int i = 0; i < perPeriod; i++) {
                boolean on = (i + 0.5) / perPeriod < c.duty();
                double volts =
                        on ? c.feed().openVolts() - c.brushVolts() - emf : -c.freewheelVolts() - c.brushVolts() - emf;
                double ohms = c.armatureOhms() + (on ? c.feed().ohms() : 0);
                double before = amps;
                double half = Math.max(0, amps + step / 2 * (volts - ohms * amps) / c.inductanceHenry());
                amps = Math.max(0, amps + step * (volts - ohms * half) / c.inductanceHenry());
                if (period == settling) {
                    double middle = (before + amps) / 2;
                    mean += middle / perPeriod;
                    supply += on ? middle / perPeriod : 0;
                    square += middle * middle / perPeriod;
                    peak = Math.max(peak, amps);
                }
            }
        }
        return new MotorCurrent(mean, supply, square, peak);
    }
}
