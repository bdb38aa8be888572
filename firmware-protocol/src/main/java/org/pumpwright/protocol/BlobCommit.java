package org.pumpwright.protocol;

/**
 * Makes the spare copy of a blob the valid one, if its bytes have this check. Thread-safe.
 *
 * @param blob which one
 * @param length bytes of the blob, 1 to {@link Blob#MAX_LENGTH}
 * @param crc CRC over the blob's bytes, as that of a frame, u16
 */
public record BlobCommit(Blob blob, int length, int crc) implements HostMessage {
    /** @throws FieldOutOfRange when a field is outside its range */
    public BlobCommit {
        FieldOutOfRange.check(2, "blob-commit length", length, 1, Blob.MAX_LENGTH, "bytes");
        Unsigned.checkU16(3, "blob-commit check", crc, "u16");
    }

    @Override
    public MessageType type() {
        return MessageType.BLOB_COMMIT;
    }

    static BlobCommit read(PayloadReader in) {
        Blob blob = Blob.read(in);
        int length = in.u16();
        int crc = in.u16();
        in.whole();
        return new BlobCommit(blob, length, crc);
    }

    void write(PayloadWriter out) {
        out.u8(blob.code());
        out.u16(length);
        out.u16(crc);
    }
}
