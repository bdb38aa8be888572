package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The motor inside the pump against textbook direct-current motors: ideal supply, no brush drop, full duty, the load
 * put on as pressure on the head.
 */
class MotorTextbookTest {

    private static final double NO_FRICTION = 0;

    /**
     * Back-EMF exercises of college physics courses, published numbers: 6 V toy motor with 4.5 V at 3 A; 115 V motor
     * starting at 21.5 A; 460 V and 0.15 ohm at 120 A and at 84 A; 120 V across 13 ohm; 48 V and 0.4 ohm (this one from
     * memory of an open college text); 120 V, 7 A, 0.72 ohm.
     */
    @ParameterizedTest(name = "{0} V, {1} ohm, {2} A")
    @CsvSource({
        "6, 0.5, 3.00, 4.50, 12.0, 0.005",
        "115, 5.3488, 6.5, 80.23, 21.5, 0.005",
        "460, 0.15, 120, 442, 3066.7, 0.05",
        "460, 0.15, 84, 447.4, 3066.7, 0.05",
        "120, 13, 4.1538, 66, 9.23, 0.005",
        "48, 0.4, 20, 40, 120, 0.005",
        "120, 0.72, 7, 114.96, 166.67, 0.005"
    })
    void backEmfAndStartingCurrentAreThoseOfTheExercise(
            double volts, double ohms, double amps, double backEmf, double startAmps, double printed) {
        double constant = 0.1;
        PumpParameters motor = ideal(volts, ohms, constant, NO_FRICTION);

        PumpSteadyState running = PumpSteadyState.atPressure(motor, 1, pressureFor(motor, constant * amps));
        PumpSteadyState blocked = PumpSteadyState.of(PumpFault.SEIZED.applyTo(motor, Severity.MILD), 1);

        assertThat(running.motorAmps()).isCloseTo(amps, within(1e-3 * amps));
        assertThat(constant * running.speedRadPerSecond()).isCloseTo(backEmf, within(printed));
        assertThat(blocked.motorAmps()).isCloseTo(startAmps, within(1e-4 * startAmps));
    }

    /**
     * A course exercise gives a 12 V permanent-magnet motor with 3800 rpm no-load speed and 30 mN·m stall torque; its
     * answers at 2500 rpm follow from the straight lines of the ideal motor.
     */
    @ParameterizedTest(name = "{1} rpm")
    @CsvSource({"0, 3800, 0", "0.0102632, 2500, 0.34034", "0.03, 0, 0.99484"})
    void speedAndCurrentLieOnStraightLinesBetweenNoLoadAndStall(double torque, double rpm, double amps) {
        double constant = 12 / (3800 * Math.PI / 30);
        PumpParameters motor = ideal(12, 12 * constant / 0.03, constant, NO_FRICTION);

        PumpSteadyState s = PumpSteadyState.atPressure(motor, 1, pressureFor(motor, torque));

        assertThat(Bench.rpm(s)).isCloseTo(rpm, within(0.05));
        assertThat(s.motorAmps()).isCloseTo(amps, within(1e-4));
    }

    /**
     * A course exercise gives 0.12 N·m/A and 12 V per 1000 rpm (0.114592 V·s/rad), 1.5 ohm, 10 V. The two constants of
     * one motor cannot differ, so its torques belong to a motor of the first and its speeds to one of the second.
     */
    @Test
    void whereAnExerciseGivesTwoConstantsTorqueFollowsTheOneAndSpeedTheOther() {
        PumpParameters byTorque = ideal(10, 1.5, 0.12, NO_FRICTION);
        PumpParameters bySpeed = ideal(10, 1.5, 12 / (1000 * Math.PI / 30), NO_FRICTION);

        PumpSteadyState loaded = PumpSteadyState.atPressure(byTorque, 1, pressureFor(byTorque, 0.6));
        PumpSteadyState stalled = PumpSteadyState.atPressure(byTorque, 1, pressureFor(byTorque, 0.8));
        PumpSteadyState free = PumpSteadyState.atPressure(bySpeed, 1, 0);
        double fiveAmpsTorque = 5 * bySpeed.motor().torqueConstant();
        PumpSteadyState atFive = PumpSteadyState.atPressure(bySpeed, 1, pressureFor(bySpeed, fiveAmpsTorque));

        assertThat(loaded.motorAmps()).isCloseTo(5.0, within(1e-4));
        assertThat(stalled.motorAmps()).isCloseTo(6.6667, within(1e-4));
        assertThat(Bench.rpm(free)).isCloseTo(833.333, within(0.01));
        assertThat(Bench.rpm(atFive)).isCloseTo(208.333, within(0.01));
    }

    /** Textbook, from memory: efficiency is best at the root of no-load times stall current, (1 - sqrt(I0/Is))^2. */
    @Test
    void efficiencyIsBestAtTheGeometricMeanOfNoLoadAndStallCurrent() {
        PumpParameters motor = ideal(12, 0.30, 0.030, 0.045);
        double bestAmps = Math.sqrt(1.5 * 40);

        double best = efficiency(motor, bestAmps);

        assertThat(best).isCloseTo(Math.pow(1 - Math.sqrt(1.5 / 40), 2), within(1e-4));
        assertThat(efficiency(motor, bestAmps * 0.9)).isLessThan(best);
        assertThat(efficiency(motor, bestAmps * 1.1)).isLessThan(best);
    }

    private static double efficiency(PumpParameters motor, double amps) {
        double torque = 0.030 * amps - 0.045;
        PumpSteadyState s = PumpSteadyState.atPressure(motor, 1, pressureFor(motor, torque));
        return torque * s.speedRadPerSecond() / (12 * s.motorAmps());
    }

    /** 12 V, 0.30 ohm, 0.030 V·s/rad, 0.045 N·m of friction; worked out by hand from the two equations, not published. */
    @ParameterizedTest(name = "{0} N·m")
    @CsvSource({
        "0, 1.5, 3676.48",
        "0.1, 4.8333, 3358.17",
        "0.2, 8.1667, 3039.86",
        "0.3, 11.5, 2721.55",
        "0.45, 16.5, 2244.08"
    })
    void frictionAddsToTheLoad(double torque, double amps, double rpm) {
        PumpParameters motor = ideal(12, 0.30, 0.030, 0.045);

        PumpSteadyState s = PumpSteadyState.atPressure(motor, 1, pressureFor(motor, torque));

        assertThat(s.motorAmps()).isCloseTo(amps, within(1e-4));
        assertThat(Bench.rpm(s)).isCloseTo(rpm, within(0.01));
    }

    private static PumpParameters ideal(double volts, double ohms, double constant, double friction) {
        double leastViscous = 1e-12;
        StandParameters s = StandParameters.inOrder();
        StandParameters stiff = new StandParameters(
                volts,
                0,
                0,
                10_000,
                0,
                s.driveHertz(),
                s.leadDoublesWatts(),
                s.nozzleM3PerSecondRootPascal(),
                0,
                s.lineSettlingSeconds(),
                s.ambientKelvin(),
                s.waterKelvin(),
                s.lines());
        return PumpParameters.healthy()
                .withStand(stiff)
                .withMotor(new MotorParameters(ohms, 0, constant, friction, friction, leastViscous, 0, 0, 0));
    }

    private static double pressureFor(PumpParameters p, double torque) {
        return torque * p.head().torqueEfficiency() / p.head().displacementM3PerRadian();
    }
}
