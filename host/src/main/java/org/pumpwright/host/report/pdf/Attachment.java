package org.pumpwright.host.report.pdf;

/**
 * A file within a document: the record that the paper was made from, byte by byte. Thread-safe; the bytes are copied in and
 * out.
 */
public final class Attachment {
    /** What the record is called in every document. */
    public static final String RECORD = "record.json";

    private final String name;
    private final byte[] bytes;
    private final String words;

    /**
     * A file.
     *
     * @param name plain ASCII without a path: {@code record.json}
     * @param bytes what it holds
     * @param words what it is, for people
     * @throws IllegalArgumentException if the name is not fit for any machine
     */
    public Attachment(String name, byte[] bytes, String words) {
        if (!name.matches("[A-Za-z0-9._-]{1,64}")) {
            throw new IllegalArgumentException(
                    "'%s' can't name an attachment: 1 to 64 of A-Z a-z 0-9 . _ - are needed".formatted(name));
        }
        this.name = name;
        this.bytes = bytes.clone();
        this.words = words;
    }

    /** A record as canonical JSON. */
    public static Attachment record(byte[] canonicalJson) {
        return new Attachment(RECORD, canonicalJson, "The record this paper was made from, as canonical JSON");
    }

    /** Its name in the document. */
    public String name() {
        return name;
    }

    /** What it holds. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** What it is. */
    public String words() {
        return words;
    }
}
