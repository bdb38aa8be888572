package org.pumpwright.protocol;

/** A sign of life, sent every {@value Timing#KEEP_ALIVE_MS} ms while the stand is proving or armed; nothing comes back. Thread-safe. */
public record KeepAlive() implements HostMessage {
    @Override
    public MessageType type() {
        return MessageType.KEEP_ALIVE;
    }
}
