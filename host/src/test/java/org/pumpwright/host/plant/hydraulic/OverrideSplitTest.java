package org.pumpwright.host.plant.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.plant.Severity;

/** Electrical command against mechanical override: which half of the unit is at fault (common practice, no source). */
class OverrideSplitTest {

    private static final HydraulicParameters HEALTHY = HydraulicParameters.healthy();

    /** What the command and the override do, as shares of the healthy flow at 60 % command or override fully in. */
    private record Split(double command, double override, double atZeroCommand) {
        static Split of(HydraulicParameters p) {
            return new Split(
                    share(p, 0.6, 0),
                    share(p, 0, 1),
                    HydraulicSteadyState.of(p, 0, Direction.UP).flowM3PerSecond());
        }

        private static double share(HydraulicParameters p, double duty, double override) {
            return HydraulicSteadyState.of(p, duty, Direction.UP, override).flowM3PerSecond()
                    / HydraulicSteadyState.of(HEALTHY, duty, Direction.UP, override)
                            .flowM3PerSecond();
        }
    }

    @Test
    void noFlowByCommandAndGoodFlowByOverrideIsElectrical() {
        Split split = Split.of(HydraulicFault.COIL_OPEN.applyTo(HEALTHY, Severity.MODERATE));

        assertThat(split.command()).isZero();
        assertThat(split.override()).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource(names = {"SPOOL_SEIZED", "OIL_OFF", "COUPLING_SHEARED"})
    void noFlowEitherWayIsSpoolSupplyOrCoupling(HydraulicFault fault) {
        Split split = Split.of(fault.applyTo(HEALTHY, Severity.MODERATE));

        assertThat(split.command()).isZero();
        assertThat(split.override()).isZero();
    }

    @Test
    void flowAtZeroCommandIsASpoolHeldOpenOrAnOverrideLeftIn() {
        HydraulicParameters open = HydraulicFault.SPOOL_HELD_OPEN.applyTo(HEALTHY, Severity.MODERATE);

        assertThat(Split.of(open).atZeroCommand()).isPositive();
        assertThat(HydraulicSteadyState.of(HEALTHY, 0, Direction.UP, 0.3).flowM3PerSecond())
                .isPositive();
        assertThat(Split.of(HEALTHY).atZeroCommand()).isZero();
    }

    @ParameterizedTest
    @EnumSource(names = {"CORRODED_PLUG", "LOW_SUPPLY", "SPOOL_STICKY"})
    void lowByCommandAndFullByOverrideIsCurrentOrStiction(HydraulicFault fault) {
        Split split = Split.of(fault.applyTo(HEALTHY, Severity.SEVERE));

        assertThat(split.command()).isLessThan(0.85);
        assertThat(split.override()).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource(names = {"OIL_SHORT", "MOTOR_WORN", "SLIP"})
    void lowEitherWayIsSupplyWearOrPump(HydraulicFault fault) {
        Split split = Split.of(fault.applyTo(HEALTHY, Severity.SEVERE));

        assertThat(split.command()).isBetween(0.1, 0.92);
        assertThat(split.override()).isBetween(0.1, 0.92);
    }
}
