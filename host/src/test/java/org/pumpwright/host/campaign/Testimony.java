package org.pumpwright.host.campaign;

import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventsFrom;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.Hello;
import org.pumpwright.protocol.HostMessage;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.Received;
import org.pumpwright.protocol.ResetCause;
import org.pumpwright.protocol.line.Wire;

/** Asks a board, after everything is over, for the events that it still holds: what it knows itself of what happened. */
final class Testimony {
    private static final int BAUD = 250_000;
    private static final int ASKED_AT_MOST = 20;
    private static final long ANSWER_NANOS = Duration.ofMillis(200).toNanos();

    private final Line line;
    private final Map<Integer, Event> events = new TreeMap<>();
    private final FrameDecoder decoder = new FrameDecoder(this::take);
    private @Nullable Identity identity;
    private boolean acknowledged;
    private int sequence;

    private Testimony(Line line) {
        this.line = line;
    }

    /** The events since the board's last start, in words and order. */
    static String of(EmulatedBoard board) throws StandException {
        try (Line line = board.line(board.latestPort(), BAUD)) {
            Testimony testimony = new Testimony(line);
            testimony.hear();
            return testimony.words();
        }
    }

    private void hear() throws StandException {
        line.send(new byte[] {Wire.DELIMITER});
        for (int i = 0; i < ASKED_AT_MOST && identity == null; i++) {
            ask(new Hello());
        }
        for (int i = 0; i < ASKED_AT_MOST && !acknowledged; i++) {
            ask(new EventsFrom(1));
        }
        if (!acknowledged) {
            throw new AssertionError("the board does not answer after the fault is over");
        }
    }

    private void ask(HostMessage message) throws StandException {
        line.send(FrameEncoder.encode(message, sequence++));
        byte[] buffer = new byte[1024];
        long until = line.nanoTime() + ANSWER_NANOS;
        boolean hello = message instanceof Hello;
        while (line.nanoTime() < until && (hello ? identity == null : !acknowledged)) {
            decoder.receive(buffer, 0, line.receive(buffer, Duration.ofMillis(5)));
        }
    }

    private void take(Received received) {
        if (received instanceof Received.Good good) {
            if (good.message() instanceof Identity who) {
                identity = who;
            } else if (good.message() instanceof Event event) {
                events.put(event.number(), event);
            } else if (good.message() instanceof Acknowledge) {
                acknowledged = true;
            }
        }
    }

    private String words() {
        StringBuilder words = new StringBuilder();
        for (Event event : events.values()) {
            words.append(words.length() == 0 ? "" : ", ").append(words(event));
        }
        return words.toString();
    }

    private static String words(Event event) {
        return switch (event.kind()) {
            case STARTED -> "started " + new ResetCause(event.detail() & 0xF).describe();
            case ARMED -> "armed";
            case MADE_SAFE -> "made safe " + event.reason();
            case LOCKED -> "locked " + event.reason();
        };
    }
}
