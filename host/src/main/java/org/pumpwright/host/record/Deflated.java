package org.pumpwright.host.record;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/** Bytes deflated in the zlib format (RFC 1950), and back within a bound. Thread-safe. */
final class Deflated {
    /** The next level takes twice the time and saves one byte in a hundred of a trace. */
    private static final int LEVEL = 6;

    private Deflated() {}

    static byte[] pack(byte[] plain) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        Deflater deflater = new Deflater(LEVEL);
        try (OutputStream out = new DeflaterOutputStream(packed, deflater)) {
            out.write(plain);
        } finally {
            deflater.end();
        }
        return packed.toByteArray();
    }

    /**
     * What was packed. It ends with a complaint where more comes out than was said, so that a few bytes cannot fill the memory.
     *
     * @param from where the packed bytes begin
     * @param length how many come out
     */
    static InputStream unpack(byte[] bytes, int from, int length) throws IOException {
        try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(bytes, from, bytes.length - from))) {
            byte[] plain = in.readNBytes(length);
            if (plain.length < length || in.read() >= 0) {
                throw new IOException("it does not unpack to the %d bytes that it says".formatted(length));
            }
            return new ByteArrayInputStream(plain);
        }
    }
}
