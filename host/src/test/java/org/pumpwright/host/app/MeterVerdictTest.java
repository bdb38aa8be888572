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
import org.pumpwright.host.plant.meter.MeterFault;

/** Verdicts on pulse meters by the shelf's rules, on drawn meters and drawn sensors. */
final class MeterVerdictTest {
    private static Grade grade(MeterFault fault, Severity severity, int number) throws Exception {
        Plan plan = KindBench.plan("meter-check");
        return KindBench.grade(
                KindBench.run(KindBench.plant(UnitKind.METER, fault, severity, number), plan, Map.of()), plan);
    }

    @Test
    void healthyUnitsPass() throws Exception {
        for (int number = 1; number <= 5; number++) {
            Grade grade = grade(MeterFault.HEALTHY, Severity.MODERATE, number);
            assertThat(grade.verdict())
                    .as("unit %d: %s", number, grade.reasons())
                    .isEqualTo(Verdict.PASS);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            MISSING_PULSES   | MODERATE | pulses get lost
            DOUBLE_PULSES    | MODERATE | pulses come twice
            LOST_BLADE       | MILD     | pulses get lost
            WORN_BEARING     | MODERATE | its pulses come unevenly
            SLOW_ROTOR       | MODERATE | it lags at low flow
            WRONG_K          | MODERATE | its K is not the model's
            INTERFERENCE     | MODERATE | it counts while nothing flows
            NO_PULSES        | MODERATE | it gave no pulse at any flow
            """)
    void aFaultFailsWithAPlainReason(MeterFault fault, Severity severity, String reason) throws Exception {
        Grade grade = grade(fault, severity, 501);
        assertThat(grade.verdict()).as("%s", grade.reasons()).isEqualTo(Verdict.FAIL);
        assertThat(String.join("; ", grade.reasons())).contains(reason);
    }

    @ParameterizedTest
    @CsvSource({"LOOP_AIR,air", "LOOP_SURGE,air", "CAVITATION,too little back pressure"})
    void aFaultOfTheLoopIsNoneOfTheMeter(MeterFault fault, String reason) throws Exception {
        Grade grade = grade(fault, Severity.MODERATE, 501);
        assertThat(grade.verdict()).as("%s", grade.reasons()).isEqualTo(Verdict.INVALID);
        assertThat(String.join("; ", grade.reasons())).contains(reason);
    }

    @Test
    void mixedUpUnitsAreNamed() throws Exception {
        Grade grade = grade(MeterFault.WRONG_K, Severity.SEVERE, 501);
        assertThat(grade.findings())
                .filteredOn(finding -> finding.name().equals("ratio to nominal"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.outcome().toString()).contains("3.785"));
    }
}
