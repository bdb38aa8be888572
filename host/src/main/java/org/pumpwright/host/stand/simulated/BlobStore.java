package org.pumpwright.host.stand.simulated;

import java.util.Arrays;
import java.util.HexFormat;
import org.pumpwright.protocol.Blob;
import org.pumpwright.protocol.BlobCommit;
import org.pumpwright.protocol.BlobData;
import org.pumpwright.protocol.BlobRead;
import org.pumpwright.protocol.BlobWrite;
import org.pumpwright.protocol.Octets;
import org.pumpwright.protocol.UniqueId;
import org.pumpwright.protocol.line.Crc16;

/**
 * The blobs that a board keeps, each with a valid copy and a spare one, in a memory that takes a millisecond for a byte.
 * Confined to the run thread.
 */
final class BlobStore {
    private static final int ID_LENGTH = 8;

    private final byte[][] valid = new byte[Blob.values().length][0];
    private final byte[][] spare = new byte[Blob.values().length][Blob.MAX_LENGTH];
    private int millisBusy;

    /** The board's own id: the first eight bytes of its identity blob. */
    UniqueId uniqueId() {
        byte[] identity = valid[Blob.IDENTITY.code()];
        return identity.length < ID_LENGTH
                ? UniqueId.NONE
                : UniqueId.parse(HexFormat.of().formatHex(identity, 0, ID_LENGTH));
    }

    /** As many of the bytes asked for as there are. */
    BlobData read(BlobRead asked) {
        byte[] stored = valid[asked.blob().code()];
        int end = Math.min(stored.length, asked.offset() + asked.length());
        byte[] part = asked.offset() >= end ? new byte[0] : Arrays.copyOfRange(stored, asked.offset(), end);
        return new BlobData(asked.blob(), asked.offset(), stored.length, Octets.of(part));
    }

    void write(BlobWrite asked) {
        byte[] bytes = asked.bytes().toArray();
        System.arraycopy(bytes, 0, spare[asked.blob().code()], asked.offset(), bytes.length);
        millisBusy = bytes.length;
    }

    /** Makes the spare copy the valid one; false, and no change, when its CRC is another. */
    boolean commit(BlobCommit asked) {
        byte[] written = spare[asked.blob().code()];
        if (Crc16.of(written, 0, asked.length()) != asked.crc()) {
            return false;
        }
        // The spare copy keeps its bytes: a commit that is sent again because its answer got lost must find them.
        valid[asked.blob().code()] = Arrays.copyOf(written, asked.length());
        millisBusy = 1;
        return true;
    }

    boolean isBusy() {
        return millisBusy > 0;
    }

    void millisecond() {
        millisBusy = Math.max(0, millisBusy - 1);
    }
}
