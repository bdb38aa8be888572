package org.pumpwright.protocol;

/**
 * Asks the board to send again the events it still holds from a number on. Thread-safe.
 *
 * @param number of the oldest event wanted, u16; 0 follows 65535
 */
public record EventsFrom(int number) implements HostMessage {
    /** @throws FieldOutOfRange when the number is no u16 */
    public EventsFrom {
        Unsigned.checkU16(1, "events-from number", number, "u16");
    }

    @Override
    public MessageType type() {
        return MessageType.EVENTS_FROM;
    }

    static EventsFrom read(PayloadReader in) {
        return new EventsFrom(in.u16());
    }

    void write(PayloadWriter out) {
        out.u16(number);
    }
}
