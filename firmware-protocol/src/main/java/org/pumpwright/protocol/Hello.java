package org.pumpwright.protocol;

/** Asks the board who it is; the only message a board of another version answers. Thread-safe. */
public record Hello() implements HostMessage {
    @Override
    public MessageType type() {
        return MessageType.HELLO;
    }
}
