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
import org.pumpwright.host.plant.driver.DriverFault;

/** Verdicts on drivers by the shelf's rules, on drawn modules and drawn sensors. */
final class DriverVerdictTest {
    private static Grade grade(DriverFault fault, Severity severity, int number) throws Exception {
        Plan plan = KindBench.plan("driver-loads");
        return KindBench.grade(
                KindBench.run(KindBench.plant(UnitKind.DRIVER, fault, severity, number), plan, Map.of()), plan);
    }

    @Test
    void healthyUnitsPass() throws Exception {
        for (int number = 1; number <= 5; number++) {
            Grade grade = grade(DriverFault.HEALTHY, Severity.MODERATE, number);
            assertThat(grade.verdict())
                    .as("unit %d: %s", number, grade.reasons())
                    .isEqualTo(Verdict.PASS);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            STUCK_ON         | MODERATE | the unit ended the run
            OUTPUT_OPEN      | MODERATE | no current came into the load
            HIGH_RESISTANCE  | MILD     | the switch or its connectors take too much
            FREEWHEEL_OPEN   | MODERATE | the way back for a coil's current is open
            WRONG_FREQUENCY  | MILD     | it switches at a wrong frequency
            DUTY_OFF         | MODERATE | the output's duty is not the command
            LIMIT_LOW        | MODERATE | it does not carry 15 A
            GROUND_CORRODED  | MODERATE | the ground pin takes too much
            WATER_INGRESS    | MODERATE | the current broke off
            CRACK            | SEVERE   | the current broke off now and then
            """)
    void aFaultFailsWithAPlainReason(DriverFault fault, Severity severity, String reason) throws Exception {
        Grade grade = grade(fault, severity, 501);
        assertThat(grade.verdict()).as("%s", grade.reasons()).isEqualTo(Verdict.FAIL);
        assertThat(String.join("; ", grade.reasons())).contains(reason);
    }
}
