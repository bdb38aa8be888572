package org.pumpwright.protocol;

import java.util.Optional;
import org.pumpwright.protocol.line.DropCause;
import org.pumpwright.protocol.line.FrameSink;
import org.pumpwright.protocol.line.LineReceiver;
import org.pumpwright.protocol.line.Wire;

/**
 * Turns a stream of bytes, in pieces of any size, into messages. Serves both directions. Never throws because of what
 * the line sends and never stores more than one frame. Confined to one thread; the listener must not feed the decoder
 * it is called from.
 */
public final class FrameDecoder {
    private final LineReceiver line;

    /** A decoder for a line that was just opened: it throws away what comes before the first delimiter. */
    public FrameDecoder(FrameListener listener) {
        this(listener, false);
    }

    private FrameDecoder(FrameListener listener, boolean synchronised) {
        FrameSink sink = new ToMessages(listener);
        this.line = synchronised ? LineReceiver.atFrameBoundary(sink) : LineReceiver.onOpenedLine(sink);
    }

    /** A decoder whose first byte is known to be the first of a frame, as with stored frames. */
    public static FrameDecoder synchronised(FrameListener listener) {
        return new FrameDecoder(listener, true);
    }

    /** Takes the next bytes of the stream. See {@link #receive(byte[], int, int)}. */
    public void receive(byte[] chunk) {
        receive(chunk, 0, chunk.length);
    }

    /**
     * Takes the next bytes of the stream and tells the listener of every frame they complete. When the listener throws,
     * the exception passes through, the rest of the chunk is lost and the decoder goes on at the next delimiter.
     *
     * @throws IndexOutOfBoundsException when the part is not within the array
     */
    public void receive(byte[] chunk, int offset, int length) {
        line.receive(chunk, offset, length);
    }

    /** Throws away everything up to the next delimiter: for a line that was opened again. */
    public void resynchronise() {
        line.resynchronise();
    }

    /** How many bytes of a begun frame are stored now, 0 to {@link Wire#MAX_ENCODED_LENGTH}. */
    public int stored() {
        return line.stored();
    }

    /** Reads the header and, where type and length are known, the fields. */
    private static final class ToMessages implements FrameSink {
        private final FrameListener listener;
        private final PayloadReader in = new PayloadReader();

        ToMessages(FrameListener listener) {
            this.listener = listener;
        }

        @Override
        public void dropped(DropCause cause) {
            listener.received(new Received.Dropped(cause));
        }

        @Override
        public void frame(byte[] plain, int length) {
            listener.received(interpret(plain, length));
        }

        private Received interpret(byte[] plain, int length) {
            in.begin(plain, 0, Wire.HEADER_LENGTH);
            int version = in.u8();
            int type = in.u8();
            int sequence = in.u16();
            int payloadLength = length - Wire.MIN_PLAIN_LENGTH;
            if (version != Wire.VERSION) {
                Octets payload = Octets.of(plain, Wire.HEADER_LENGTH, Wire.HEADER_LENGTH + payloadLength);
                return new Received.Foreign(version, type, sequence, payload);
            }
            Optional<MessageType> known = MessageType.ofCode(type);
            if (known.isEmpty()) {
                return new Received.Malformed(RefuseReason.UNKNOWN_TYPE, sequence, type, type);
            }
            if (payloadLength < known.get().shortestPayload()
                    || payloadLength > known.get().longestPayload()) {
                return new Received.Malformed(RefuseReason.WRONG_LENGTH, sequence, type, payloadLength);
            }
            in.begin(plain, Wire.HEADER_LENGTH, payloadLength);
            return fields(known.get(), sequence);
        }

        private Received fields(MessageType type, int sequence) {
            try {
                return new Received.Good(sequence, type.read(in));
            } catch (FieldOutOfRange refusal) {
                return new Received.Malformed(
                        RefuseReason.OUT_OF_RANGE, sequence, type.code(), in.numberInMessage(refusal));
            }
        }
    }
}
