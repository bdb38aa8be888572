package org.pumpwright.protocol;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The types of version 1, each with its code and the length of its payload. Thread-safe. */
public enum MessageType {
    /** {@link Hello}. */
    HELLO(0x01, Layout.empty(Hello.class, Hello::new)),
    /** {@link Arm}. */
    ARM(0x02, Layout.fixed(4, Arm.class, Arm::read, Arm::write)),
    /** {@link Drive}. */
    DRIVE(0x03, Layout.fixed(7, Drive.class, Drive::read, Drive::write)),
    /** {@link Stream}. */
    STREAM(0x04, Layout.fixed(3, Stream.class, Stream::read, Stream::write)),
    /** {@link KeepAlive}. */
    KEEP_ALIVE(0x05, Layout.empty(KeepAlive.class, KeepAlive::new)),
    /** {@link MakeSafe}. */
    MAKE_SAFE(0x06, Layout.empty(MakeSafe.class, MakeSafe::new)),
    /** {@link ReadLimits}. */
    READ_LIMITS(0x07, Layout.empty(ReadLimits.class, ReadLimits::new)),
    /** {@link Tighten}. */
    TIGHTEN(0x08, Layout.fixed(5, Tighten.class, Tighten::read, Tighten::write)),
    /** {@link EventsFrom}. */
    EVENTS_FROM(0x09, Layout.fixed(2, EventsFrom.class, EventsFrom::read, EventsFrom::write)),
    /** {@link SelfTest}. */
    SELF_TEST(0x0A, Layout.empty(SelfTest.class, SelfTest::new)),
    /** {@link BlobRead}. */
    BLOB_READ(0x0B, Layout.fixed(4, BlobRead.class, BlobRead::read, BlobRead::write)),
    /** {@link BlobWrite}. */
    BLOB_WRITE(
            0x0C,
            new Layout<>(
                    BlobWrite.HEAD_LENGTH + 1,
                    BlobWrite.HEAD_LENGTH + BlobWrite.MAX_BYTES,
                    BlobWrite.class,
                    BlobWrite::read,
                    BlobWrite::write)),
    /** {@link BlobCommit}. */
    BLOB_COMMIT(0x0D, Layout.fixed(5, BlobCommit.class, BlobCommit::read, BlobCommit::write)),
    /** {@link Windows}. */
    WINDOWS(0x0E, Layout.fixed(2, Windows.class, Windows::read, Windows::write)),
    /** {@link Dither}. */
    DITHER(0x0F, Layout.fixed(5, Dither.class, Dither::read, Dither::write)),
    /** {@link Identity}. */
    IDENTITY(0x81, Layout.fixed(39, Identity.class, Identity::read, Identity::write)),
    /** {@link Acknowledge}. */
    ACKNOWLEDGE(0x82, Layout.fixed(3, Acknowledge.class, Acknowledge::read, Acknowledge::write)),
    /** {@link Refuse}. */
    REFUSE(0x83, Layout.fixed(8, Refuse.class, Refuse::read, Refuse::write)),
    /** {@link Sample}. */
    SAMPLE(0x84, Layout.fixed(58, Sample.class, Sample::read, Sample::write)),
    /** {@link Event}. */
    EVENT(0x85, Layout.fixed(12, Event.class, Event::read, Event::write)),
    /** {@link Limits}. */
    LIMITS(0x86, Layout.fixed(48, Limits.class, Limits::read, Limits::write)),
    /** {@link SelfTestResult}. */
    SELF_TEST_RESULT(0x87, Layout.fixed(4, SelfTestResult.class, SelfTestResult::read, SelfTestResult::write)),
    /** {@link BlobData}. */
    BLOB_DATA(
            0x88,
            new Layout<>(
                    BlobData.HEAD_LENGTH,
                    BlobData.HEAD_LENGTH + BlobRead.MAX_LENGTH,
                    BlobData.class,
                    BlobData::read,
                    BlobData::write)),
    /** {@link ShortSample}. */
    SHORT_SAMPLE(0x89, Layout.fixed(30, ShortSample.class, ShortSample::read, ShortSample::write)),
    /** {@link PulseWindow}. */
    PULSE_WINDOW(0x8A, Layout.fixed(57, PulseWindow.class, PulseWindow::read, PulseWindow::write));

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

    /** The fewest bytes its payload can have. */
    public int shortestPayload() {
        return layout.shortest();
    }

    /** The most bytes its payload can have. */
    public int longestPayload() {
        return layout.longest();
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
