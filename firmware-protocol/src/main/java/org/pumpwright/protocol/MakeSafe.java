package org.pumpwright.protocol;

/** Asks for every drive at 0 and the contactor open; obeyed in every state. Thread-safe. */
public record MakeSafe() implements HostMessage {
    @Override
    public MessageType type() {
        return MessageType.MAKE_SAFE;
    }
}
