package org.pumpwright.protocol;

import java.util.Arrays;
import org.pumpwright.protocol.line.Cobs;
import org.pumpwright.protocol.line.Crc16;
import org.pumpwright.protocol.line.Wire;

/** Makes whole frames, delimiter included. Thread-safe. */
public final class FrameEncoder {
    private FrameEncoder() {}

    /**
     * The frame of a message.
     *
     * @param sequence the number of the frame in its direction, 0 to 65535
     * @throws IllegalArgumentException when the sequence is outside its range
     */
    public static byte[] encode(Message message, int sequence) {
        PayloadWriter out = begin(Wire.VERSION, message.type().code(), sequence);
        message.type().write(message, out);
        return finish(out);
    }

    /**
     * A well-formed frame of any version and type with any payload, as another version or a faulty peer would send it.
     *
     * @param version 0 to 255
     * @param type 0 to 255
     * @param sequence 0 to 65535
     * @param payload 0 to 112 bytes
     * @throws IllegalArgumentException when one of them is outside its range
     */
    public static byte[] encodeRaw(int version, int type, int sequence, byte[] payload) {
        FieldOutOfRange.check(4, "payload length", payload.length, 0, Wire.MAX_PAYLOAD_LENGTH, "bytes");
        PayloadWriter out = begin(version, type, sequence);
        out.raw(payload);
        return finish(out);
    }

    private static PayloadWriter begin(int version, int type, int sequence) {
        Unsigned.checkU8(1, "frame version", version, "u8");
        Unsigned.checkU8(2, "frame type", type, "u8");
        Unsigned.checkU16(3, "frame sequence", sequence, "u16");
        PayloadWriter out = new PayloadWriter(new byte[Wire.MAX_PLAIN_LENGTH]);
        out.u8(version);
        out.u8(type);
        out.u16(sequence);
        return out;
    }

    private static byte[] finish(PayloadWriter out) {
        out.u16(Crc16.of(out.bytes(), 0, out.length()));
        byte[] frame = new byte[Cobs.maxEncodedLength(out.length()) + 1];
        int encoded = Cobs.encode(out.bytes(), 0, out.length(), frame, 0);
        frame[encoded] = Wire.DELIMITER;
        return Arrays.copyOf(frame, encoded + 1);
    }
}
