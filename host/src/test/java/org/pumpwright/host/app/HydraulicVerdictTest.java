package org.pumpwright.host.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.hydraulic.HydraulicFault;

/** Verdicts on hydraulic pumps by the shelf's rules, on drawn units and drawn sensors. */
final class HydraulicVerdictTest {
    private static Grade grade(HydraulicFault fault, Severity severity, int number, Map<String, String> answers)
            throws Exception {
        Plan plan = KindBench.plan("valve-sweep");
        return KindBench.grade(
                KindBench.run(KindBench.plant(UnitKind.HYDRAULIC_PUMP, fault, severity, number), plan, answers), plan);
    }

    @Test
    void healthyUnitsPass() throws Exception {
        for (int number = 1; number <= 3; number++) {
            Grade grade = grade(HydraulicFault.HEALTHY, Severity.MODERATE, number, Map.of());
            assertThat(grade.verdict())
                    .as("unit %d: %s", number, grade.reasons())
                    .isEqualTo(Verdict.PASS);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            CORRODED_PLUG    | MODERATE | has not the resistance of a coil in order
            COIL_OPEN        | MODERATE | coil or plug open
            COIL_SHORTED     | MODERATE | has not the resistance of a coil in order
            SPOOL_STICKY     | MODERATE | the spool sticks
            SPOOL_HELD_OPEN  | MODERATE | it flows without a command
            DEAD_CHAMBER     | SEVERE   | it does not give the flow
            """)
    void aFaultFailsWithAPlainReason(HydraulicFault fault, Severity severity, String reason) throws Exception {
        Grade grade = grade(fault, severity, 501, Map.of());
        assertThat(grade.verdict()).as("%s", grade.reasons()).isEqualTo(Verdict.FAIL);
        assertThat(String.join("; ", grade.reasons())).contains(reason);
    }

    @Test
    void aHotCoilIsNoFaultOfTheUnit() throws Exception {
        Grade grade = grade(HydraulicFault.COIL_HOT, Severity.MODERATE, 501, Map.of());
        assertThat(grade.verdict()).as("%s", grade.reasons()).isEqualTo(Verdict.INVALID);
        assertThat(String.join("; ", grade.reasons())).contains("it was hot before");
    }

    @Test
    void anOilSupplyThatSaggedIsNoFaultOfTheUnit() throws Exception {
        Grade grade = grade(HydraulicFault.OIL_SHORT, Severity.SEVERE, 501, Map.of("gauge", "sagged"));
        assertThat(grade.verdict()).as("%s", grade.reasons()).isEqualTo(Verdict.INVALID);
    }
}
