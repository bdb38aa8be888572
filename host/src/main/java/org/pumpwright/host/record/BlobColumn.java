package org.pumpwright.host.record;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;

/**
 * A column of whole numbers in few bytes. Kept are the differences to the number before, the first to 0, each folded so that
 * its sign is the lowest bit (0, -1, 1, -2 become 0, 1, 2, 3). One byte says how many bytes the largest of them needs, 0 to 8;
 * then come the highest bytes of all, then the next ones, down to the lowest: like stands beside like, which deflates well.
 * Sums and differences wrap at 64 bits, so every number comes back. Thread-safe.
 */
final class BlobColumn {
    private static final int BYTE_MASK = 0xff;

    private BlobColumn() {}

    static void write(long[] column, DataOutputStream out) throws IOException {
        long[] folded = new long[column.length];
        long before = 0;
        long bits = 0;
        for (int i = 0; i < column.length; i++) {
            long difference = column[i] - before;
            folded[i] = (difference << 1) ^ (difference >> (Long.SIZE - 1));
            bits |= folded[i];
            before = column[i];
        }
        int width = (Long.SIZE - Long.numberOfLeadingZeros(bits) + Byte.SIZE - 1) / Byte.SIZE;
        out.writeByte(width);
        for (int place = width - 1; place >= 0; place--) {
            byte[] plane = new byte[column.length];
            for (int i = 0; i < column.length; i++) {
                plane[i] = (byte) (folded[i] >>> (place * Byte.SIZE));
            }
            out.write(plane);
        }
    }

    static long[] read(int count, DataInputStream in) throws IOException {
        int width = in.readUnsignedByte();
        if (width > Long.BYTES) {
            throw new IOException("a column has numbers of %d bytes, at most %d can be".formatted(width, Long.BYTES));
        }
        if ((long) width * count > in.available()) {
            throw new IOException("a column ends before its %d numbers do".formatted(count));
        }
        long[] folded = new long[count];
        for (int place = 0; place < width; place++) {
            byte[] plane = new byte[count];
            in.readFully(plane);
            for (int i = 0; i < count; i++) {
                folded[i] = (folded[i] << Byte.SIZE) | (plane[i] & BYTE_MASK);
            }
        }
        long before = 0;
        for (int i = 0; i < count; i++) {
            before += (folded[i] >>> 1) ^ -(folded[i] & 1);
            folded[i] = before;
        }
        return folded;
    }
}
