package org.pumpwright.host.stand.wire;

import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.MessageType;
import org.pumpwright.protocol.Received;
import org.pumpwright.protocol.SequenceWatch;

/** Counts what comes and what is missing on the way from a board. Confined to the run thread. */
final class LinkTally {
    private final SequenceWatch numbers = new SequenceWatch();
    private long gaps;
    private long broken;

    /** Takes the next thing that the line brought. An echo of the host's own frames is none of the board's. */
    void take(Received received) {
        if (received instanceof Received.Good good && good.message() instanceof BoardMessage message) {
            if (message instanceof Event event && event.kind() == EventKind.STARTED) {
                numbers.restart();
            }
            count(good.sequence());
        } else if (received instanceof Received.Malformed malformed
                && malformed.type() >= MessageType.FIRST_BOARD_CODE) {
            count(malformed.sequence());
        } else if (received instanceof Received.Dropped) {
            broken++;
        }
    }

    LinkCounts counts() {
        return new LinkCounts(numbers.received(), gaps, numbers.lost(), broken);
    }

    private void count(int number) {
        if (numbers.observe(number) > 0) {
            gaps++;
        }
    }
}
