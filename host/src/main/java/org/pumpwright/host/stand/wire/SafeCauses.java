package org.pumpwright.host.stand.wire;

import java.util.Locale;
import org.pumpwright.host.stand.StandSignal.Cause;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.Identity;

/** Says in plain words why a board made safe. Thread-safe. */
final class SafeCauses {
    private SafeCauses() {}

    static MadeSafe signal(Event event, long boardNanos, Identity board, Channels channels) {
        return switch (event.reason()) {
            case LINK_LOST ->
                new MadeSafe(
                        Cause.LINK_LOST,
                        boardNanos,
                        "the board heard nothing from the program for %d ms".formatted(board.linkTimeoutMs()));
            case EMERGENCY_STOP -> new MadeSafe(Cause.EMERGENCY_STOP, boardNanos, "the emergency stop was pressed");
            case GUARD_OPEN -> new MadeSafe(Cause.GUARD_OPEN, boardNanos, "the guard was opened");
            case OVER_CURRENT -> new MadeSafe(Cause.OVER_CURRENT, boardNanos, overCurrent(event, board, channels));
            case HOST_ASKED, NONE, RESET -> new MadeSafe(Cause.HOST, boardNanos, "the program asked for it");
        };
    }

    private static String overCurrent(Event event, Identity board, Channels channels) {
        int index = board.overCurrent().channel();
        return channels.analogs().stream()
                .filter(channel -> channel.index() == index)
                .findFirst()
                .map(channel -> overCurrent(event, board, channel))
                .orElse("the current stayed above the board's limit");
    }

    private static String overCurrent(Event event, Identity board, AnalogChannel channel) {
        return String.format(
                Locale.ROOT,
                "the current stayed above the board's limit of %.1f A for %d ms, at up to %.1f A",
                channel.si(board.overCurrent().limit()),
                board.overCurrent().timeMs(),
                channel.si(event.detail()));
    }
}
