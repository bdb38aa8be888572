package org.pumpwright.protocol;

import java.util.List;
import java.util.OptionalInt;

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
 * @param roles what each analogue channel measures; always four, those that are watched at most once each
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
        List<AnalogRole> roles,
        BoardKind kind)
        implements BoardMessage {
    private static final int BOOT_ID_FIELD = 5;
    private static final int TICK_FIELD = 10;
    private static final int PWM_FIELD = 11;
    private static final int ROLE_FIELD = 13;

    /** @throws FieldOutOfRange when a field is outside its range, or a watched role is given twice */
    public Identity {
        pwmHz = List.copyOf(pwmHz);
        roles = List.copyOf(roles);
        Unsigned.checkU32(BOOT_ID_FIELD, "identity boot id", bootId, "u32");
        FieldOutOfRange.check(TICK_FIELD, "identity tick rate", tickHz, 1, Unsigned.MAX_U32, "Hz");
        FieldOutOfRange.check(
                PWM_FIELD, "identity PWM frequencies", pwmHz.size(), Sample.DRIVES, Sample.DRIVES, "places");
        Unsigned.checkU16(PWM_FIELD, "identity PWM frequency of drive 0", pwmHz.get(0), "Hz");
        Unsigned.checkU16(PWM_FIELD + 1, "identity PWM frequency of drive 1", pwmHz.get(1), "Hz");
        FieldOutOfRange.check(ROLE_FIELD, "identity roles", roles.size(), Sample.ANALOGS, Sample.ANALOGS, "places");
        checkWatchedOnce(roles);
    }

    @Override
    public MessageType type() {
        return MessageType.IDENTITY;
    }

    /** The channel that has this role, among those the board says it has. */
    public OptionalInt channelOf(AnalogRole role) {
        int channel = roles.indexOf(role);
        return channel >= 0 && channel < channels.analogs() ? OptionalInt.of(channel) : OptionalInt.empty();
    }

    private static void checkWatchedOnce(List<AnalogRole> roles) {
        for (int channel = 1; channel < roles.size(); channel++) {
            AnalogRole role = roles.get(channel);
            if (role.isWatched() && roles.indexOf(role) < channel) {
                throw FieldOutOfRange.of(
                        ROLE_FIELD + channel,
                        "identity role of analogue " + channel,
                        role.code(),
                        AnalogRole.NONE.code(),
                        AnalogRole.OTHER.code(),
                        "code, 1 to 3 at most once each");
            }
        }
    }

    static Identity read(PayloadReader in) {
        UniqueId uniqueId = UniqueId.read(in);
        FirmwareVersion firmware = FirmwareVersion.read(in);
        long bootId = in.u32();
        ResetCause resetCause = ResetCause.read(in);
        ChannelCounts channels = ChannelCounts.read(in);
        long tickHz = in.u32();
        List<Integer> pwmHz = List.of(in.u16(), in.u16());
        List<AnalogRole> roles =
                List.of(AnalogRole.read(in), AnalogRole.read(in), AnalogRole.read(in), AnalogRole.read(in));
        BoardKind kind = BoardKind.read(in);
        in.whole();
        return new Identity(uniqueId, firmware, bootId, resetCause, channels, tickHz, pwmHz, roles, kind);
    }

    void write(PayloadWriter out) {
        uniqueId.write(out);
        firmware.write(out);
        out.u32(bootId);
        out.u8(resetCause.bits());
        channels.write(out);
        out.u32(tickHz);
        pwmHz.forEach(out::u16);
        roles.forEach(role -> out.u8(role.code()));
        kind.write(out);
    }
}
