package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/** Grading a stored run takes no time that anybody notices: counted is the processor's time, whatever else it does. */
class GradingTimeTest {
    private static final int RUNS = 40;

    @Test
    void oneRunIsGradedInFarLessThanATenthOfASecond() {
        GradingInput input = SyntheticRun.healthy().flow(50, 0.8).input().by(ShippedRules.PUMP);
        grade(input);
        double each = grade(input) / RUNS;
        assertThat(each).as("seconds of the processor a run").isLessThan(0.1);
    }

    private static double grade(GradingInput input) {
        long begin = cpu();
        for (int i = 0; i < RUNS; i++) {
            assertThat(Grader.grade(input).verdict()).isEqualTo(Verdict.FAIL);
        }
        return (cpu() - begin) / 1e9;
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
