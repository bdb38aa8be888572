package org.pumpwright.protocol;

import java.util.Optional;
import org.pumpwright.protocol.line.DropCause;
import org.pumpwright.protocol.line.Wire;

/** What a {@link FrameDecoder} found on the line. Immutable and thread-safe. */
public sealed interface Received {
    /**
     * A message of this version, every field in its range. It may be of either direction: a receiver that gets one of
     * its own direction back looks at an echo and must not obey or answer it.
     *
     * @param sequence the frame's number in its direction, 0 to 65535
     * @param message what it says
     */
    record Good(int sequence, Message message) implements Received {}

    /**
     * A sound frame of another protocol version. Nothing in it may be obeyed; a board answers a {@link #isHello hello}.
     *
     * @param version the version in the header, 0 to 255, not {@link Wire#VERSION}
     * @param type the type code, 0 to 255
     * @param sequence the frame's number in its direction, 0 to 65535
     * @param payload 0 to 112 bytes
     */
    record Foreign(int version, int type, int sequence, Octets payload) implements Received {
        /** Whether it asks a board who it is; true in every version, whatever the payload. */
        public boolean isHello() {
            return type == MessageType.HELLO.code();
        }

        /** What an identity of another version tells; empty when it is no identity or too short for one. */
        public Optional<ForeignBoard> board() {
            if (type != MessageType.IDENTITY.code() || payload.size() < ForeignBoard.LENGTH) {
                return Optional.empty();
            }
            PayloadReader in = new PayloadReader();
            in.begin(payload.toArray(), 0, payload.size());
            return Optional.of(ForeignBoard.read(version, in));
        }
    }

    /**
     * A sound frame of this version that says nothing allowed: a board refuses it, a host drops it.
     *
     * @param reason unknown type, wrong length or out of range
     * @param sequence the frame's number in its direction, 0 to 65535
     * @param type the type code, 0 to 255
     * @param detail what {@link RefuseReason} says of the reason
     */
    record Malformed(RefuseReason reason, int sequence, int type, int detail) implements Received {
        /** @throws FieldOutOfRange when the reason is none that the frame alone can give */
        public Malformed {
            FieldOutOfRange.check(
                    1,
                    "malformed frame's reason",
                    reason.code(),
                    RefuseReason.UNKNOWN_TYPE.code(),
                    RefuseReason.OUT_OF_RANGE.code(),
                    "code");
        }

        /** The answer a board gives. */
        public Refuse refusal() {
            return new Refuse(sequence, type, reason, detail);
        }
    }

    /**
     * A frame was thrown away; nothing in it is known, not even its sequence.
     *
     * @param cause what was wrong
     */
    record Dropped(DropCause cause) implements Received {}
}
