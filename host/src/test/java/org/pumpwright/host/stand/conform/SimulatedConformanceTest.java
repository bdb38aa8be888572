package org.pumpwright.host.stand.conform;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;

@Timeout(60)
final class SimulatedConformanceTest {
    private final SimulatedBoard board = new SimulatedBoard(
            TestStands.healthyPump(), TestStands.described("simulated").channels());

    @Test
    void theSimulatedBoardHoldsEveryCheck() throws Exception {
        Conformance.Finding finding =
                Conformance.of(new SimulatedLine(board, 0), new SimulatedProvoker(board), check -> {});

        assertThat(finding.checks())
                .allSatisfy(check -> assertThat(check.outcome())
                        .as("%s: %s", check.name(), check.evidence())
                        .isEqualTo(Outcome.HELD));
        assertThat(finding.conforms()).isTrue();
    }
}
