package org.pumpwright.protocol.line;

import java.util.Objects;

/**
 * Finds frames in a stream of bytes that comes in pieces of any size. It stores at most one stuffed and one plain frame
 * ({@link Wire#MAX_ENCODED_LENGTH} and {@link Wire#MAX_PLAIN_LENGTH} bytes), whatever the line sends, and allocates
 * nothing after construction. A frame that is too long is reported the moment it is, once. Confined to one thread; the
 * sink must not feed the receiver it is called from.
 */
public final class LineReceiver {
    private final FrameSink sink;
    private final byte[] store = new byte[Wire.MAX_ENCODED_LENGTH];
    private final byte[] plain = new byte[Wire.MAX_PLAIN_LENGTH];
    private final Hunting hunting = new Hunting();
    private final Collecting collecting = new Collecting();
    private final Overlong overlong = new Overlong();
    private State state;
    private int stored;

    private LineReceiver(FrameSink sink, boolean atBoundary) {
        this.sink = sink;
        this.state = atBoundary ? collecting : hunting;
    }

    /** A receiver for a line that was just opened: it throws away what comes before the first delimiter. */
    public static LineReceiver onOpenedLine(FrameSink sink) {
        return new LineReceiver(sink, false);
    }

    /** A receiver whose first byte is known to be the first of a frame. */
    public static LineReceiver atFrameBoundary(FrameSink sink) {
        return new LineReceiver(sink, true);
    }

    /**
     * Takes the next bytes of the stream and tells the sink of every frame they complete. When the sink throws, the
     * exception passes through, the rest of the chunk is lost and the receiver goes on at the next delimiter.
     *
     * @throws IndexOutOfBoundsException when the part is not within the array
     */
    public void receive(byte[] chunk, int offset, int length) {
        Objects.checkFromIndexSize(offset, length, chunk.length);
        int end = offset + length;
        int at = offset;
        try {
            while (at < end) {
                at = state.take(chunk, at, end);
            }
        } catch (RuntimeException | Error thrownBySink) {
            resynchronise();
            throw thrownBySink;
        }
    }

    /** Forgets a begun frame and throws away everything up to the next delimiter, as after opening the line. */
    public void resynchronise() {
        stored = 0;
        state = hunting;
    }

    /** How many bytes of a begun frame are stored now, 0 to {@link Wire#MAX_ENCODED_LENGTH}. */
    public int stored() {
        return stored;
    }

    /** What the receiver does with the next bytes. */
    private sealed interface State permits Hunting, Collecting, Overlong {
        /** Uses up some of {@code chunk[at..end)}, at least one byte, and returns the index of the first one left. */
        int take(byte[] chunk, int at, int end);
    }

    /** Before the first delimiter: nothing is known to be a frame. */
    private final class Hunting implements State {
        @Override
        public int take(byte[] chunk, int at, int end) {
            return skipToDelimiter(chunk, at, end);
        }
    }

    /** Behind an overlong frame that was reported already. */
    private final class Overlong implements State {
        @Override
        public int take(byte[] chunk, int at, int end) {
            return skipToDelimiter(chunk, at, end);
        }
    }

    /** Within a frame, or between two. */
    private final class Collecting implements State {
        @Override
        public int take(byte[] chunk, int at, int end) {
            int delimiter = delimiterIn(chunk, at, end);
            boolean complete = delimiter < end;
            if (complete && stored == 0) {
                finish(chunk, at, delimiter - at);
            } else if (store(chunk, at, delimiter - at)) {
                if (complete) {
                    int length = stored;
                    stored = 0;
                    finish(store, 0, length);
                }
            } else {
                stored = 0;
                state = complete ? collecting : overlong;
                sink.dropped(DropCause.BAD_LENGTH);
            }
            return complete ? delimiter + 1 : end;
        }
    }

    private int skipToDelimiter(byte[] chunk, int at, int end) {
        int delimiter = delimiterIn(chunk, at, end);
        if (delimiter == end) {
            return end;
        }
        state = collecting;
        return delimiter + 1;
    }

    private boolean store(byte[] chunk, int at, int length) {
        if (length > store.length - stored) {
            return false;
        }
        System.arraycopy(chunk, at, store, stored, length);
        stored += length;
        return true;
    }

    private void finish(byte[] encoded, int offset, int length) {
        if (length == 0) {
            return;
        }
        if (length > Wire.MAX_ENCODED_LENGTH) {
            sink.dropped(DropCause.BAD_LENGTH);
            return;
        }
        int plainLength = Cobs.decode(encoded, offset, length, plain, 0);
        if (plainLength == Cobs.NOT_COBS) {
            sink.dropped(DropCause.BAD_COBS);
        } else if (plainLength < Wire.MIN_PLAIN_LENGTH) {
            sink.dropped(DropCause.BAD_LENGTH);
        } else if (!checkFits(plainLength)) {
            sink.dropped(DropCause.BAD_CRC);
        } else {
            sink.frame(plain, plainLength);
        }
    }

    private boolean checkFits(int plainLength) {
        int checked = plainLength - Wire.CRC_LENGTH;
        int sent = (plain[checked] & 0xFF) | (plain[checked + 1] & 0xFF) << 8;
        return sent == Crc16.of(plain, 0, checked);
    }

    private static int delimiterIn(byte[] chunk, int at, int end) {
        int index = at;
        while (index < end && chunk[index] != Wire.DELIMITER) {
            index++;
        }
        return index;
    }
}
