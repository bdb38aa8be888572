package org.pumpwright.protocol;

/**
 * Asks for a part of a blob; a {@link BlobData} comes back. Thread-safe.
 *
 * @param blob which one
 * @param offset place of the first byte wanted, 0 to 255
 * @param length how many bytes are wanted, 1 to {@link #MAX_LENGTH}; fewer come when the blob ends before
 */
public record BlobRead(Blob blob, int offset, int length) implements HostMessage {
    /** The most bytes that can be asked for at a time. */
    public static final int MAX_LENGTH = 64;

    /** @throws FieldOutOfRange when a field is outside its range */
    public BlobRead {
        FieldOutOfRange.check(2, "blob-read offset", offset, 0, Blob.MAX_OFFSET, "bytes");
        FieldOutOfRange.check(3, "blob-read length", length, 1, MAX_LENGTH, "bytes");
    }

    @Override
    public MessageType type() {
        return MessageType.BLOB_READ;
    }

    static BlobRead read(PayloadReader in) {
        Blob blob = Blob.read(in);
        int offset = in.u16();
        int length = in.u8();
        in.whole();
        return new BlobRead(blob, offset, length);
    }

    void write(PayloadWriter out) {
        out.u8(blob.code());
        out.u16(offset);
        out.u8(length);
    }
}
