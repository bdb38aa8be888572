package org.pumpwright.protocol;

/** Asks the board to try itself; a {@link SelfTestResult} comes back. Thread-safe. */
public record SelfTest() implements HostMessage {
    @Override
    public MessageType type() {
        return MessageType.SELF_TEST;
    }
}
