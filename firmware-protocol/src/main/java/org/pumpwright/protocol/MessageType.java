package org.pumpwright.protocol;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The types of version 1, each with its code and the length of its payload. Thread-safe. */
public enum MessageType {
    /** {@link Hello}. */
    HELLO(0x01, Layout.empty(Hello.class, Hello::new)),
    /** {@link Arm}. */
    ARM(0x02, new Layout<>(4, Arm.class, Arm::read, Arm::write)),
    /** {@link Drive}. */
    DRIVE(0x03, new Layout<>(7, Drive.class, Drive::read, Drive::write)),
    /** {@link Stream}. */
    STREAM(0x04, new Layout<>(2, Stream.class, Stream::read, Stream::write)),
    /** {@link KeepAlive}. */
    KEEP_ALIVE(0x05, Layout.empty(KeepAlive.class, KeepAlive::new)),
    /** {@link MakeSafe}. */
    MAKE_SAFE(0x06, Layout.empty(MakeSafe.class, MakeSafe::new)),
    /** {@link Identity}. */
    IDENTITY(0x81, new Layout<>(44, Identity.class, Identity::read, Identity::write)),
    /** {@link Acknowledge}. */
    ACKNOWLEDGE(0x82, new Layout<>(3, Acknowledge.class, Acknowledge::read, Acknowledge::write)),
    /** {@link Refuse}. */
    REFUSE(0x83, new Layout<>(8, Refuse.class, Refuse::read, Refuse::write)),
    /** {@link Sample}. */
    SAMPLE(0x84, new Layout<>(58, Sample.class, Sample::read, Sample::write)),
    /** {@link Event}. */
    EVENT(0x85, new Layout<>(12, Event.class, Event::read, Event::write));

    /** Types from this code on are sent by the board. */
    public static final int FIRST_BOARD_CODE = 0x80;

    private static final @Nullable MessageType[] BY_CODE = byCode();

    private final int code;
    // The layouts hold method references without state.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Layout<?> layout;

    MessageType(int code, Layout<?> layout) {
        this.code = code;
        this.layout = layout;
    }

    /** The number in the frame's header, 0 to 255. */
    public int code() {
        return code;
    }

    /** How many bytes the payload has. */
    public int payloadLength() {
        return layout.length();
    }

    /** Whether the board sends it. */
    public boolean isFromBoard() {
        return code >= FIRST_BOARD_CODE;
    }

    /** The type with this code, or empty when version 1 has none, whatever the number. */
    public static Optional<MessageType> ofCode(int code) {
        return code >= 0 && code < BY_CODE.length ? Optional.ofNullable(BY_CODE[code]) : Optional.empty();
    }

    Message read(PayloadReader in) {
        return layout.read(in);
    }

    void write(Message message, PayloadWriter out) {
        layout.write(message, out);
    }

    private static @Nullable MessageType[] byCode() {
        @Nullable MessageType[] table = new MessageType[0x100];
        for (MessageType type : values()) {
            table[type.code] = type;
        }
        return table;
    }
}
