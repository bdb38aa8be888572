package org.pumpwright.host.stand.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.protocol.ForeignBoard;
import org.pumpwright.protocol.HostMessage;
import org.pumpwright.protocol.Inputs;
import org.pumpwright.protocol.Refuse;
import org.pumpwright.protocol.SelfTestPart;
import org.pumpwright.protocol.line.Wire;

/** Says in plain words why a board refused, and what to do. Thread-safe. */
final class Refusals {
    private static final String OTHER_FIRMWARE = "Load the firmware of this program's version.";

    private Refusals() {}

    static StandException refused(Line line, HostMessage message, Refuse refuse) {
        return new StandException(
                Trouble.REFUSED,
                line.name(),
                "%s: the board refused '%s': %s".formatted(line.name(), words(message), why(refuse)));
    }

    static StandException otherVersion(Line line, ForeignBoard board) {
        return new StandException(
                Trouble.OTHER_VERSION,
                line.name(),
                String.format(
                        Locale.ROOT,
                        "%s: the board (firmware %d.%d) speaks protocol version %d, this program speaks version %d. Load the"
                                + " firmware that came with this program, or use the program that belongs to the board.",
                        line.name(),
                        board.firmwareMajor(),
                        board.firmwareMinor(),
                        board.version(),
                        Wire.VERSION));
    }

    /** The message as the protocol's page names it, e.g. {@code make-safe}. */
    static String words(HostMessage message) {
        return message.type().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The open inputs and what to do with each; the emergency stop first. */
    static String openInputs(Inputs inputs) {
        List<String> open = new ArrayList<>();
        if (!inputs.emergencyStopClosed()) {
            open.add(
                    "the emergency stop is pressed or its loop is open. Release it, press the stand's own START where it"
                            + " has one, and start again; if that does not help, look at the loop's fuse and wires.");
        }
        if (!inputs.guardClosed()) {
            open.add("the guard is open. Close it and start again.");
        }
        if (!inputs.levelClosed()) {
            open.add("the tank's level is low. Fill it and start again.");
        }
        if (!inputs.overrideReturned()) {
            open.add("the unit's mechanical override is in. Return it and start again.");
        }
        return String.join(" Also: ", open);
    }

    private static String why(Refuse refuse) {
        return switch (refuse.reason()) {
            case UNKNOWN_TYPE -> "its firmware does not know this message. " + OTHER_FIRMWARE;
            case WRONG_LENGTH ->
                "it finds the message too long or too short (%d bytes). %s".formatted(refuse.detail(), OTHER_FIRMWARE);
            case OUT_OF_RANGE -> "it finds field %d out of its range. %s".formatted(refuse.detail(), OTHER_FIRMWARE);
            case NOT_ARMED -> "the stand is not armed. Start the run again.";
            case WRONG_BOOT_ID -> "it has started anew since it said hello. Open the stand again.";
            case INPUT_OPEN -> openInputs(Inputs.ofBits(refuse.detail()));
            case WOULD_WIDEN -> "limits can only be tightened; it has %d now.".formatted(refuse.detail());
            case LOCKED ->
                "it has locked itself (%s). Have it mended, then switch it off and on."
                        .formatted(SelfTestPart.failedIn(refuse.detail()));
            case BUSY -> "it is still storing. Try again in a second.";
            case NOT_SAFE -> "the stand is armed. Make it safe first.";
            case NOT_STORED -> "what arrived is not what was sent. Try again.";
            case CONTACTOR_CLOSED ->
                "the contactor is closed though nothing pulls it: it may be welded. Switch the supply off"
                        + " and have the contactor checked.";
        };
    }
}
