package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.Duty;

class FlowRunsTest {
    private static FlowRuns of(double... k) {
        FlowRuns runs = new FlowRuns(Duty.ofPercent(60), List.of(), 3, 0.004);
        for (double each : k) {
            runs = runs.with(each);
        }
        return runs;
    }

    @Test
    void oneRunSaysNothingOfRepeating() {
        assertThat(of(1000).rangeShare()).isZero();
        assertThat(of(1000).mark()).isEqualTo(Mark.UNKNOWN);
    }

    @Test
    void runsTooFarApartAreMarkedAtOnce() {
        assertThat(of(1000, 1005).rangeShare()).isCloseTo(5 / 1002.5, within(1e-12));
        assertThat(of(1000, 1005).mark()).isEqualTo(Mark.BAD);
    }

    @Test
    void allRunsWithinTheGateAreGood() {
        assertThat(of(1000, 1001).mark()).isEqualTo(Mark.UNKNOWN);
        assertThat(of(1000, 1001, 1002).mark()).isEqualTo(Mark.GOOD);
    }
}
