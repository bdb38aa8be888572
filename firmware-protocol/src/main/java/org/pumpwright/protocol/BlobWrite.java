package org.pumpwright.protocol;

/**
 * Writes bytes into the spare copy of a blob; they count once {@link BlobCommit} made it the valid one. Thread-safe.
 *
 * @param blob which one
 * @param offset place of the first byte, 0 to 255
 * @param bytes 1 to {@link #MAX_BYTES}, ending at {@link Blob#MAX_LENGTH} at the latest
 */
public record BlobWrite(Blob blob, int offset, Octets bytes) implements HostMessage {
    /** The most bytes that can be written at a time. */
    public static final int MAX_BYTES = 32;

    /** The payload before the bytes. */
    static final int HEAD_LENGTH = 3;

    /** @throws FieldOutOfRange when a field is outside its range, or the bytes end too late */
    public BlobWrite {
        FieldOutOfRange.check(2, "blob-write offset", offset, 0, Blob.MAX_OFFSET, "bytes");
        FieldOutOfRange.check(3, "blob-write bytes", bytes.size(), 1, MAX_BYTES, "bytes");
        FieldOutOfRange.check(3, "blob-write end", offset + (long) bytes.size(), 1, Blob.MAX_LENGTH, "bytes");
    }

    @Override
    public MessageType type() {
        return MessageType.BLOB_WRITE;
    }

    static BlobWrite read(PayloadReader in) {
        Blob blob = Blob.read(in);
        int offset = in.u16();
        Octets bytes = in.rest();
        in.whole();
        return new BlobWrite(blob, offset, bytes);
    }

    void write(PayloadWriter out) {
        out.u8(blob.code());
        out.u16(offset);
        out.octets(bytes);
    }
}
