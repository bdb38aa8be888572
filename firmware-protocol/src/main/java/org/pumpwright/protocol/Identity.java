package org.pumpwright.protocol;

import java.util.List;

/**
 * Who the board is and what it can do: the answer to {@link Hello}. Thread-safe.
 *
 * @param uniqueId differs between boards
 * @param firmware version of the firmware
 * @param bootId differs from the one before the reset, u32
 * @param resetCause what reset the board
 * @param channels how many meters, drives and analogue channels it has
 * @param tickHz ticks of board time per second, u32, at least 1
 * @param pwmHz PWM frequency of drive 0 and drive 1 in Hz, u16 each; always two
 * @param rampLimit most change of a drive in 1/65536 per ms, u16
 * @param linkTimeoutMs after how long without a host the board makes safe, {@link Timing#SHORTEST_LINK_TIMEOUT_MS} to
 *     {@link Timing#LONGEST_LINK_TIMEOUT_MS}
 * @param overCurrent when the board makes safe because of a current
 * @param kind the kind of board
 */
public record Identity(
        UniqueId uniqueId,
        FirmwareVersion firmware,
        long bootId,
        ResetCause resetCause,
        ChannelCounts channels,
        long tickHz,
        List<Integer> pwmHz,
        int rampLimit,
        int linkTimeoutMs,
        OverCurrentRule overCurrent,
        BoardKind kind)
        implements BoardMessage {
    private static final int BOOT_ID_FIELD = 5;
    private static final int TICK_FIELD = 10;
    private static final int PWM_FIELD = 11;
    private static final int RAMP_FIELD = 13;
    private static final int LINK_FIELD = 14;
    private static final int CURRENT_CHANNEL_FIELD = 15;

    /** @throws FieldOutOfRange when a field is outside its range, or the current channel is one the board has not */
    public Identity {
        pwmHz = List.copyOf(pwmHz);
        Unsigned.checkU32(BOOT_ID_FIELD, "identity boot id", bootId, "u32");
        FieldOutOfRange.check(TICK_FIELD, "identity tick rate", tickHz, 1, Unsigned.MAX_U32, "Hz");
        FieldOutOfRange.check(
                PWM_FIELD, "identity PWM frequencies", pwmHz.size(), Sample.DRIVES, Sample.DRIVES, "places");
        Unsigned.checkU16(PWM_FIELD, "identity PWM frequency of drive 0", pwmHz.get(0), "Hz");
        Unsigned.checkU16(PWM_FIELD + 1, "identity PWM frequency of drive 1", pwmHz.get(1), "Hz");
        Unsigned.checkU16(RAMP_FIELD, "identity ramp limit", rampLimit, "1/65536 per ms");
        FieldOutOfRange.check(
                LINK_FIELD,
                "identity link time-out",
                linkTimeoutMs,
                Timing.SHORTEST_LINK_TIMEOUT_MS,
                Timing.LONGEST_LINK_TIMEOUT_MS,
                "ms");
        if (overCurrent.isOn()) {
            FieldOutOfRange.check(
                    CURRENT_CHANNEL_FIELD,
                    "identity current channel",
                    overCurrent.channel(),
                    0,
                    channels.analogs() - 1L,
                    "analogue channels the board has, or 255 for none");
        }
    }

    @Override
    public MessageType type() {
        return MessageType.IDENTITY;
    }

    static Identity read(PayloadReader in) {
        UniqueId uniqueId = UniqueId.read(in);
        FirmwareVersion firmware = FirmwareVersion.read(in);
        long bootId = in.u32();
        ResetCause resetCause = ResetCause.read(in);
        ChannelCounts channels = ChannelCounts.read(in);
        long tickHz = in.u32();
        List<Integer> pwmHz = List.of(in.u16(), in.u16());
        int rampLimit = in.u16();
        int linkTimeoutMs = in.u16();
        OverCurrentRule overCurrent = OverCurrentRule.read(in);
        BoardKind kind = BoardKind.read(in);
        in.whole();
        return new Identity(
                uniqueId,
                firmware,
                bootId,
                resetCause,
                channels,
                tickHz,
                pwmHz,
                rampLimit,
                linkTimeoutMs,
                overCurrent,
                kind);
    }

    void write(PayloadWriter out) {
        uniqueId.write(out);
        firmware.write(out);
        out.u32(bootId);
        out.u8(resetCause.bits());
        channels.write(out);
        out.u32(tickHz);
        pwmHz.forEach(out::u16);
        out.u16(rampLimit);
        out.u16(linkTimeoutMs);
        overCurrent.write(out);
        kind.write(out);
    }
}
