package org.pumpwright.host.stand.wire;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.KeepAlive;
import org.pumpwright.protocol.Message;
import org.pumpwright.protocol.MessageType;
import org.pumpwright.protocol.Received;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.line.DropCause;

final class LinkTallyTest {
    private static final Message ANSWER = new Acknowledge(0, MessageType.KEEP_ALIVE.code());

    private final LinkTally tally = new LinkTally();

    @Test
    void framesThatAreMissingShowByTheirNumbers() {
        for (int number : new int[] {65_534, 65_535, 0, 3, 4, 10}) {
            tally.take(new Received.Good(number, ANSWER));
        }

        assertThat(tally.counts()).isEqualTo(new LinkCounts(6, 2, 7, 0));
    }

    @Test
    void aFrameThatSaysNothingAllowedIsNotMissing() {
        tally.take(new Received.Good(1, ANSWER));
        tally.take(new Received.Malformed(RefuseReason.UNKNOWN_TYPE, 2, 0xF0, 0xF0));
        tally.take(new Received.Good(3, ANSWER));

        assertThat(tally.counts()).isEqualTo(new LinkCounts(3, 0, 0, 0));
    }

    @Test
    void aBrokenFrameIsCountedAndMissing() {
        tally.take(new Received.Good(1, ANSWER));
        tally.take(new Received.Dropped(DropCause.BAD_CRC));
        tally.take(new Received.Good(3, ANSWER));

        assertThat(tally.counts()).isEqualTo(new LinkCounts(2, 1, 1, 1));
    }

    @Test
    void aBoardThatStartsAnewHasLostNothing() {
        tally.take(new Received.Good(65_000, ANSWER));
        tally.take(new Received.Good(0, new Event(1, 0, EventKind.STARTED, SafeReason.RESET, 0)));
        tally.take(new Received.Good(1, ANSWER));

        assertThat(tally.counts()).isEqualTo(new LinkCounts(3, 0, 0, 0));
    }

    @Test
    void anEchoOfTheHostIsNoFrameOfTheBoard() {
        tally.take(new Received.Good(7, ANSWER));
        tally.take(new Received.Good(500, new KeepAlive()));
        tally.take(new Received.Malformed(RefuseReason.WRONG_LENGTH, 501, MessageType.KEEP_ALIVE.code(), 3));
        tally.take(new Received.Good(8, ANSWER));

        assertThat(tally.counts()).isEqualTo(new LinkCounts(2, 0, 0, 0));
    }
}
