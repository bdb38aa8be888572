package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.pumpwright.host.plant.UsUnits.PSI;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class OperatingCurveTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();
    private static final double COLD = UsUnits.ZERO_CELSIUS_KELVIN + 20;

    @Test
    void aStandingShaftMustOvercomeThePressureTrappedInTheHoseToo() {
        OperatingCurve curve = new OperatingCurve(HEALTHY, 0.2, COLD, 0);

        assertThat(curve.breaksAway(0)).isTrue();
        assertThat(curve.breaksAway(44 * PSI)).isFalse();
    }

    @Property(seed = "20260101")
    void morePressureNeverGivesMoreFlowOrSpeed(
            @ForAll @DoubleRange(min = 0.2, max = 1) double duty,
            @ForAll @DoubleRange(min = 0, max = 100) double a,
            @ForAll @DoubleRange(min = 0, max = 100) double b) {
        OperatingCurve curve = new OperatingCurve(HEALTHY, duty, COLD, 0);

        OperatingPoint low = curve.turningAt(Math.min(a, b) * PSI);
        OperatingPoint high = curve.turningAt(Math.max(a, b) * PSI);

        assertThat(high.flowM3PerSecond()).isLessThanOrEqualTo(low.flowM3PerSecond());
        assertThat(high.speedRadPerSecond()).isLessThanOrEqualTo(low.speedRadPerSecond());
    }

    @Test
    void whereTheInletBeginsToStarveSpeedAndAmpsJoinWithoutAStep() {
        double pressure = 20 * PSI;
        OperatingPoint full = new OperatingCurve(HEALTHY, 1, COLD, 0).turningAt(pressure);
        double ceiling = full.flowM3PerSecond() * (1 - 1e-9);
        PumpParameters starving = HEALTHY.withHead(HEALTHY.head().withFilling(0, 0, ceiling));

        OperatingPoint starved = new OperatingCurve(starving, 1, COLD, 0).turningAt(pressure);

        assertThat(starved.flowM3PerSecond()).isEqualTo(ceiling);
        assertThat(starved.speedRadPerSecond()).isCloseTo(full.speedRadPerSecond(), within(1e-5));
        assertThat(starved.motorAmps()).isCloseTo(full.motorAmps(), within(1e-5));
    }

    @Test
    void aSwingingCurrentStaysWithinTheSuppliesLimit() {
        OperatingCurve curve = new OperatingCurve(HEALTHY, 0.5, COLD, 0);

        assertThat(curve.withRipple(new OperatingPoint(100, 1e-4, MotorCurrent.steady(10, 0.5)), 1.5)
                        .motorAmps())
                .isEqualTo(15);
        assertThat(curve.withRipple(new OperatingPoint(100, 1e-4, MotorCurrent.steady(60, 0.5)), 1.5)
                        .motorAmps())
                .as("35 A in the lead at half duty")
                .isEqualTo(70);
    }
}
