package org.pumpwright.host.stand.conform;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.BoardProcess;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.Line;

/** The portable firmware, built for the PC, in real time. */
@Timeout(120)
final class PcBoardConformanceTest {
    private static final Duration ALLOWED = Duration.ofSeconds(60);

    @Test
    void theBoardOfThePcHoldsEveryCheckInTime() throws Exception {
        try (BoardProcess board = BoardProcess.pc();
                Line line = SerialPorts.open(board.port(), 250_000)) {
            long begin = line.nanoTime();

            Conformance.Finding finding = Conformance.of(line, new CommandProvoker(board), check -> {});

            assertThat(finding.checks())
                    .allSatisfy(check -> assertThat(check.outcome())
                            .as("%s: %s", check.name(), check.evidence())
                            .isEqualTo(Outcome.HELD));
            assertThat(line.nanoTime() - begin).isLessThan(ALLOWED.toNanos());
        }
    }
}
