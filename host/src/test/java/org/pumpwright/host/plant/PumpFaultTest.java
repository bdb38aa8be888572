package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PumpFaultTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();

    @Test
    void everyFaultHasItsOwnWordForACommandLine() {
        assertThat(Arrays.stream(PumpFault.values()).map(PumpFault::word))
                .doesNotHaveDuplicates()
                .allMatch(word -> word.matches("[a-z]+(-[a-z]+)*"))
                .contains("drag", "slip", "dead-chamber", "suction-air", "low-supply");
    }

    @Test
    void everyFaultIsToldInOneSentence() {
        assertThat(Arrays.stream(PumpFault.values()).map(PumpFault::sentence))
                .doesNotHaveDuplicates()
                .allMatch(sentence -> sentence.matches("[A-Z][^.]*\\."));
    }

    @Test
    void sixFaultsAreTheStands() {
        assertThat(Arrays.stream(PumpFault.values()).filter(PumpFault::ofTheStand))
                .containsExactly(
                        PumpFault.LEAD_RESISTANCE,
                        PumpFault.LOW_SUPPLY,
                        PumpFault.NOZZLE_PLUGGED,
                        PumpFault.NOZZLE_WORN,
                        PumpFault.RECIRCULATION_OPEN,
                        PumpFault.HOSES_UNPURGED);
    }

    @ParameterizedTest
    @EnumSource
    void aFaultChangesOnlyTheSideItBelongsTo(PumpFault fault) {
        for (Severity severity : Severity.values()) {
            PumpParameters p = fault.applyTo(HEALTHY, severity);
            boolean standChanged = !p.stand().equals(HEALTHY.stand());
            boolean unitChanged = !p.withStand(HEALTHY.stand()).equals(HEALTHY);

            assertThat(standChanged).isEqualTo(fault.ofTheStand());
            assertThat(unitChanged).isEqualTo(!fault.ofTheStand() && fault != PumpFault.HEALTHY);
            assertThat(p.meter()).isEqualTo(HEALTHY.meter());
        }
    }

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {
                "HEALTHY",
                "SEIZED",
                "OPEN_CIRCUIT",
                "INTERMITTENT",
                "THERMAL_PROTECTOR",
                "PRESSURE_SWITCH_LOW",
                "PRESSURE_SWITCH_STICKING",
                "COLD_STIFF",
                "POLARITY",
                "HOSES_UNPURGED"
            })
    void aGraverFaultMovesTheUnitFartherFromHealthyAtTopDuty(PumpFault fault) {
        double mild = distance(fault, Severity.MILD);
        double moderate = distance(fault, Severity.MODERATE);
        double severe = distance(fault, Severity.SEVERE);

        assertThat(moderate).isGreaterThan(mild);
        assertThat(severe).isGreaterThan(moderate);
    }

    @Test
    void severeDragStartsOnlyAboveAThirdOfFullDuty() {
        double start = PumpSteadyState.startDuty(PumpFault.DRAG.applyTo(HEALTHY, Severity.SEVERE));

        assertThat(start)
                .as("(4 T_s R + k (V_f + V_b)) / (k (V_oc + V_f) - 4 T_s R_feed)")
                .isBetween(0.343, 0.344);
    }

    @Test
    void aSeizedUnitStartsAtNoDuty() {
        PumpParameters seized = PumpFault.SEIZED.applyTo(HEALTHY, Severity.MILD);

        assertThat(PumpSteadyState.startDuty(seized)).isInfinite();
        assertThat(PumpSteadyState.of(seized, 1).speedRadPerSecond()).isZero();
    }

    @Test
    void severitiesOfAUnitFaultScaleThatUnitsOwnValues() {
        PumpParameters unit = new PumpPopulation(8).unit(8);

        PumpParameters slipping = PumpFault.SLIP.applyTo(unit, Severity.MODERATE);

        assertThat(slipping.head().slipM3PerSecondPascal())
                .isEqualTo(20 * unit.head().slipM3PerSecondPascal());
        assertThat(slipping.head().backflowM3PerRadian())
                .isEqualTo(1.5 * unit.head().backflowM3PerRadian());
    }

    /** Relative distance of flow, amps and pin volts together. */
    private static double distance(PumpFault fault, Severity severity) {
        PumpSteadyState a = PumpSteadyState.of(HEALTHY, 1);
        PumpSteadyState b = PumpSteadyState.of(fault.applyTo(HEALTHY, severity), 1);
        return Math.abs(b.flowM3PerSecond() / a.flowM3PerSecond() - 1)
                + Math.abs(b.batteryAmps() / a.batteryAmps() - 1)
                + Math.abs(b.terminalVolts() / a.terminalVolts() - 1);
    }
}
