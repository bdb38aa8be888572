package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.BlobData;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.HostMessage;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.Limits;
import org.pumpwright.protocol.MessageType;
import org.pumpwright.protocol.Refuse;
import org.pumpwright.protocol.SelfTestResult;
import org.pumpwright.protocol.line.Cobs;
import org.pumpwright.protocol.line.Wire;

/** A frame to the board before it has its sequence; it need not be one that the protocol allows. Thread-safe. */
final class Command {
    private static final Duration WAIT = Duration.ofMillis(200);
    private static final Duration SLOW_WAIT = Duration.ofMillis(600);

    private final int version;
    private final int type;
    private final byte[] payload;
    private final String words;

    private Command(int version, int type, byte[] payload, String words) {
        this.version = version;
        this.type = type;
        this.payload = payload;
        this.words = words;
    }

    /** A command that the protocol allows. */
    static Command of(HostMessage message) {
        byte[] frame = FrameEncoder.encode(message, 0);
        byte[] plain = new byte[frame.length];
        int length = Cobs.decode(frame, 0, frame.length - 1, plain, 0);
        byte[] payload = Arrays.copyOfRange(plain, Wire.HEADER_LENGTH, length - Wire.CRC_LENGTH);
        return raw(message.type().code(), payload, name(message.type()));
    }

    /** Any type with any payload. */
    static Command raw(int type, byte[] payload, String words) {
        return new Command(Wire.VERSION, type, payload, words);
    }

    /** The same as another version of the protocol would send it. */
    Command ofVersion(int other) {
        return new Command(other, type, payload, words + " of version " + other);
    }

    /** The same with another payload. */
    Command withPayload(byte[] other, String note) {
        return new Command(version, type, other, words + " " + note);
    }

    /** The same with more words, as evidence. */
    Command noted(String note) {
        return new Command(version, type, payload, words + " " + note);
    }

    static String name(MessageType type) {
        return type.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    int version() {
        return version;
    }

    int type() {
        return type;
    }

    byte[] payload() {
        return payload.clone();
    }

    String words() {
        return words;
    }

    /** Whether the board may take half a second. */
    boolean isSlow() {
        return type == MessageType.BLOB_WRITE.code()
                || type == MessageType.BLOB_COMMIT.code()
                || type == MessageType.SELF_TEST.code();
    }

    Duration patience() {
        return isSlow() ? SLOW_WAIT : WAIT;
    }

    boolean repeatsEvents() {
        return type == MessageType.EVENTS_FROM.code();
    }

    /**
     * Whether a message answers this command.
     *
     * @param asked the sequences it was sent with
     */
    boolean isAnsweredBy(BoardMessage message, Set<Integer> asked) {
        if (message instanceof Acknowledge acknowledge) {
            return asked.contains(acknowledge.answered());
        }
        if (message instanceof Refuse refuse) {
            return asked.contains(refuse.answered());
        }
        return (type == MessageType.HELLO.code() && message instanceof Identity)
                || (type == MessageType.READ_LIMITS.code() && message instanceof Limits)
                || (type == MessageType.TIGHTEN.code() && message instanceof Limits)
                || (type == MessageType.SELF_TEST.code() && message instanceof SelfTestResult)
                || (type == MessageType.BLOB_READ.code() && message instanceof BlobData);
    }
}
