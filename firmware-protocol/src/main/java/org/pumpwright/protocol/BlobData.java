package org.pumpwright.protocol;

/**
 * A part of a stored blob: the answer to {@link BlobRead}. Thread-safe.
 *
 * @param blob which one
 * @param offset place of the first byte, 0 to 255
 * @param total bytes of the stored blob, 0 to {@link Blob#MAX_LENGTH}; 0 when none is stored
 * @param bytes as many of those asked for as there are, 0 to {@link BlobRead#MAX_LENGTH}
 */
public record BlobData(Blob blob, int offset, int total, Octets bytes) implements BoardMessage {
    /** The payload before the bytes. */
    static final int HEAD_LENGTH = 5;

    private static final int BYTES_FIELD = 4;

    /** @throws FieldOutOfRange when a field is outside its range, or there are bytes beyond the end of the blob */
    public BlobData {
        FieldOutOfRange.check(2, "blob-data offset", offset, 0, Blob.MAX_OFFSET, "bytes");
        FieldOutOfRange.check(3, "blob-data total", total, 0, Blob.MAX_LENGTH, "bytes");
        FieldOutOfRange.check(BYTES_FIELD, "blob-data bytes", bytes.size(), 0, BlobRead.MAX_LENGTH, "bytes");
        if (bytes.size() > 0) {
            FieldOutOfRange.check(
                    BYTES_FIELD, "blob-data end", offset + (long) bytes.size(), 1, total, "bytes of the stored blob");
        }
    }

    @Override
    public MessageType type() {
        return MessageType.BLOB_DATA;
    }

    static BlobData read(PayloadReader in) {
        Blob blob = Blob.read(in);
        int offset = in.u16();
        int total = in.u16();
        Octets bytes = in.rest();
        in.whole();
        return new BlobData(blob, offset, total, bytes);
    }

    void write(PayloadWriter out) {
        out.u8(blob.code());
        out.u16(offset);
        out.u16(total);
        out.octets(bytes);
    }
}
