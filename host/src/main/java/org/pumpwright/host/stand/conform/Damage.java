package org.pumpwright.host.stand.conform;

import java.util.Arrays;
import org.pumpwright.protocol.line.Cobs;
import org.pumpwright.protocol.line.Wire;

/** Damages sound frames as noise would, in ways that are known. Thread-safe. */
final class Damage {
    private static final int OVERLONG = 300;

    private Damage() {}

    /** One bit of the CRC is wrong. */
    static byte[] crc(byte[] frame) {
        byte[] plain = new byte[frame.length];
        int length = Cobs.decode(frame, 0, frame.length - 1, plain, 0);
        plain[length - 1] ^= 1;
        return stuffed(Arrays.copyOf(plain, length));
    }

    /** The length code points past the delimiter. */
    static byte[] stuffing(byte[] frame) {
        byte[] damaged = frame.clone();
        damaged[0] = (byte) 0xFE;
        return damaged;
    }

    /** The last byte before the delimiter is missing. */
    static byte[] cut(byte[] frame) {
        byte[] damaged = Arrays.copyOf(frame, frame.length - 1);
        damaged[damaged.length - 1] = Wire.DELIMITER;
        return damaged;
    }

    /** A sender that forgot its delimiter. */
    static byte[] overlong() {
        byte[] noise = new byte[OVERLONG];
        Arrays.fill(noise, (byte) 1);
        noise[OVERLONG - 1] = Wire.DELIMITER;
        return noise;
    }

    private static byte[] stuffed(byte[] plain) {
        byte[] encoded = Cobs.encode(plain);
        // One byte more, which is 0: the delimiter.
        return Arrays.copyOf(encoded, encoded.length + 1);
    }
}
