package org.pumpwright.protocol.line;

/** Sizes and fixed values of a frame, in bytes; {@code spec/protocol.md} section 2 is their source. Thread-safe. */
public final class Wire {
    /** The protocol version this library speaks. */
    public static final int VERSION = 1;

    /** The byte that ends every frame and occurs nowhere else on the line. */
    public static final byte DELIMITER = 0;

    /** Version, type and sequence. */
    public static final int HEADER_LENGTH = 4;

    /** The check behind the payload. */
    public static final int CRC_LENGTH = 2;

    /** The longest payload. */
    public static final int MAX_PAYLOAD_LENGTH = 112;

    /** The shortest frame before stuffing: header and check. */
    public static final int MIN_PLAIN_LENGTH = HEADER_LENGTH + CRC_LENGTH;

    /** The longest frame before stuffing. */
    public static final int MAX_PLAIN_LENGTH = MIN_PLAIN_LENGTH + MAX_PAYLOAD_LENGTH;

    /** The longest stuffed frame, delimiter not counted: below 254 plain bytes COBS adds exactly one. */
    public static final int MAX_ENCODED_LENGTH = MAX_PLAIN_LENGTH + 1;

    /** The longest frame on the line, delimiter counted. */
    public static final int MAX_FRAME_LENGTH = MAX_ENCODED_LENGTH + 1;

    private Wire() {}
}
