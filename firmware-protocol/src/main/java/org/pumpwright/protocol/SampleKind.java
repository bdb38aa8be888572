package org.pumpwright.protocol;

/** The two forms in which a board can tell what it measured. Thread-safe. */
public enum SampleKind {
    /** {@link Sample}. */
    WHOLE(0),
    /** {@link ShortSample}. */
    SHORT(1);

    private final int code;

    SampleKind(int code) {
        this.code = code;
    }

    /** The number on the wire. */
    public int code() {
        return code;
    }

    /**
     * The one with this number on the wire.
     *
     * @throws FieldOutOfRange when there is none
     */
    public static SampleKind ofCode(int code) {
        FieldOutOfRange.check(1, "stream kind", code, WHOLE.code, SHORT.code, "code");
        return code == WHOLE.code ? WHOLE : SHORT;
    }

    static SampleKind read(PayloadReader in) {
        in.group();
        return ofCode(in.u8());
    }
}
