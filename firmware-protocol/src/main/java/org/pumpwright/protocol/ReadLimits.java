package org.pumpwright.protocol;

/** Asks for the board's {@link Limits}. Thread-safe. */
public record ReadLimits() implements HostMessage {
    @Override
    public MessageType type() {
        return MessageType.READ_LIMITS;
    }
}
