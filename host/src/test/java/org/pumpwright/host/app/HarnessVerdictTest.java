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
import org.pumpwright.host.plant.harness.HarnessFault;

/** Verdicts on harnesses by the shelf's rules, on drawn harnesses and drawn sensors. */
final class HarnessVerdictTest {
    private static Grade grade(HarnessFault fault, Severity severity, int number) throws Exception {
        Plan plan = KindBench.plan("harness-drop");
        return KindBench.grade(
                KindBench.run(KindBench.plant(UnitKind.HARNESS, fault, severity, number), plan, Map.of()), plan);
    }

    @Test
    void healthyUnitsPass() throws Exception {
        for (int number = 1; number <= 5; number++) {
            Grade grade = grade(HarnessFault.HEALTHY, Severity.MODERATE, number);
            assertThat(grade.verdict())
                    .as("unit %d: %s", number, grade.reasons())
                    .isEqualTo(Verdict.PASS);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            UNDERSIZED       | MILD     | it takes too much of the pump's volts
            CORRODED_SPLICE  | MILD     | one connector takes too much
            BROKEN_STRANDS   | MODERATE | one connector takes too much
            HIGH_GROUND      | MILD     | its way back takes too much
            FUSE_HOLDER      | MODERATE | the fuse holder takes too much
            LOOSE_PIN        | MODERATE | the current broke off while the harness was bent
            WRONG_FUSE       | MODERATE | the current broke off under load
            """)
    void aFaultFailsWithAPlainReason(HarnessFault fault, Severity severity, String reason) throws Exception {
        Grade grade = grade(fault, severity, 501);
        assertThat(grade.verdict()).as("%s", grade.reasons()).isEqualTo(Verdict.FAIL);
        assertThat(String.join("; ", grade.reasons())).contains(reason);
    }
}
