package org.pumpwright.protocol;

/**
 * Asks the board to pull the contactor, prove it, and obey {@link Drive} from then on. Thread-safe.
 *
 * @param bootId the one of the {@link Identity}, u32: proof that the board is still the one that said hello
 */
public record Arm(long bootId) implements HostMessage {
    /** @throws FieldOutOfRange when the boot id is no u32 */
    public Arm {
        Unsigned.checkU32(1, "arm boot id", bootId, "u32");
    }

    @Override
    public MessageType type() {
        return MessageType.ARM;
    }

    static Arm read(PayloadReader in) {
        return new Arm(in.u32());
    }

    void write(PayloadWriter out) {
        out.u32(bootId);
    }
}
