package org.pumpwright.host.stand.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.ChannelCounts;
import org.pumpwright.protocol.Identity;

/** A board with fewer channels than the stand's file names. */
final class SmallerBoardTest {
    private final StandDescription description = TestStands.described("simulated");
    private final SimulatedBoard board = new SimulatedBoard(TestStands.healthyPump(), description.channels());

    @Test
    void aStandFileThatNamesMoreThanTheBoardHasIsTold() {
        WireStand stand = new WireStand(description, () -> line(new ChannelCounts(0, 1, 3)), WireTiming.STANDARD);

        assertThatThrownBy(stand::open)
                .isInstanceOf(StandException.class)
                .hasMessage(
                        "line that changes what it carries: the board has 0 meters and 3 analogue channels, the file of"
                                + " stand 'simulated' names meter 1 and analogue channel 3 (counted from 0). Correct the file, or"
                                + " use the board it describes.");
    }

    @Test
    void aBoardWithAllOfThemIsTaken() throws Exception {
        try (WireStand stand =
                new WireStand(description, () -> line(new ChannelCounts(2, 1, 4)), WireTiming.STANDARD)) {
            assertThat(stand.open().boardKind()).isEqualTo("simulate");
        }
    }

    private Line line(ChannelCounts channels) {
        return new RewritingLine(new SimulatedLine(board, 0), message -> Optional.of(with(channels, message)));
    }

    private static BoardMessage with(ChannelCounts channels, BoardMessage message) {
        return message instanceof Identity who
                ? new Identity(
                        who.uniqueId(),
                        who.firmware(),
                        who.bootId(),
                        who.resetCause(),
                        channels,
                        who.tickHz(),
                        who.pwmHz(),
                        who.roles(),
                        who.kind())
                : message;
    }
}
