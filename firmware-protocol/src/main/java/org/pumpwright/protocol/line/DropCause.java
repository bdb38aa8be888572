package org.pumpwright.protocol.line;

/** Why a frame was thrown away: nothing in it may be obeyed, and nothing is answered. Thread-safe. */
public enum DropCause {
    /** A length code points past the delimiter. */
    BAD_COBS,
    /** Shorter than header and check, or longer than the longest frame. */
    BAD_LENGTH,
    /** The check does not fit the bytes. */
    BAD_CRC
}
