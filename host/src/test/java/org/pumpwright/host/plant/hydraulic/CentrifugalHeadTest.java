package org.pumpwright.host.plant.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;
import static org.pumpwright.host.plant.UsUnits.PSI;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.UsUnits;

class CentrifugalHeadTest {

    private static final HydraulicParameters HEALTHY = HydraulicParameters.centrifugal();
    private static final double NOZZLE = UsUnits.nozzle(3.9);

    /** The affinity laws (textbook): flow as n, pressure as n^2, power as n^3. */
    @Property(seed = "20260301", tries = 100)
    void theAffinityLawsHold(@ForAll @DoubleRange(min = 50, max = 500) double speed) {
        LoadPoint one = HEALTHY.head().against(speed, NOZZLE);
        LoadPoint two = HEALTHY.head().against(2 * speed, NOZZLE);

        assertThat(two.flowM3PerSecond() / one.flowM3PerSecond()).isCloseTo(2, within(1e-9));
        assertThat(two.pressurePa() / one.pressurePa()).isCloseTo(4, within(1e-9));
        assertThat(two.shaftNewtonMetre() * 2 / one.shaftNewtonMetre()).isCloseTo(8, within(1e-9));
    }

    @Test
    void shutOffIsAHundredAndTenPsiAtFourThousandTurns() {
        LoadPoint shut = HEALTHY.head().against(4000 * Math.PI / 30, 0);

        assertThat(shut.flowM3PerSecond()).isZero();
        assertThat(shut.pressurePa() / PSI).isCloseTo(110, within(1e-9));
    }

    @Test
    void theNozzleSetsTheFlowOfTheWholeUnit() {
        HydraulicSteadyState full = HydraulicSteadyState.of(HEALTHY, 1, Direction.UP);

        assertThat(full.speedRadPerSecond() * 30 / Math.PI).isBetween(3500.0, 4500.0);
        assertThat(full.flowM3PerSecond() / GALLON_PER_MINUTE).isBetween(30.0, 38.0);
    }

    @ParameterizedTest
    @EnumSource
    void aWornImpellerLowersPressureOverSpeedSquaredByTheSameRatioEverywhere(Severity severity) {
        ProductHead worn =
                HydraulicFault.IMPELLER_WORN.applyTo(HEALTHY, severity).head();

        double slow = worn.against(150, 0).pressurePa()
                / HEALTHY.head().against(150, 0).pressurePa();
        double fast = worn.against(420, 0).pressurePa()
                / HEALTHY.head().against(420, 0).pressurePa();

        assertThat(slow).isCloseTo(severity.pick(0.92, 0.80, 0.60), within(1e-9));
        assertThat(fast).isCloseTo(slow, within(1e-9));
    }

    @Test
    void aLooseImpellerIsHealthyBelowItsTorqueAndCollapsesAbove() {
        ProductHead loose = HydraulicFault.IMPELLER_LOOSE
                .applyTo(HEALTHY, Severity.MODERATE)
                .head();

        assertThat(loose.against(150, NOZZLE)).isEqualTo(HEALTHY.head().against(150, NOZZLE));
        assertThat(loose.against(420, NOZZLE).pressurePa())
                .isLessThan(0.8 * HEALTHY.head().against(420, NOZZLE).pressurePa());
        assertThat(loose.against(420, NOZZLE).shaftNewtonMetre()).isCloseTo(2, within(1e-9));
    }
}
